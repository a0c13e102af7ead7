import { expect, test } from "vitest";
import { fileOf } from "../answer/examples.ts";
import { idsOf, without } from "../visit/scripted.ts";
import { SCRIPTS } from "../visit/trainer.ts";
import { playedInWebKit } from "./played.ts";

/*
 * A trainer's scripts in WebKit, without signal from a cold start: one whose answer is the horse's, one the saddle's, one the work's.
 * All of them, which takes some minutes, by `npm run test:slow -- webkit-scripts`; all of them in Chromium at each change.
 */
const HERE = ["01-sore-to-the-touch", "18-stripped-and-sound", "10-polymer-head"];

test("three of a trainer's scripts lead to their answers in WebKit", async () => {
  const scripts = SCRIPTS.filter(({ example }) => HERE.includes(example));
  expect(scripts.length).toBe(HERE.length);
  for await (const { script, typed, shown, tookS } of playedInWebKit(scripts)) {
    console.log(`${script.example}: ${typed} readings typed, ${tookS.toFixed(1)} s`);
    expect(typed).toBeGreaterThan(3);
    // Control: without what is typed the answer is another.
    expect(script.leadsTo.every((id) => idsOf(without(script)).includes(id))).toBe(false);
    expect([...shown].sort()).toEqual([...idsOf(fileOf(script.example))].sort());
    expect(shown).toEqual(expect.arrayContaining([...script.leadsTo]));
  }
});
