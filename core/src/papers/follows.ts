import type { Follows } from "../answer/result.ts";
import type { JudgedLimit } from "../judge/judgement.ts";
import { limitRule } from "../judge/limits/all.ts";
import type { Following } from "../report/sheet-data.ts";
import { limitName } from "./limit-names.ts";
import { worstOf } from "./owner-faults.ts";

/** Limits that a change of the head carries with it, in the order in which they are told. */
const CARRIED = [
  "clearance-girthed",
  "clearance-rider-up",
  "clearance-half-seat",
  "clearance-side",
  "seat-slope",
  "channel-width",
];

/** What follows from the change: each carried limit today and after. */
export function followingOf(
  today: readonly JudgedLimit[],
  after: readonly JudgedLimit[],
): readonly Following[] {
  return CARRIED.flatMap((rule) =>
    after
      .filter((limit) => limit.rule === rule)
      .map((limit) => {
        const before = today.find((one) => one.rule === rule && one.at === limit.at);
        return {
          what: limitName(rule, limit.at),
          unit: limitRule(rule).unit,
          today: figure(before),
          after: figure(limit),
        };
      }),
  );
}

function figure(limit: JudgedLimit | undefined) {
  return limit?.value === undefined ? undefined : { value: limit.value, u: limit.u };
}

/** The same for the owner, in whole millimetres and plain words; nothing where nothing was computed. */
export function followsInWords({ moved, doubt }: Follows): readonly string[] {
  const said: string[] = [];
  const { clearanceMm, seatDeg, channelMm, spreadMm } = moved;
  if (spreadMm !== undefined)
    said.push(
      `The head becomes about ${round(spreadMm)} mm ${spreadMm > 0 ? "wider" : "narrower"} inside its tips.`,
    );
  if (clearanceMm !== undefined) {
    const about = doubt.clearanceMm === undefined ? "" : `, give or take ${round(doubt.clearanceMm)} mm`;
    said.push(
      `There will be about ${round(clearanceMm)} mm ${clearanceMm < 0 ? "less" : "more"} room over the withers${about}.`,
    );
  }
  if (seatDeg !== undefined) {
    said.push(
      `The seat tips ${seatDeg < 0 ? "forward" : "back"} by about ${Math.abs(seatDeg).toFixed(1)} degrees, so its balance is looked at again.`,
    );
  }
  if (channelMm.front !== undefined && round(channelMm.front) > 0) {
    said.push(
      `The channel between the panels becomes about ${round(channelMm.front)} mm ${channelMm.front > 0 ? "wider" : "narrower"} in front.`,
    );
  }
  return said;
}

/**
 * How far the head is then from what was wanted, where that is allowed: an owner who was told of 8 mm asks why it becomes 5. Said only
 * where an owner can add it up: the tips of another plate may lie deeper, where a back wants more. movedMm: of the spread.
 */
export function leftInWords(
  today: readonly JudgedLimit[],
  after: readonly JudgedLimit[],
  movedMm: number,
): readonly string[] {
  const worst = worstOf("spread-wanted", today);
  const left = after.find(({ rule, at }) => rule === worst?.rule && at === worst.at);
  if (worst?.value === undefined || left?.value === undefined || left.outcome !== "inside") return [];
  const addsUp = Math.abs(worst.value + movedMm - left.value) < ADDS_UP_MM;
  if (!addsUp || round(left.value) === 0) return [];
  const way = left.value < 0 ? "narrower" : "wider";
  return [
    `It is then about ${round(left.value)} mm ${way} than this back would want, which is within what is allowed.`,
  ];
}

/** As whole millimetres are read. */
const ADDS_UP_MM = 0.5;

const round = (value: number): number => Math.round(Math.abs(value));
