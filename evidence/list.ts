import { allChecks } from "./published/checks.ts";
import { LINES } from "./published/published.ts";
import { REGISTRY } from "./published/registry.ts";

/** `--list`: runs every check and prints id, status, tolerance, expected and actual of each reference value. */
const failures: string[] = [];
for (const check of await allChecks()) {
  try {
    check.run();
  } catch (error) {
    failures.push(`${check.name}: ${error instanceof Error ? error.message : String(error)}`);
  }
}

const rows = [["id", "status", "tolerance", "expected", "actual"]];
for (const record of REGISTRY.values()) {
  for (const name of Object.keys(record.values)) {
    const id = `${record.id}/${name}`;
    const line = LINES.get(id);
    if (line)
      rows.push([
        id,
        line.status,
        line.tolerance,
        line.expected,
        line.agrees ? line.actual : `${line.actual} NOT`,
      ]);
    else
      rows.push([
        id,
        record.status,
        "",
        "",
        record.context ? `not computed: ${record.context}` : "NOT COMPARED",
      ]);
  }
}
if (process.argv.includes("--list")) {
  // A cell wider than this runs over rather than pushing the whole column out.
  const MOST = 58;
  const widths = [0, 1, 2, 3].map((column) =>
    Math.min(column === 0 ? MOST : MOST / 2, Math.max(...rows.map((row) => row[column]?.length ?? 0))),
  );
  for (const row of rows)
    console.log(
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join("  ")
        .trimEnd(),
    );
}
const compared = [...LINES.values()].filter((line) => line.agrees).length;
console.log(`${compared} of ${rows.length - 1} reference values agree; ${failures.length} checks failed`);
for (const failure of failures) console.log(`  ${failure}`);
process.exitCode = failures.length > 0 ? 1 : 0;
