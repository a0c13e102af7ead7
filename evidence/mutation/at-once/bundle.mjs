// All tests of a room and the code they try, in one text that can be begun again and again.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { Script } from "node:vm";
import { build } from "vite";

const ENTRY = "all-tests-of-the-room";

/** root: folder of the mutated copy; tests: paths of test files. Returns what begins all anew and gives the list of tests. */
export async function bundled(root, tests) {
  const standIn = join(root, "evidence/mutation/at-once/stand-in.mjs");
  const entry = [
    ...tests.map((path) => `import ${JSON.stringify(path)};`),
    `export { told } from ${JSON.stringify(standIn)};`,
  ];
  const made = await build({
    root,
    configFile: false,
    logLevel: "error",
    resolve: {
      alias: [
        { find: /^vitest$/, replacement: standIn },
        // The packages' own names would lead out of the mutated copy, to the code as it stands.
        { find: /^@treewright\/core\//, replacement: `${join(root, "core/src")}/` },
      ],
    },
    ssr: { external: true, noExternal: [/^@treewright/] },
    plugins: [
      {
        name: "one-entry",
        enforce: "pre",
        resolveId: (id) => (id === ENTRY ? `\0${ENTRY}` : undefined),
        load: (id) => (id === `\0${ENTRY}` ? entry.join("\n") : ownAddress(id)),
      },
    ],
    build: {
      ssr: true,
      write: false,
      minify: false,
      target: "node20",
      rollupOptions: { input: ENTRY, treeshake: false, output: { format: "cjs", codeSplitting: false } },
    },
  });
  const chunk = (Array.isArray(made) ? made[0] : made).output.find(({ type }) => type === "chunk");
  const script = new Script(`(function (exports, require, module) {${chunk.code}\n})`, {
    filename: "room.cjs",
  });
  const require = createRequire(join(root, "evidence/package.json"));
  return () => {
    const module = { exports: {} };
    script.runInThisContext()(module.exports, require, module);
    return module.exports.told;
  };
}

/** A file that reads what lies beside it still finds it from within the bundle. */
function ownAddress(id) {
  if (!/\.(ts|mjs)$/.test(id) || id.startsWith("\0")) return undefined;
  const text = readFileSync(id, "utf8");
  return text.replaceAll("import.meta.url", JSON.stringify(pathToFileURL(id).href));
}
