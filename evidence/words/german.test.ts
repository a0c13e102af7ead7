import { readingSays } from "@treewright/core/judge/next/traces.ts";
import { expect, test } from "vitest";
import { CHOICES } from "../../apps/web/src/catalogue/de/choices.ts";
import { TABLES, TRADE_DE } from "../../apps/web/src/catalogue/de/index.ts";
import { tradeFrom } from "../../apps/web/src/catalogue/trade.ts";
import { ENGLISH } from "../../apps/web/src/spoken/english.ts";
import { agreementSays } from "./agreement-says.ts";
import { answersSaid, choicesGiven, hintsSaid, placesSaid, readNextSaid } from "./core-says.ts";
import { letterSays } from "./letter-says.ts";
import { ownerPageSays } from "./owner-page-says.ts";
import { refusals } from "./refused.ts";
import { refusedBeside } from "./refused-tables.ts";

/*
 * Both ways: German lacks nothing that core says, and holds nothing that core no longer says. Refusals are drawn out of core
 * by slips of the hand: one that no slip here draws is not seen. Whether the German is good a fitter has to read.
 */

const problems = refusals();
/** Sentences whose figures a reader acts on. */
const told = [
  ...new Set([...letterSays(), ...ownerPageSays(), ...agreementSays(), ...placesSaid(), ...answersSaid()]),
];
const said = [
  ...told,
  ...hintsSaid(),
  ...readNextSaid().map(({ says }) => says),
  ...problems.flatMap(({ read, allowed }) => [read, allowed]),
  ...refusedBeside().flatMap(({ where = "", read, allowed }) => [where, read, allowed]),
];

test("every title, question, hint, answer, reason, caution, refusal and sentence of letter, agreement and owner's page stands in German", () => {
  expect(said.length).toBeGreaterThan(1000);
  expect([...new Set(said.filter((english) => TRADE_DE.langOf(english) === "en"))]).toEqual([]);
});

test("what a visit kept of the reading to take next names its place in German", () => {
  for (const { says, path } of readNextSaid())
    expect(TRADE_DE.said(says)).toBe(`Als Nächstes ablesen: ${readingSays(path, TRADE_DE.said)}.`);
});

test("German holds no sentence that core no longer says", () => {
  const keys = TABLES.flatMap((table) => Object.keys(table));
  const heard = new Set<string>();
  // A table that tells which of its sentences were asked for, holes and all.
  const listening = tradeFrom(
    TABLES.map((table) => Object.fromEntries(Object.keys(table).map((key) => [key, key]))),
    {},
    ENGLISH,
    (key) => heard.add(key),
  );
  for (const english of said) listening.said(english);
  expect(keys.filter((key) => !heard.has(key))).toEqual([]);
  expect(keys.filter((key, at) => keys.indexOf(key) !== at)).toEqual([]);
});

test("everything to choose has its German word, and no other has", () => {
  const given = choicesGiven();
  const known = new Set(Object.keys(CHOICES));
  const lacking = given.filter(({ id, place }) => !known.has(`${place}/${id}`) && !known.has(id));
  expect(lacking).toEqual([]);
  const used = new Set(given.map(({ id, place }) => (known.has(`${place}/${id}`) ? `${place}/${id}` : id)));
  expect([...known].filter((key) => !used.has(key))).toEqual([]);
});

test("two answers of one question never get the same German word", () => {
  const places = new Map<string, string[]>();
  for (const { id, place } of choicesGiven())
    places.set(place, [...(places.get(place) ?? []), TRADE_DE.choice(id, place)]);
  for (const [place, words] of places) {
    const ids = new Set(
      choicesGiven()
        .filter((one) => one.place === place)
        .map(({ id }) => id),
    );
    expect(new Set(words).size, place).toBe(ids.size);
  }
});

test("figures of a sentence stand in its German, so that no limit is changed by its translation", () => {
  const figures = (text: string) =>
    [...text.matchAll(/\d+([.,]\d+)?/g)].map(([one]) => one.replace(",", ".")).sort();
  for (const english of told) {
    expect(figures(TRADE_DE.said(english).replace("höchstens 2000", "höchstens 2,000")), english).toEqual(
      figures(english),
    );
  }
});
