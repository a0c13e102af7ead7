import { createHash } from "node:crypto";
import { settle } from "@treewright/core/engine/contact/settle.ts";
import { answered, RIDES, surveyOf } from "../answer/examples.ts";
import { inputsOf, problemOf } from "../contact/model-case.ts";
import { digests } from "../number/digest.ts";
import { REGISTRY } from "../published/registry.ts";

// Every figure that the calculation makes, as fingerprints: what another Node must give again to the last bit. Printed as JSON.

/** Numbers are written so that no bit is lost: the shortest text that reads back as the same. */
const fingerprint = (value: unknown): string =>
  createHash("sha256").update(JSON.stringify(value, whole)).digest("hex");
const whole = (_: string, value: unknown): unknown =>
  value instanceof Float64Array || value instanceof Uint8Array ? Array.from(value) : value;

const contact = [...REGISTRY.keys()]
  .filter((id) => id.startsWith("ct-"))
  .map((id): [string, string] => [id, fingerprint(settle(problemOf(inputsOf(id))))]);

const answers = RIDES.map(({ name, horse }): [string, string] => [
  `${name}.${horse}`,
  fingerprint(answered(surveyOf(name), horse).last),
]);

console.log(
  JSON.stringify({
    node: process.version,
    v8: process.versions.v8,
    figures: { ...digests(), ...Object.fromEntries(contact), ...Object.fromEntries(answers) },
  }),
);
