/** npm run pictures: the two pictures of the README, anew: the page with an invented case, and the sheet of its wanted head. */
import { execFileSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { BENCH, servePage } from "../evidence/page/served-page.ts";
import { root } from "./docs/root.ts";

const example = "09-alter-in-the-saddle.json";
const images = join(root, "docs/images");
mkdirSync(images, { recursive: true });

async function picturePage(): Promise<void> {
  const served = await servePage();
  try {
    const { page } = await served.open(BENCH, { width: 1440, height: 1000 });
    await page.getByLabel("Examples").selectOption(example);
    await page.waitForSelector(".answers[aria-busy=true]");
    await page.waitForSelector(".answers[aria-busy=false]");
    await page.screenshot({ path: join(images, "page.png") });
  } finally {
    await served.close();
  }
}

function pictureSheet(): void {
  const folder = mkdtempSync(join(tmpdir(), "treewright-pictures-"));
  const sheet = join(folder, "head.pdf");
  const treewright = join(root, "apps/cli/bin/treewright.mjs");
  execFileSync(process.execPath, [
    treewright,
    "template",
    join(root, "examples/cases", example),
    "--out",
    sheet,
  ]);
  execFileSync("pdftoppm", ["-png", "-r", "90", "-singlefile", sheet, join(images, "sheet")]);
  rmSync(folder, { recursive: true });
}

await picturePage();
pictureSheet();
