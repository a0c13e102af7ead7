import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { finderOf } from "../../apps/web/src/home/find.ts";
import { type ListedVisit, withVisit } from "../../apps/web/src/practice/card.ts";
import type { Held } from "../../core/src/records/personal.ts";

const visit = (more: Partial<ListedVisit>): ListedVisit => ({
  subject: "s",
  horse: "h",
  saddle: "d",
  last: "",
  horseName: "Garganey",
  saddleName: "Brown jumping saddle",
  yard: "Gull Bank",
  day: "2031-04-12",
  minutes: undefined,
  asked: "",
  begun: true,
  finished: true,
  done: "",
  nextInWeeks: undefined,
  horseAnswer: "",
  invented: false,
  owner: "p",
  ...more,
});
const held = (person: string, value: string): Held => ({
  person,
  field: "owner",
  salt: "5a".repeat(32),
  value,
});

describe("a visit is found by a few letters", () => {
  const people = [held("p", "Jördis Åkerblom"), held("q", "Tobias Renn")];
  const visits = [visit({}), visit({ subject: "t", horseName: "Turnstone", owner: "q", day: "2031-05-01" })];
  const find = finderOf(visits, people);
  it.each([
    ["garg", ["s"]],
    ["TURN", ["t"]],
    ["jumping gull", ["t", "s"]],
    ["bank garg", ["s"]],
    ["akerblom", ["s"]],
    ["ÅKER", ["s"]],
    ["renn", ["t"]],
    ["garganey renn", []],
    ["  ", ["t", "s"]],
    ["", ["t", "s"]],
  ] as const)("%j", (letters, subjects) =>
    expect(find(letters).map(({ subject }) => subject)).toEqual(subjects),
  );
  it("no longer by a name that was erased", () => {
    expect(finderOf(visits, people.slice(1))("akerblom")).toEqual([]);
  });
});

describe("a visit written anew", () => {
  it("stands in its place by day, once, wherever it stood before", () => {
    const days = fc.array(fc.tuple(fc.integer({ min: 1, max: 28 }), fc.integer({ min: 0, max: 9 })), {
      maxLength: 40,
    });
    fc.assert(
      fc.property(days, (written) => {
        const all = written.map(([day, subject]) =>
          visit({ subject: `s${subject}`, day: `2031-04-${String(day).padStart(2, "0")}` }),
        );
        const list = all.reduce<readonly ListedVisit[]>(withVisit, []);
        const last = new Map(all.map((one) => [one.subject, one]));
        expect(list).toEqual(
          [...last.values()].sort((a, b) => (`${a.day} ${a.subject}` < `${b.day} ${b.subject}` ? -1 : 1)),
        );
      }),
      { seed: 20_311, numRuns: 300 },
    );
  });
});
