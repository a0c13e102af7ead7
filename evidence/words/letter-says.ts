import { LIMITS } from "@treewright/core/judge/limits/all.ts";
import { followsInWords, leftInWords } from "@treewright/core/papers/follows.ts";
import { letterDataOf } from "@treewright/core/papers/letter.ts";
import { faultSays } from "@treewright/core/papers/owner-faults.ts";
import { ofTheHorse } from "@treewright/core/papers/owner-horse.ts";
import { OWNER_REASONS } from "@treewright/core/papers/owner-reasons.ts";
import {
  firstForOwner,
  horseForOwner,
  rideForOwner,
  saddleForOwner,
  soonerForOwner,
} from "@treewright/core/papers/owner-says.ts";
import { whereItReacted } from "@treewright/core/papers/owner-touch.ts";
import { toldOf, workMeaning } from "@treewright/core/papers/owner-work.ts";
import { panelForOwner } from "@treewright/core/papers/panel.ts";
import { dayInWords } from "@treewright/core/report/day.ts";
import { letterOf } from "@treewright/core/report/letter.ts";
import { aboutPath } from "@treewright/core/survey/about-path.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "@treewright/core/terms/answers.ts";
import { SIDES, ZONES } from "@treewright/core/terms/places.ts";
import { firstAnswer, RIDES, surveyOf } from "../answer/examples.ts";

/*
 * Every sentence that a letter can have: the parts of it are asked for everything that they can say. What is given them here need
 * not be a case that there can be.
 */
const MONTHS = Array.from({ length: 12 }, (_, at) => String(at + 1).padStart(2, "0"));
// biome-ignore lint/suspicious/noExplicitAny: as much of an answer as the part looks at
const some = (given: object): any => given;

export function letterSays(): ReadonlySet<string> {
  return new Set(
    [
      ...ofAnswers(),
      ...Object.values(OWNER_REASONS),
      ...LIMITS.flatMap(({ id }) =>
        [-300, -3, 3, 300].flatMap((value) => faultSays(some({ rule: id, value })) ?? []),
      ),
      ...ofHands(),
      ...ofNumbers(),
      ...ofFollows(),
      ...ofLeft(),
      ...ofPanels(),
      ...ofExamples(),
      ...MONTHS.map((month) => dayInWords(`2031-${month}-04`)),
      `First comes: ${aboutPath("saddle.head.spreadTips")}.`,
    ].filter((said) => said.trim() !== ""),
  );
}

function ofAnswers(): readonly string[] {
  return HORSE_ANSWERS.flatMap((horse) =>
    SADDLE_ANSWERS.flatMap((saddle) =>
      WORK_ANSWERS.flatMap((work) => {
        const answers = some({
          horse: { id: horse, nextStep: "" },
          saddle: { id: saddle },
          work: { id: work, also: WORK_ANSWERS, cautions: [], because: [] },
        });
        const shared = { ...answers, work: { ...answers.work, because: [{ rule: "right-harms-another" }] } };
        const { will, not, next } = toldOf(answers);
        return [
          ...horseForOwner(horse),
          ...saddleForOwner(answers),
          ...rideForOwner(answers, []),
          ...rideForOwner(answers, ["ride"]),
          firstForOwner(horse) ?? "",
          soonerForOwner(answers),
          ...[...will, ...not, next],
          workMeaning(answers),
          workMeaning(shared),
        ];
      }),
    ),
  );
}

function ofHands(): readonly string[] {
  const touches = [1, 2, 3].flatMap((grade) => ["yes", "no"].map((twice) => ({ grade, twice })));
  const one = ZONES.flatMap((zone) =>
    touches.flatMap((touch) =>
      [["near"], ["off"], SIDES].flatMap((sides) =>
        whereItReacted(
          some({ name: "", hands: { [zone]: Object.fromEntries(sides.map((side) => [side, touch])) } }),
        ),
      ),
    ),
  );
  const everywhere = Object.fromEntries(ZONES.map((zone) => [zone, { near: { grade: 1 } }]));
  return [...one, ...whereItReacted(some({ name: "", hands: everywhere }))];
}

const ofNumbers = (): readonly string[] =>
  ofTheHorse(
    some({
      identity: { transponder: "276020000123456", ueln: "276431234567890" },
      answers: { horse: { id: "" }, work: { because: [] }, permitted: ["ride"] },
      body: { because: [] },
    }),
  );

function ofLeft(): readonly string[] {
  const at = (value: number, outcome: string) => [some({ rule: "spread-wanted", at: "", value, outcome })];
  return [-3, 3].flatMap((left) => leftInWords(at(-8, "outside"), at(left, "inside"), left + 8));
}

function ofFollows(): readonly string[] {
  const moved = (sign: number) => ({
    clearanceMm: 3.2 * sign,
    seatDeg: 1.2 * sign,
    channelMm: { front: 2.3 * sign },
    spreadMm: 4.1 * sign,
  });
  return [1, -1].flatMap((sign) =>
    [{}, { clearanceMm: 2.1 }].flatMap((doubt) => followsInWords(some({ moved: moved(sign), doubt }))),
  );
}

function ofPanels(): readonly string[] {
  const side = (mm: number) =>
    Object.fromEntries(["front", "mid", "rear"].map((station) => [station, { middle: mm, outer: mm }]));
  const both = [true, false];
  return both.flatMap((oneSided) =>
    both.flatMap((forNow) =>
      ["wool", "foam"].flatMap((filling) =>
        [1, 3].flatMap((near) =>
          panelForOwner(
            some({
              work: {
                first: ["reflock"],
                any: true,
                oneSided,
                filling,
                recheck: { forNow, from: "2031-05-24", to: "2031-06-07" },
                fill: { near: side(near), off: side(2) },
              },
            }),
          ),
        ),
      ),
    ),
  );
}

/** As the letters of the examples ask for them: headings, frame, cautions, and what only a case has. */
function ofExamples(): readonly string[] {
  const heard: string[] = [];
  const tongue = {
    tag: "en",
    say: (english: string) => {
      heard.push(english);
      return english;
    },
  };
  for (const { name, horse } of RIDES) {
    const survey = surveyOf(name);
    letterOf(letterDataOf(survey, firstAnswer(survey, horse), tongue), (text) => text.length, tongue);
  }
  return heard;
}
