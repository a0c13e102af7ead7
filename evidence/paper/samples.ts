import type { At } from "../../core/src/engine/drawing.ts";
import type { LetterData } from "../../core/src/report/letter-data.ts";
import type { SheetData } from "../../core/src/report/sheet-data.ts";
import type { SheetFacts } from "../../core/src/report/sheet-facts.ts";
import type { HeadOutline, TemplateData } from "../../core/src/report/template-data.ts";

/** Invented sheets, only for checks of paper: their figures mean nothing. */
export function facts(over: Partial<SheetFacts> = {}): SheetFacts {
  return {
    caseTitle: "Bramble and the general purpose saddle",
    horse: "Bramble",
    saddle: "general purpose, about 2009",
    date: "2026-03-14",
    hand: "Ines Tarn",
    engineVersion: "0.1.0",
    inputHash: "9f2c41d07ab3e888",
    invented: true,
    cautions: ["Pain, heat, swelling, sores or lameness go to a vet before any fit is judged."],
    stop: [],
    back: {
      profile: [
        [-60, 60],
        [0, 58],
        [120, 30],
        [240, 18],
        [420, 30],
      ],
      stations: { front: 0, mid: 190, rear: 380 },
    },
    ...over,
  };
}

/** A round crown that runs into straight arms: half of a hyperbola. */
export function headOf(spreadMm: number, depthMm: number): HeadOutline {
  const round = 20;
  const scale = depthMm / (Math.sqrt(round * round + (spreadMm / 2) ** 2) - round);
  const half = (way: number) =>
    Array.from({ length: 41 }, (_, i): At => {
      const y = ((spreadMm / 2) * i) / 40;
      return [way * y, -(Math.sqrt(round * round + y * y) - round) * scale];
    });
  return { near: half(-1), off: half(1) };
}

export function template(spreadMm: number, over: Partial<TemplateData> = {}): TemplateData {
  return {
    facts: facts(),
    face: "inside",
    wanted: headOf(spreadMm, 96),
    today: headOf(spreadMm - 8, 98),
    spread: { value: spreadMm, u: 3.2 },
    depth: { value: 96, u: 1.5 },
    allowed: "allowed for: panel 25 mm",
    halfAngle: { near: { value: 42.1, u: 1.8 }, off: { value: 41.7, u: 1.8 } },
    station: "front, at the tree points",
    temper: "cold",
    larger: "near",
    ...over,
  };
}

export function letter(over: Partial<LetterData> = {}): LetterData {
  return {
    facts: facts(),
    practice: {
      name: "Skarholm Saddles",
      address: "3 Quay Lane, Skarholm",
      telephone: "+44 1632 960123",
      mail: "hello@skarholm.example",
    },
    owner: "Ms Vey",
    asked: "You asked whether the head of this saddle can be opened for Bramble.",
    horse: {
      says: "We saw and felt nothing today that speaks against work.",
      because: ["Hands on, both sides, twice: no place answered."],
    },
    saddle: {
      says: "Nothing was found wrong, looked at with its cover on.",
      because: ["We have not seen the bare tree."],
    },
    work: {
      says: "Change the plate for one 10 mm wider inside the tips.",
      because: ["The points are steeper than your horse's sides."],
    },
    mayIRide: "Yes, at the work you do now, until the visit below.",
    willBeDone: ["The plate is exchanged and the head measured again as fitted."],
    willNotBeDone: ["The head is not pressed and not warmed."],
    follows: ["Clearance over the withers, girthed: 52 mm today, about 44 mm after."],
    nextVisit: "In six weeks, or sooner if your horse changes shape.",
    whoMayDoIt: "A fitter who may exchange plates.",
    limits: ["A fit holds for the horse as it stood today."],
    ...over,
  };
}

export function sheet(over: Partial<SheetData> = {}): SheetData {
  const words = {
    says: "Exchange the plate",
    because: [{ says: "Past the limit of 5°.", source: "common practice, no source" }],
    nextStep: "Measure.",
    who: "The fitter",
  };
  const back = Array.from(
    { length: 61 },
    (_, i): At => [(i - 30) * 6, 25 - Math.sqrt(625 + ((i - 30) * 6) ** 2)],
  );
  const cells = Array.from({ length: 2 * 9 * 4 }, (_, k) => k);
  const side = (k: number) => (k < 36 ? -1 : 1);
  return {
    facts: facts(),
    horse: words,
    saddle: words,
    work: words,
    also: ["set up a little in front"],
    limits: {
      open: (["between", "outside", "cannot-tell", "inside", "not-read"] as const).map((outcome) => ({
        rule: "channel, mid: from 60 mm",
        unit: "mm",
        today: { figure: outcome === "not-read" ? undefined : { value: 61, u: 2 }, outcome },
        after: { figure: { value: 58, u: 2 }, outcome: "between" },
      })),
      inside: [
        { name: "clearance, girthed", unit: "mm", figures: [{ value: 52, u: 2.2 }] },
        {
          name: "clearance beside, girthed",
          unit: "mm",
          figures: [
            { value: 27, u: 2.2 },
            { value: 26, u: 2.4 },
          ],
        },
      ],
      notRead: ["rock by hand"],
      notReadCount: 1,
    },
    sections: [
      {
        station: "front",
        back,
        today: headOf(200, 96),
        chosen: headOf(210, 95),
        head: undefined,
        spread: { figure: { value: 210, u: 4 }, tips: { near: [-105, -95], off: [105, -95] } },
        misfit: { near: { value: 1.2, u: 2 }, off: undefined },
      },
    ],
    pressure: [
      {
        of: "today",
        field: {
          nx: 9,
          nv: 4,
          xMm: Float64Array.from(cells, (k) => Math.floor((k % 36) / 4) * 45),
          yMm: Float64Array.from(cells, (k) => side(k) * (40 + (k % 4) * 25)),
          kPa: Float64Array.from(cells, (k) => Math.max(0, 24 - Math.abs((k % 36) - 12))),
        },
      },
    ],
    pressureLimitKPa: 20,
    follows: [
      { what: "channel, front", unit: "mm", today: { value: 64, u: 2 }, after: { value: 66, u: 2.4 } },
    ],
    next: "Clearance over the withers in half-seat.",
    missing: ["Warm trace at the front"],
    known: [],
    panel: undefined,
    rest: {
      says: ["Today: it comes to rest."],
      assumed: ["stiffness of the back: 0.06 MPa (0.03 to 0.2)"],
      made: "Engine 0.1.0; 1000 draws of 1000, seed 1.",
    },
    plates: { rows: [], note: "" },
    gaits: undefined,
    ...over,
  };
}
