/** Makes the command's one file in the folder named. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { root } from "../../evidence/house/sources.ts";
import { bundleCommand } from "./bundle-command.ts";

const folder = process.argv[2];
if (folder === undefined) throw new Error("name the folder that the command goes into");
const { name, version } = JSON.parse(readFileSync(join(root, "package.json"), "utf8"));
await bundleCommand({ name, version, says: "Treewright's command" }, folder);
