interface Given {
  readonly label: string;
  /** Endings and types, as the browser wants them. */
  readonly accept: string;
  /** The camera of a phone is offered first. */
  readonly fromCamera?: boolean;
  readonly onFile: (file: File) => void;
}

/** A key that asks for one file. The same file may be chosen again. */
export function FileKey({ label, accept, fromCamera = false, onFile }: Given) {
  return (
    <label className="key">
      {label}
      <input
        className="only-heard"
        type="file"
        accept={accept}
        {...(fromCamera ? { capture: "environment" as const } : {})}
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file) onFile(file);
          target.value = "";
        }}
      />
    </label>
  );
}
