// The checks that are not tests: each one command, one pass or one failure.
const node = process.execPath;
const tsx = [node, "--import", "tsx"];

export const steps = [
  {
    name: "lint and format",
    command: [node, "node_modules/@biomejs/biome/bin/biome", "check", "--error-on-warnings"],
  },
  { name: "types", command: [node, "node_modules/typescript/bin/tsc", "-p", "tsconfig.json"] },
  {
    name: "import rule",
    command: [
      node,
      "node_modules/dependency-cruiser/bin/dependency-cruise.mjs",
      "--config",
      ".dependency-cruiser.mjs",
      "--output-type",
      "err-long",
      "core/src",
      "bridges",
      "apps",
      "evidence",
    ],
  },
  { name: "house rules", command: [...tsx, "evidence/house/run.ts"] },
  { name: "licences", command: [...tsx, "evidence/house/run-licences.ts"] },
  { name: "generated documents", command: [...tsx, "scripts/docs.ts", "--check"] },
  { name: "nothing unused", command: [node, "node_modules/knip/bin/knip.js", "--no-progress"] },
];
