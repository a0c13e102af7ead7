import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { build } from "vite";
import { describe, expect, it, onTestFinished } from "vitest";
import { sayWhatIsShipped } from "../../scripts/shipped/say-what-is-shipped.ts";
import { root } from "../house/sources.ts";
import { sayingsOf } from "./parts.ts";

/** Builds one module with this text and says what is shipped with it. `PACKAGES` in the text stands for the folder of the packages. */
async function built(files: Readonly<Record<string, string>>) {
  mkdirSync(join(root, ".cache"), { recursive: true });
  const folder = mkdtempSync(join(root, ".cache/small-"));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  const packages = join(root, "node_modules").replaceAll("\\", "/");
  for (const [name, text] of Object.entries(files))
    writeFileSync(join(folder, name), text.replaceAll("PACKAGES", packages));
  const whole = { name: "small", version: "1.0.0", says: "a small build" };
  await build({
    root: folder,
    configFile: false,
    logLevel: "silent",
    plugins: [sayWhatIsShipped(whole).bundle],
    build: {
      assetsInlineLimit: 0,
      modulePreload: { polyfill: false },
      rolldownOptions: { input: join(folder, "index.html") },
    },
  });
  return sayingsOf(join(folder, "dist"));
}
const page = '<script type="module" src="./main.js"></script>';
const fields = (names: readonly string[]): string[] => names.map((name) => name.split(" ")[0] ?? "");

describe("what is shipped with a build", () => {
  it("letters that only a style sheet asks for are named", async () => {
    const said = await built({
      "index.html": `<link rel="stylesheet" href="./look.css">${page}`,
      "look.css":
        '@import "PACKAGES/@fontsource/b612-mono/latin-400.css";\nbody { font-family: "B612 Mono"; }',
      "main.js": "document.title = 'small';",
    });
    expect(fields(said.components)).toEqual(["@fontsource/b612-mono"]);
    expect(said.noticed).toEqual(said.components);
  });

  it("a package that is imported and of which nothing is left is not named", async () => {
    const said = await built({
      "index.html": page,
      "main.js": 'import { z } from "PACKAGES/zod/index.js"; document.title = "small";',
    });
    expect(fields(said.components)).not.toContain("zod");
  });

  it("a module that lies outside the project and in no package stops the build", async () => {
    const outside = join(mkdtempSync(join(tmpdir(), "treewright-outside-")), "stray.js");
    onTestFinished(() => rmSync(dirname(outside), { recursive: true, force: true }));
    writeFileSync(outside, "document.title = 'stray';");
    await expect(
      built({ "index.html": page, "main.js": `import ${JSON.stringify(outside)};` }),
    ).rejects.toThrow(/stray\.js.* is of no package/);
  });

  it("one that was let in for checks alone stops the build, by its name and licence", async () => {
    const files = {
      "index.html": page,
      "main.js": 'import axe from "PACKAGES/axe-core/axe.js"; document.title = axe.version;',
    };
    await expect(built(files)).rejects.toThrow(/axe-core@\S+ may not go out under MPL-2\.0/);
  });
});
