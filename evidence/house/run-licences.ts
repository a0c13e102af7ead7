/** Prints every package whose licence is missing or not allowed, or that nobody gave a reason for; exit 1 when there is one. */
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { directDependencies, withoutReason } from "./dependencies.ts";
import { isAllowed, licencesOfLock } from "./licences.ts";
import { root } from "./sources.ts";

const licences = licencesOfLock(readFileSync(join(root, "package-lock.json"), "utf8"));
const refused = licences.filter(({ name, licence }) => licence === undefined || !isAllowed(name, licence));
for (const { name, licence } of refused) {
  console.log(
    `${name}: ${licence ?? "no licence said"}; take another package, or give its reason in evidence/house/licences.ts`,
  );
}

const page = "docs/decisions/dependencies.md";
const unexplained = withoutReason(directDependencies(), readFileSync(join(root, page), "utf8"));
for (const name of unexplained) console.log(`${name}: say in ${page} why it is here, as "- \`${name}\` ..."`);

const elsewhere = licences.filter((one) => !one.isInstalled).length;
console.log(
  `licences: ${licences.length} packages (${elsewhere} for other machines, read from the lock), ${refused.length} refused`,
);
process.exitCode = refused.length + unexplained.length === 0 ? 0 : 1;
