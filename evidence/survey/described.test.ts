import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { describeCase } from "../../core/src/survey/describe.ts";
import { caseJsonSchema } from "../../core/src/survey/json-schema.ts";
import { FIELDS, fieldAt } from "../../core/src/survey/schema-fields.ts";

describe("the case file described", () => {
  it("in docs/reference/case-file.md is the one of today's schema (npm run docs writes it)", () => {
    const page = readFileSync(new URL("../../docs/reference/case-file.md", import.meta.url), "utf8");
    expect(page).toBe(describeCase());
  });

  it("says of each place what it is", () => {
    const silent = FIELDS.filter(
      ({ about, kind }) => about === "" && kind !== "group" && kind !== "points",
    ).map(({ path }) => path);
    expect(silent).toEqual([]);
    for (const field of FIELDS.filter(({ kind }) => kind === "measured")) {
      expect(
        [field.quantity, field.lo, field.hi, field.by].every((part) => part !== undefined),
        field.path,
      ).toBe(true);
      expect(field.lo ?? 0).toBeLessThan(field.hi ?? 0);
    }
  });

  it("is found by a path with or without numbers", () => {
    expect(fieldAt("horses[3].girthed.rock")).toBe(fieldAt("horses[].girthed.rock"));
    expect(fieldAt("horses[0].hands.loin.near.grade")).toMatchObject({ kind: "whole-number", lo: 0, hi: 3 });
    expect(fieldAt("title")).toMatchObject({ kind: "words", required: true, lo: 1, hi: 200 });
    expect(fieldAt("saddle.head.nothing")).toBeUndefined();
  });

  it("as JSON schema names the same places", () => {
    const schema = JSON.stringify(caseJsonSchema());
    for (const { path } of FIELDS.filter((field) => field.path !== "")) {
      expect(schema).toContain(`"${path.replace(/\[\]/g, "").split(".").pop()}"`);
    }
  });
});
