import { expect, test } from "vitest";
import { joined } from "../../core/src/answer/draw-table.ts";
import { roadOf } from "../../core/src/answer/road.ts";
import { drawsElsewhere, sharedAnswer } from "../../core/src/answer/shared.ts";
import { type Answer, answer } from "../../core/src/answer.ts";
import { SEED, surveyOf } from "./examples.ts";

/*
 * The draws shared between two hands change no digit. Here both hands are one thread; that two workers keep to it is
 * looked at in the page's own check.
 */
const options = { horse: 0, seed: SEED };

function alone(name: string): readonly Answer[] {
  const road = answer(surveyOf(name), options);
  const all: Answer[] = [];
  for (;;) {
    const { done, value } = road.next();
    all.push(value);
    if (done) return all;
  }
}

async function shared(name: string) {
  const asked: [string | undefined, number, number][] = [];
  const road = sharedAnswer(surveyOf(name), options, async (settingId, from, to) => {
    asked.push([settingId, from, to]);
    return joined([...drawsElsewhere(roadOf(surveyOf(name), 0, SEED), SEED, settingId, from, to)]);
  });
  const all: Answer[] = [];
  for (;;) {
    const { done, value } = await road.next();
    all.push(value);
    if (done) return { all, asked };
  }
}

const digits = (one: unknown): string =>
  JSON.stringify(one, (_, part) => (part instanceof Float64Array ? Array.from(part) : part));

test.each(["09-alter-in-the-saddle", "08-nothing-to-do", "01-sore-to-the-touch"])(
  "%s: two hands answer as one",
  async (name) => {
    const one = alone(name);
    const two = await shared(name);
    expect(digits(two.all.at(-1))).toBe(digits(one.at(-1)));
    const drawn = (one.at(-1)?.draws.of ?? 0) > 0;
    // Once asked, for the second half, of the setting that was chosen at the means; the first half is told batch by batch.
    expect(two.asked).toEqual(drawn ? [[one[0]?.answers.setting?.id, 500, 1000]] : []);
    expect(two.all.map(({ draws }) => draws.count)).toEqual(drawn ? [0, 250, 500, 1000] : [0]);
  },
);
