import { practice, published } from "./make.ts";

const LOAD =
  "Powell et al. 2008 (little difference at 15 and 20 %, soreness rising markedly at 30 %) and Stefánsdóttir et al. 2017 (22.7 ± 4.3 % at the lactate limit); that 20 % is the line is a choice, not a finding";

export const FIT_RULES = [
  practice(
    "fit-all-inside",
    "Everything that was read lies inside, and the hands agree.",
    "horses[].girthed.handNear",
    "horses[].girthed.handOff",
  ),
  practice(
    "fit-rider-first",
    "Too small a seat or stirrups on unequal holes are put right before any saddle is judged.",
    "rider.seatTooSmall",
    "rider.stirrupHolesNear",
    "rider.stirrupHolesOff",
  ),
  published(
    "fit-rider-heavy",
    "Rider and tack are over 20 % of the horse's mass: a lighter load comes first, and no work on a saddle makes up for it.",
    LOAD,
    "rider.massDressed",
    "rider.tackMass",
    "horses[].mass",
  ),
  practice("fit-set-up", "What lies outside is cured by girthing, placing or padding.", "horses[].girthed"),
  practice(
    "fit-panel-first",
    "A flat, lumpy, wrongly shaped or crooked panel is put right first; then the head is judged.",
    "saddle.panel.state",
    "saddle.panel.square",
  ),
  practice(
    "fit-panel",
    "The head is right and the fill needed is at most 8 mm a side: the panel cures it.",
    "saddle.panel",
    "horses[].girthed",
  ),
  practice(
    "fit-wasted",
    "Over a hollow of more than 10 mm no head is narrowed: fill for now, and look again in six to eight weeks.",
    "horses[].standing.hollowNear",
    "horses[].standing.hollowOff",
    "horses[].trunkUnchanged",
  ),
  practice(
    "fit-fill-too-deep",
    "The hollow is deeper than fill can carry: the horse is built up first.",
    "horses[].standing.hollowNear",
    "horses[].standing.hollowOff",
  ),
  practice(
    "fit-set-back",
    "The head is best within 3 mm of as made, the last change went the other way, and fewer than two reversals are on record.",
    "saddle.head.asMadeSpreadTips",
    "saddle.past.alterations",
  ),
  practice(
    "fit-exchange",
    "A plate or insert at hand makes the whole fit; the ridden check decides.",
    "platesAtHand",
    "saddle.head.spreadTips",
  ),
  practice(
    "fit-exchange-against-hands",
    "The hands show the contrary of what the plate would do: a template is offered up before it is changed.",
    "horses[].girthed.handNear",
    "horses[].girthed.handOff",
    "horses[].template",
  ),
  practice(
    "fit-hands-against-template",
    "The hands show the contrary of what the template says: both are taken again before a saddle is given up.",
    "horses[].template",
    "horses[].girthed.handNear",
    "horses[].girthed.handOff",
  ),
  practice(
    "fit-no-plate-at-hand",
    "A head of this mounting would fit, and no plate at hand makes it.",
    "platesAtHand",
  ),
  practice(
    "fit-press",
    "A change at the press makes the whole fit, inside with half of the uncertainty to spare, and the hands agree.",
    "horses[].template",
    "horses[].girthed.handNear",
    "horses[].girthed.handOff",
  ),
  practice(
    "fit-press-needs-template",
    "Two angles subtracted never suffice for a press: the template is offered up to the head with feelers at both tips.",
    "horses[].template.nearTip",
    "horses[].template.offTip",
  ),
  practice(
    "fit-press-needs-hands",
    "A head is pressed only when the hands show the fault in the direction that the change cures.",
    "horses[].girthed.handNear",
    "horses[].girthed.handOff",
  ),
  practice("fit-dressed-limit", "Dressed, a head is pressed 8 mm at the most.", "saddle.head.spreadTips"),
  practice(
    "fit-spent",
    "A head would fit that the caps forbid: this tree has had its share.",
    "saddle.past.alterations",
    "saddle.head.asMadeSpreadTips",
  ),
  practice(
    "fit-other-saddle",
    "No head within 20 mm either way makes the whole fit: rails and curve stay as they are.",
    "saddle.bearing",
    "horses[].traces",
    "horses[].profile",
  ),
  practice(
    "fit-wrong-place",
    "The saddle lies on the blade or behind the last rib, and there is no room to move it.",
    "horses[].girthed.pointBehindBladeNear",
    "horses[].girthed.rearBeforeLastRib",
  ),
  practice(
    "fit-not-ridden",
    "Nothing is called right before the saddle was seen ridden.",
    "horses[].moved.sideOffset",
  ),
  practice(
    "fit-does-not-rest",
    "In the calculation the saddle does not come to rest on this back as it was read: what rests on that cannot be told, and the bearing is read again.",
    "saddle.bearing",
    "horses[].traces",
    "horses[].profile",
  ),
  practice("fit-cannot-tell", "What is missing or too wide decides the answer.", "horses[]"),
] as const;
