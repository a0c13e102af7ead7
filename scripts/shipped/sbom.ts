import { createHash } from "node:crypto";
import { askedForByHand, idOf, type Shipped } from "./packages.ts";

/** What the list is of: our own package, as it goes out. */
export interface Whole {
  readonly name: string;
  readonly version: string;
  readonly says: string;
}

/** A package's address (purl): an @ before a scope is written as %40. */
const purl = ({ name, version }: { name: string; version: string }): string =>
  `pkg:npm/${name.replace(/^@/, "%40")}@${version}`;

const licences = (expression: string) =>
  / (OR|AND|WITH) /.test(expression)
    ? [{ expression: expression.replace(/^\((.*)\)$/, "$1") }]
    : [{ license: { id: expression } }];

function component(one: Shipped) {
  return {
    type: "library",
    "bom-ref": purl(one),
    name: one.name,
    version: one.version,
    scope: "required",
    hashes: [{ alg: "SHA-512", content: one.sha512 }],
    licenses: licences(one.licence),
    purl: purl(one),
  };
}

/** A name for this very list, made of what is in it, in the form of a random UUID (RFC 9562, version 8: a form of one's own). */
function serialOf(content: string): string {
  const hex = createHash("sha256").update(content).digest("hex");
  const parts = [hex.slice(0, 8), hex.slice(8, 12), `8${hex.slice(13, 16)}`, `8${hex.slice(17, 20)}`];
  return `urn:uuid:${[...parts, hex.slice(20, 32)].join("-")}`;
}

/**
 * The list of parts as CycloneDX 1.6 in JSON, which is the first edition of ECMA-424 (June 2024). The same parts give the same bytes:
 * no clock, no chance.
 */
export function sbomText(whole: Whole, packages: readonly Shipped[]): string {
  const refs = new Map(packages.map((one) => [idOf(one), purl(one)]));
  const byHand = askedForByHand();
  const asked = new Set(packages.flatMap((one) => one.asksFor));
  const direct = packages.filter((one) => byHand.has(one.name) || !asked.has(idOf(one)));
  const body = {
    version: 1,
    metadata: {
      lifecycles: [{ phase: "build" }],
      component: {
        type: "application",
        "bom-ref": purl(whole),
        name: whole.name,
        version: whole.version,
        description: whole.says,
        licenses: licences("MIT"),
        purl: purl(whole),
      },
    },
    components: packages.map(component),
    dependencies: [
      { ref: purl(whole), dependsOn: direct.map(purl) },
      ...packages.map((one) => ({
        ref: purl(one),
        dependsOn: one.asksFor.map((id) => refs.get(id)),
      })),
    ],
    // Every part is named, and nothing was left out.
    compositions: [{ aggregate: "complete", assemblies: [purl(whole)] }],
  };
  const serialNumber = serialOf(JSON.stringify(body));
  const head = { bomFormat: "CycloneDX", specVersion: "1.6", serialNumber };
  return `${JSON.stringify({ ...head, ...body }, null, 2)}\n`;
}
