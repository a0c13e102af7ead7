import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv } from "ajv";
import formats from "ajv-formats";
import { describe, expect, it } from "vitest";
import { shippedPackages } from "../../scripts/shipped/packages.ts";
import { sbomText } from "../../scripts/shipped/sbom.ts";
import { root } from "../house/sources.ts";

// Published: the JSON schemas of CycloneDX 1.6 (ECMA-424, first edition, June 2024), SPDX's list of licences and JSON Signature Format 0.82,
// as the standard's own library for JavaScript brings them.
const place = join(root, "node_modules/@cyclonedx/cyclonedx-library/res/schema");
const schema = (name: string) =>
  JSON.parse(readFileSync(join(place, `${name}.SNAPSHOT.schema.json`), "utf8"));

const reader = new Ajv({
  strict: false,
  allErrors: true,
  formats: { "iri-reference": true, "idn-email": true },
});
formats.default(reader);
reader.addSchema(schema("spdx"), "http://cyclonedx.org/schema/spdx.SNAPSHOT.schema.json");
reader.addSchema(schema("jsf-0.82"), "http://cyclonedx.org/schema/jsf-0.82.SNAPSHOT.schema.json");
const keepsForm = reader.compile(schema("bom-1.6"));

const folders = ["zod", "pdfkit", "fontkit", "dexie", "@fontsource/b612-mono"].map(
  (name) => `node_modules/${name}`,
);
const whole = { name: "@treewright/planted", version: "0.1.0", says: "a list for its form" };
const list = () => JSON.parse(sbomText(whole, shippedPackages(folders, [])));

describe("a list of parts", () => {
  it("keeps the form of CycloneDX 1.6", () => {
    keepsForm(list());
    expect(keepsForm.errors).toBe(null);
  });

  it.each<[string, (planted: ReturnType<typeof list>) => void]>([
    [
      "a licence that SPDX does not know",
      (planted) => (planted.components[0].licenses = [{ license: { id: "Free" } }]),
    ],
    ["a hash of the wrong length", (planted) => (planted.components[0].hashes[0].content = "00ff")],
    ["a part without a name", (planted) => delete planted.components[0].name],
    ["a serial number of another form", (planted) => (planted.serialNumber = "7")],
    ["a kind that is none", (planted) => (planted.components[0].type = "package")],
    ["a field of one's own", (planted) => (planted.parts = [])],
    ["two lines for one part", (planted) => planted.dependencies.push(planted.dependencies[0])],
  ])("with %s is refused", (_what, spoil) => {
    const planted = list();
    spoil(planted);
    expect(keepsForm(planted)).toBe(false);
  });

  it("leads from the whole to each part, by what asks for what", () => {
    const { dependencies, components, metadata } = list();
    const leads = new Map<string, string[]>(
      dependencies.map(({ ref, dependsOn }: { ref: string; dependsOn: string[] }) => [ref, dependsOn]),
    );
    const seen = new Set<string>();
    const walk = (ref: string): void => {
      if (seen.has(ref)) return;
      seen.add(ref);
      for (const next of leads.get(ref) ?? []) walk(next);
    };
    walk(metadata.component["bom-ref"]);
    expect([...seen].sort()).toEqual([metadata.component, ...components].map((one) => one["bom-ref"]).sort());
    expect(leads.get("pkg:npm/pdfkit@0.20.2")).toEqual(["pkg:npm/fontkit@2.0.4"]);
  });

  it("is the same, byte for byte, when it is made again", () => {
    const again = () => sbomText(whole, shippedPackages(folders, []));
    expect(again()).toBe(again());
  });
});
