import { expect, test } from "vitest";
import { paperInNode } from "../../bridges/paper/src/paper-node.ts";
import { AgreementTooLong, agreementOf } from "../../core/src/report/agreement.ts";
import { agreementText } from "../../core/src/report/agreement-text.ts";
import { emptyCase } from "../../core/src/survey/answer-question.ts";
import { OF_VISIT } from "../../core/src/survey/recorded/places.ts";
import { SIGNATURE_LIMITS, signatureIn, signatureSchema } from "../../core/src/survey/recorded/signature.ts";
import { HORSE_ANSWERS, SADDLE_ANSWERS, WORK_ANSWERS } from "../../core/src/terms/answers.ts";

const paper = await paperInNode();
const OVER = "a".repeat(64);
const said = (ofVisit: readonly (readonly [string, unknown])[]) =>
  agreementText({
    file: emptyCase("Visit", "2031-04-12"),
    ofVisit: new Map(ofVisit),
    differ: [],
    erased: [],
  }).split("\n");

test("the same entries give the same text, in whatever order they were said", () => {
  const places: [string, string][] = [
    [OF_VISIT.agreedWork, "Let out by 6 mm."],
    [OF_VISIT.agreedLimit, "10 mm."],
  ];
  expect(said(places)).toEqual(said([...places].reverse()));
  expect(said(places)[0]).toBe("Agreed on 12 April 2031");
});

test("every answer has its heading in the text, and one that nobody knows is not answered", () => {
  for (const [at, ids] of [
    [OF_VISIT.horseAnswer, HORSE_ANSWERS],
    [OF_VISIT.saddleAnswer, SADDLE_ANSWERS],
    [OF_VISIT.workAnswer, WORK_ANSWERS],
  ] as const) {
    const texts = ids.map((id) => said([[at, id]]).join("\n"));
    expect(new Set(texts).size).toBe(ids.length);
    for (const text of texts) expect(text.match(/: not answered\./g)?.length).toBe(2);
    expect(
      said([[at, "bold"]])
        .join("\n")
        .match(/: not answered\./g)?.length,
    ).toBe(3);
  }
});

test("strokes stand on paper as they were drawn, to scale, and a page that is too full is refused", () => {
  const text = said([[OF_VISIT.agreedWork, "Let out by 6 mm."]]).join("\n");
  const strokes = [
    [
      [0, 0],
      [0.5, 0.3],
      [1, 0.1],
    ] as const,
  ];
  const drawn = agreementOf(text, OVER, { by: "A", forOwner: true, strokes }, paper.measure);
  const line = drawn.pages[0]?.items.find((item) => item.name === "signature");
  if (line?.kind !== "line") throw new Error("the signature is drawn");
  const [first, , last] = line.points;
  expect((last?.[0] ?? 0) - (first?.[0] ?? 0)).toBeCloseTo(90, 6);
  expect((last?.[1] ?? 0) - (first?.[1] ?? 0)).toBeCloseTo(9, 6);
  const words = drawn.pages[0]?.items.flatMap((item) => (item.kind === "text" ? [item.words] : [])).join(" ");
  expect(words).toContain("for the owner");
  expect(words).toContain(OVER);
  expect(() => agreementOf(`${text}\n${"word ".repeat(2000)}`, OVER, undefined, paper.measure)).toThrow(
    AgreementTooLong,
  );
});

test("a signature at its limits is taken, one above is none; so is what is no signature", () => {
  const { strokes, points } = SIGNATURE_LIMITS;
  const of = (count: number, long: number) => ({
    over: OVER,
    by: "A",
    as: "owner",
    strokes: Array.from({ length: count }, () => Array.from({ length: long }, () => [0.123, 0.321])),
  });
  expect(signatureSchema.safeParse(of(strokes, points)).success).toBe(true);
  expect(signatureSchema.safeParse(of(strokes + 1, 1)).success).toBe(false);
  expect(signatureSchema.safeParse(of(1, points + 1)).success).toBe(false);
  // What is kept of a person may have 200,000 signs.
  expect(JSON.stringify(JSON.stringify(of(strokes, points))).length).toBeLessThan(200_000);
  expect(signatureIn(JSON.stringify(of(1, 3)))?.by).toBe("A");
  for (const none of [undefined, 3, "", "{", "null", JSON.stringify({ ...of(1, 1), as: "rider" })])
    expect(signatureIn(none)).toBeUndefined();
});
