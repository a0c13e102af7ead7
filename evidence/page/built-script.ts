import { fileURLToPath } from "node:url";
import { build } from "vite";

/** One entry with all that it needs, as a script that leaves what it exports in the page as `evidence`. */
export async function builtScript(entry: URL): Promise<string> {
  const built = await build({
    configFile: false,
    logLevel: "error",
    build: {
      write: false,
      lib: { entry: fileURLToPath(entry), formats: ["iife"], name: "evidence", fileName: "evidence" },
    },
  });
  const [first] = Array.isArray(built) ? built : [built];
  if (!first || !("output" in first)) throw new Error("nothing was built");
  return `${first.output[0].code}\nglobalThis.evidence = evidence;`;
}
