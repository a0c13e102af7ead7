import { canonicalJson, sha256Hex } from "../../core/src/engine/hash.ts";
import { normalQuantile } from "../../core/src/engine/number/normal-quantile.ts";
import { hashName, philox } from "../../core/src/engine/random.ts";
import type { Check } from "../published/checks.ts";
import { published } from "../published/published.ts";
import { reference } from "../published/registry.ts";

/** Philox of four words and a key of two, as the published answers are written. */
function mixed(words: readonly number[], key0: number, key1: number): string {
  const counter = Int32Array.from(words);
  philox(counter, key0, key1);
  return Array.from(counter, (word) => (word >>> 0).toString(16).padStart(8, "0")).join(" ");
}

function shaOf(text: string): string {
  return sha256Hex(new TextEncoder().encode(text));
}

function quantilesOf(id: string): number[] {
  const { p } = reference(id).inputs as { p: number[] };
  return p.map(normalQuantile);
}

/** The sample of RFC 8785, 3.2.2, in the order and the number forms in which it is given there. */
const SAMPLE = {
  // biome-ignore lint/correctness/noPrecisionLoss: the standard's own digits, one more than a number holds
  numbers: [333333333.33333329, 1e30, 4.5, 2e-3, 0.000000000000000000000000001],
  string: "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"/",
  literals: [null, true, false],
};

/** The keys of RFC 8785, 3.2.3. */
const KEYS = {
  "\u20ac": "Euro Sign",
  "\r": "Carriage Return",
  "\ufb33": "Hebrew Letter Dalet With Dagesh",
  "1": "One",
  "\ud83d\ude00": "Emoji: Grinning Face",
  "\u0080": "Control",
  "\u00f6": "Latin Small Letter O With Diaeresis",
};

export const checks: readonly Check[] = [
  {
    name: "SHA-256 of the standard's messages",
    run: () => {
      const messages = reference("sha-256").inputs as Record<string, string>;
      published(
        "sha-256",
        Object.fromEntries(Object.entries(messages).map(([name, text]) => [name, shaOf(text)])),
      );
    },
  },
  {
    name: "canonical JSON of the standard's sample and order",
    run: () => {
      // Read from the text: JSON.parse would put the key "1" first.
      const order = [...canonicalJson(KEYS).matchAll(/:"([^"]+)"/g)].map(([, word]) => word);
      published("rfc-8785", { sample: canonicalJson(SAMPLE), order: order.join(",") });
    },
  },
  {
    name: "Philox 4x32-10, known answers",
    run: () =>
      published("philox-4x32-10", {
        zeros: mixed([0, 0, 0, 0], 0, 0),
        ones: mixed([-1, -1, -1, -1], -1, -1),
        pi: mixed([0x243f6a88, 0x85a308d3, 0x13198a2e, 0x03707344], 0xa4093822, 0x299f31d0),
      }),
  },
  {
    name: "FNV-1a of names",
    run: () => {
      const names = reference("fnv-1a-32").inputs as Record<string, string>;
      const hashes = Object.entries(names).map(([key, text]) => [
        key,
        hashName(text).toString(16).padStart(8, "0"),
      ]);
      published("fnv-1a-32", Object.fromEntries(hashes));
    },
  },
  { name: "normal quantile, published check values", run: () => published("as-241", quantilesOf("as-241")) },
  {
    name: "normal quantile beside mpmath",
    run: () => published("normal-quantile", quantilesOf("normal-quantile")),
  },
];
