import type { Finding } from "./finding.ts";

/**
 * Names of files that not every machine can hold. Published: Microsoft, "Naming Files, Paths, and Namespaces" (devices' names with any
 * ending, signs, a dot or blank at the end); that its file system, and macOS's, takes two names that differ by case for one, ibid.
 */
const DEVICE = /^(con|prn|aux|nul|(com|lpt)[0-9¹²³]|conin\$|conout\$)(\..*)?$/i;
// biome-ignore lint/suspicious/noControlCharactersInRegex: they are what must not stand in a name
const SIGN = /[<>:"|?*\\\u0000-\u001f]/;
const ENDS_BADLY = /[. ]$/;

function refusal(step: string): string | undefined {
  if (DEVICE.test(step)) return "is a device on Windows";
  if (SIGN.test(step)) return "holds a sign that Windows refuses in a name";
  return ENDS_BADLY.test(step) ? "ends in a dot or a blank, which Windows takes off" : undefined;
}

/** What two names have in common on a disk that minds neither case nor the way an accent is written. */
const folded = (path: string): string => path.normalize("NFC").toLowerCase();

/** Files of the project, and their folders, that a machine of another kind could not hold beside each other. Paths with forward slashes. */
export function unportableNames(paths: readonly string[]): Finding[] {
  const all = new Set(
    paths.flatMap((path) => [...path].flatMap((sign, at) => (sign === "/" ? [path.slice(0, at)] : []))),
  );
  for (const path of paths) all.add(path);
  const first = new Map<string, string>();
  return [...all].sort().flatMap((path) => {
    const same = first.get(folded(path));
    first.set(folded(path), same ?? path);
    const refused = refusal(path.split("/").at(-1) ?? "");
    return [
      ...(refused === undefined ? [] : [{ path, line: 1, says: `the name ${refused}: give it another` }]),
      ...(same === undefined
        ? []
        : [{ path, line: 1, says: `${same} is the same name to Windows and macOS` }]),
    ];
  });
}
