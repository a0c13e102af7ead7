import type { Act, WorkAnswer } from "../../terms/answers.ts";
import type { Build, Findings } from "../findings/orders.ts";
import { seenBare } from "../gates/soundness.ts";
import type { Gated } from "../gates.ts";
import type { Choice, FitWish } from "./choice.ts";

/** Dressed at the press: not stripped yet, little enough, and the tree may be inferred sound; else bare. */
export function pressRoute(gated: Gated, f: Findings, choice: Choice): "press-dressed" | "press-bare" {
  const bars = gated.passed.soundness.shut.filter((shut) => shut.act === "press-dressed");
  // A bar that only asks for a reading may fall when it is taken: it does not make the way a bare one.
  const dressed = bars.every((bar) => bar.leadsTo === "measure-more") && !seenBare(f.soundness);
  return dressed && choice.setting?.setting.needsBare !== true ? "press-dressed" : "press-bare";
}

/** Heads that are moved at a press. */
export const isPressed = (build: Build): boolean =>
  build === "laminated-with-plates" || build === "barred-polymer";

/** The answer that a wish of the fit is, if nothing shuts it. */
export function answerOf(wish: FitWish, route: "press-dressed" | "press-bare", gated: Gated): WorkAnswer {
  if (wish === "alter") return route === "press-dressed" ? "alter-dressed" : "alter-stripped";
  if (wish !== "other-way") return wish;
  return gated.passed.way.shut.find((shut) => shut.act === "press-bare")?.leadsTo ?? "maker";
}

export function actOf(wish: FitWish, route: Act, f: Findings): Act | undefined {
  if (wish === "set-up") return "set-up";
  if (wish === "panel") return "flock";
  if (wish === "change-plate" || wish === "change-insert") return "exchange";
  if (wish === "set-back") return isPressed(f.way.build) ? route : "exchange";
  return wish === "alter" ? route : undefined;
}
