import { practice, published } from "./make.ts";

const SLIP =
  "Greve L, Dyson SJ (2013), saddle slip in 38 of 71 hind-lame horses, in none of the sound ones, stopped by blocking in 37 of 38";

export const HORSE_RULES = [
  practice(
    "horse-lame",
    "A horse that is uneven goes to the vet before it is ridden.",
    "horses[].moving.uneven",
  ),
  practice(
    "horse-nerves",
    "Stumbling, swaying or a dragged toe go to the vet before the horse is ridden.",
    "horses[].history.nerveSigns",
    "horses[].moving.toeDragOrStumble",
  ),
  practice(
    "horse-lesion",
    "A wound, sore or swelling under saddle or girth goes to the vet before the horse is ridden.",
    "horses[].history.wound",
    "horses[].standing.swelling",
    "horses[].standing.openSore",
  ),
  practice(
    "horse-pain-strong",
    "A strong reaction to the hand (grade 3) goes to the vet before the horse is ridden.",
    "horses[].hands",
  ),
  practice(
    "horse-pain-clear",
    "A clear reaction that comes again, or mild ones at several places, go to the vet before any saddle work.",
    "horses[].hands",
  ),
  practice(
    "horse-pain-mild",
    "One mild reaction that comes again: nothing is altered; the horse is looked at again another day.",
    "horses[].hands",
  ),
  published(
    "horse-other-sign",
    "A sudden change, a fall, painkillers, heat, loss of muscle or weight, or a saddle that always slips the same way go to the vet before any saddle work.",
    `${SLIP}; the other signs are common practice, no source; eight of the 24 ridden signs (Dyson et al. 2018) from memory`,
    "horses[].history",
    "horses[].standing.heat",
    "visit.diseaseInYard",
  ),
  practice(
    "horse-not-touched",
    "A horse is not judged until every zone has been touched, on both sides.",
    "horses[].hands",
  ),
  practice(
    "horse-not-trotted",
    "A horse is not judged until it has been seen trotted up in hand and stumbling has been asked about.",
    "horses[].moving.uneven",
    "horses[].moving.toeDragOrStumble",
    "horses[].history.nerveSigns",
  ),
  practice(
    "horse-not-asked",
    "A horse is not judged until its history has been asked, question by question, and its skin looked at.",
    "horses[].history",
    "horses[].standing",
  ),
  practice(
    "horse-off-work",
    "After more than four weeks off work no head is pressed until the horse has been back six to eight weeks.",
    "horses[].history.offWorkWeeks",
    "horses[].history.backInWorkWeeks",
  ),
  practice(
    "horse-work-not-known",
    "No head is pressed until it is known whether the horse has been in work.",
    "horses[].history.offWorkWeeks",
    "horses[].history.backInWorkWeeks",
  ),
  practice(
    "horse-changing",
    "A growing horse, and one with a hollow of more than 10 mm behind the shoulder, will have another back: no head is pressed for it; it is looked at again in six to eight weeks.",
    "horses[].history.growing",
    "horses[].standing.hollowNear",
    "horses[].standing.hollowOff",
  ),
  practice(
    "horse-shape-not-known",
    "No head is pressed until it is known whether the horse is growing, and a straight-edge was laid behind both shoulders.",
    "horses[].history.growing",
    "horses[].standing.hollowNear",
    "horses[].standing.hollowOff",
  ),
  practice(
    "horse-no-reason",
    "Touched, trotted up and asked about: no reason was seen.",
    "horses[].hands",
    "horses[].moving",
    "horses[].history",
  ),
] as const;
