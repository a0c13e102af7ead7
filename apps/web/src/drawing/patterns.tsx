/** Hatches used by every drawing on the page: 45 degrees for what is cut, crossed for what lies above a mark. */
export function Patterns() {
  return (
    <svg width="0" height="0" className="patterns" aria-hidden="true">
      <defs>
        <pattern id="hatch" width="6" height="6" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
          <path d="M0 0V6" className="pen-1" />
        </pattern>
        <pattern
          id="tree-hatch"
          width="3.5"
          height="3.5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(-45)"
        >
          <path d="M0 0V3.5" className="pen-1" />
        </pattern>
        <pattern
          id="cross-hatch"
          width="5"
          height="5"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <path d="M0 0V5M0 0H5" className="pen-1" />
        </pattern>
      </defs>
    </svg>
  );
}
