import { expect, test } from "vitest";
import { REGISTRY } from "./registry.ts";

/*
 * Which values from outside the engine must be held against: the ids are listed here, so that a record that is dropped, or
 * set aside as context without a word, is seen. What this cannot see: a case that nobody thought of.
 */

/** Cases of the stated model, computed by a separate program or in closed form. */
const MODEL_CASES = [
  "ct-flat-centre",
  "ct-flat-eccentric-kern",
  "ct-flat-eccentric-lift",
  "ct-flat-outside",
  "ct-flat-topheavy-stable",
  "ct-flat-topheavy-unstable",
  "ct-parabolic-strip",
  "ct-roof",
  "ct-roof-friction",
  "ct-flat-stiffening",
  "ct-horse-S+0",
  "ct-horse-S-20",
  "ct-horse-S+20",
  "ct-horse-zL0-S-20",
  "ct-horse-frictionless",
  "ct-horse-girth",
  "ct-horse-tips",
  "bd-ei-composite",
  "bd-ep-c0",
  "bd-ep-c0.1",
  "bd-passes",
  "bd-thin-plate-closed-form",
  "bd-rivet-cap",
  "fr-tree-regression-again",
  "fr-tree-laminated",
  "fr-reciprocity",
  "ht-slab-6",
  "ht-semi-infinite",
  "ht-steady-held",
];

/** Worked examples of handbooks, standards and papers that belong to the engine. */
const WORKED_EXAMPLES = [
  "sb-20gage",
  "sb-20gage-inverse",
  "sb-limit",
  "sb-plane-strain",
  "sb-linear-hardening",
  "sb-power-law",
  "sb-arch-open",
  "sb-reverse-masing",
  "ep-beer-4.05",
  "ep-beer-4.06-residual",
  "strain-outer",
  "rmin-50-over-r",
  "lcf-sae1137-fit",
  "lcf-life-1015",
  "lcf-miner-6",
  "efm-drake-sphere",
  "efm-drake-cylinder",
  "efm-sphere",
  "efm-line",
  "efm-eccentric-full",
  "hertz-sphere",
  "fr-logan-5.8",
  "fr-logan-p5.58",
  "fr-macneal-curved",
  "fr-macneal-curved-frame-target",
  "fr-portal-spread",
  "fr-semicircle-spread",
  "fr-tip-moment",
  "fr-tree-regression",
  "umeyama-1991",
  "kabsch-rigid",
  "kabsch-30deg",
  "hausdorff-scipy",
  "curvature-set",
  "gum-h1",
  "gum-ws",
  "gums1-9.2",
  "rivet-lap-3",
  "rivet-pencoyd",
  "wood-moisture",
];

/** Listed, and not compared: each says why in its record. */
const LISTED_ONLY = ["hertz-sphere", "fr-tip-moment", "umeyama-1991"];

test("every case and worked example of the engine is in the registry", () => {
  const missing = [...MODEL_CASES, ...WORKED_EXAMPLES].filter((id) => !REGISTRY.has(id));
  expect(missing).toEqual([]);
});

test("none of them is set aside but those named here", () => {
  const aside = [...MODEL_CASES, ...WORKED_EXAMPLES].filter((id) => REGISTRY.get(id)?.context !== undefined);
  expect(aside).toEqual(LISTED_ONLY);
});

test("no value of them is without a figure or a reason of refusal", () => {
  for (const id of [...MODEL_CASES, ...WORKED_EXAMPLES])
    expect([id, Object.keys(REGISTRY.get(id)?.values ?? {}).length]).not.toContain(0);
});
