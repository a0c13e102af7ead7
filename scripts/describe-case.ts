/** Writes docs/reference/case-file.md from the schema: `npx tsx scripts/describe-case.ts`. */
import { mkdirSync, writeFileSync } from "node:fs";
import { describeCase } from "../core/src/survey/describe.ts";

const page = new URL("../docs/reference/case-file.md", import.meta.url);
mkdirSync(new URL(".", page), { recursive: true });
writeFileSync(page, describeCase());
