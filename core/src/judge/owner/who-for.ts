import type { Findings } from "../findings/orders.ts";
import type { Gated } from "../gates.ts";

/** Whom an owner sees, and why. */
export type See = readonly { readonly who: "vet" | "fitter" | "saddler" | "maker"; readonly why: string }[];

function vet({ horse, flagged }: Gated): See {
  if (!flagged) return [];
  const why = horse === "vet-before-riding" ? "before the horse is ridden" : "before any saddle work";
  return [{ who: "vet", why }];
}

function saddler({ saddle }: Gated): See {
  if (saddle === "out-till-repaired") return [{ who: "saddler", why: "to find and put right what failed" }];
  if (saddle === "strip-before-riding")
    return [{ who: "saddler", why: "to strip it and look, before it is ridden" }];
  if (saddle === "out-for-good") return [{ who: "saddler", why: "to confirm the crack and mark the saddle" }];
  return [];
}

/** Who has to do with the head, by how it is built; never how, and never how far. */
function head(findings: Findings): See {
  const maker = (why: string): See => [{ who: "maker", why }];
  switch (findings.way.build) {
    case "laminated-with-plates":
    case "barred-polymer":
      return [
        {
          who: "saddler",
          why: "a head of this build is altered by a qualified saddler only, after a fitter has asked for it",
        },
      ];
    case "solid-polymer":
      return maker("a head of this build is moved by the maker's own people only");
    case "makers-form":
      return maker("a head of this build is the maker's to touch");
    case "not-known":
      return maker("to learn how the head is built; nothing is done to it before that is known");
    default:
      return findings.standing.makerPermits === "yes"
        ? []
        : maker("to learn who may change its plate or inserts");
  }
}

/** Whom to see, in order: the vet for the horse, the saddler for the tree, the maker, the fitter for the fit. */
export function whoFor(findings: Findings, gated: Gated): See {
  const warranty: See =
    findings.standing.warranty === "taken-to-run"
      ? [{ who: "maker", why: "while the warranty runs, or may run, ask before anybody opens the saddle" }]
      : [];
  const fitter: See = [
    { who: "fitter", why: "to look at horse, saddle and rider together before any change" },
  ];
  const headSee = gated.saddle === "out-for-good" || findings.right.claim === "yes" ? [] : head(findings);
  return [...vet(gated), ...saddler(gated), ...fitter, ...warranty, ...headSee];
}
