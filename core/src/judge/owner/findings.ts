import { headKind } from "../../reach/build.ts";
import { anyOf, known } from "../findings/answered.ts";
import type { Findings } from "../findings/orders.ts";
import { asSaid, type OwnerQuestion } from "./question.ts";

/** What an owner said, as the gates read it. Nobody looked by trade: whatever was not seen to be wrong is not known. */
export function ownerFindings(q: OwnerQuestion): Findings {
  const incidents = anyOf(Object.values(q.accidents).map(asSaid));
  const clean = incidents === "no" && q.ownedSinceNew === "yes";
  return {
    horse: {
      hands: q.flinches === "dont-know" ? "not-all-zones" : "all-zones",
      pain: q.flinches === "yes" ? "clear-or-several" : "none",
      lame: known(asSaid(q.uneven)),
      nerves: known(asSaid(q.uneven)),
      lesion: known(asSaid(q.sore)),
      otherSign: anyOf([asSaid(q.changed), asSaid(q.slips)]),
      workingShape:
        q.growingOrOffWork === "yes" ? "off-work" : q.growingOrOffWork === "no" ? "in-work" : "not-known",
      // One question asks for both; a yes is told as off work.
      shape: q.growingOrOffWork === "dont-know" ? "not-known" : "settled",
    },
    right: {
      claim: known(asSaid(q.claimOrDispute)),
      consent: q.youOwnIt === "yes" ? "yes" : q.youOwnIt === "no" ? "no" : "not-known",
      otherHorses: q.otherHorses === "no" ? "covered" : "not-covered",
    },
    soundness: {
      level: "dressed",
      riderPart: riderPart(q),
      otherPart: "cannot-be-seen",
      trauma: incidents === "yes" ? "yes" : clean ? "no" : "not-known",
      past: "not-known",
      age: q.underFiveYears === "yes" ? "to-5-years" : q.underFiveYears === "no" ? "older" : "not-known",
      square: "not-measured",
      serial: "not-known",
    },
    standing: {
      warranty: warranty(q),
      makerPermits: q.makerAllowsOwner === "dont-know" ? "not-known" : q.makerAllowsOwner,
      mayAssess: "not-known",
      mayExchange: q.makerAllowsOwner === "yes" ? "may" : "may-not",
      mayPress: "may-not",
      mayStrip: "may-not",
    },
    way: {
      build: build(q),
      told: q.toldByMaker === "yes" ? "looked-at" : q.exchange === "unknown" ? "not-told" : "owners-word",
      moved: "not-known",
      warmth: "not-known",
      fixings: "firm",
      // Read by the fitter, who looks first at any change that an owner may make.
      inserts: "ready",
    },
  };
}

function riderPart(q: OwnerQuestion): Findings["soundness"]["riderPart"] {
  if (q.crackOrWhiteLine === "yes") return "failed-structure";
  if (q.clicksOrMoves === "yes" || q.strapOrBarWorn === "yes") return "failed-renewable";
  const looked = [q.crackOrWhiteLine, q.clicksOrMoves, q.strapOrBarWorn].every((answer) => answer === "no");
  return looked ? "cannot-be-seen" : "not-looked";
}

function warranty(q: OwnerQuestion): Findings["standing"]["warranty"] {
  if (q.inWarranty !== "dont-know") return q.inWarranty === "yes" ? "taken-to-run" : "out";
  return q.underFiveYears === "no" ? "out" : "taken-to-run";
}

function build({ arch, metal, exchange }: OwnerQuestion): Findings["way"]["build"] {
  return headKind({
    arch,
    metal,
    exchange,
    movedBy: "unknown",
    form: "none",
    toldBy: "owners-word",
  });
}
