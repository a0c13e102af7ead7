import { FIELDS, type FieldRecord } from "../road.ts";

/** Readings that are taken together, in the order of the work. `from`: the places of the case they stand in. */
export interface Group {
  readonly title: string;
  readonly from: readonly string[];
}

export const GROUPS: readonly Group[] = [
  { title: "Who and where", from: ["title", "practice", "visit", "worker"] },
  { title: "What's been going on", from: ["horses[].name", "horses[].about", "horses[].age", "horses[].history", "horses[].onlyThisHorse"] },
  { title: "Horse stood up", from: ["horses[].standing", "horses[].trunkUnchanged"] },
  { title: "Hands on", from: ["horses[].hands"] },
  { title: "Trotted up", from: ["horses[].moving"] },
  { title: "Tracings", from: ["horses[].traces", "horses[].profile"] },
  { title: "Whose saddle", from: ["saddle.name", "saddle.maker", "saddle.model", "saddle.standing"] },
  { title: "What it went through", from: ["saddle.past"] },
  { title: "How it is built", from: ["saddle.build", "saddle.mounting"] },
  { title: "Saddle looked over", from: ["saddle.looked"] },
  { title: "Lines and square", from: ["saddle.lines"] },
  { title: "Head and points", from: ["saddle.head"] },
  { title: "How it bears", from: ["saddle.bearing"] },
  { title: "Panel", from: ["saddle.panel"] },
  { title: "Plates at hand", from: ["platesAtHand"] },
  { title: "Laid on", from: ["horses[].laidOn"] },
  { title: "Girthed up", from: ["horses[].girthed"] },
  { title: "Template offered up", from: ["horses[].template"] },
  { title: "The rider", from: ["rider"] },
  { title: "Rider up", from: ["horses[].riderUp"] },
  { title: "Half-seat", from: ["horses[].halfSeat"] },
  { title: "In movement", from: ["horses[].moved"] },
];

const plain = (path: string) => path.replace(/\[\d+\]/g, "[]");
const within = (path: string, from: string) => path === from || path.startsWith(`${from}.`) || path.startsWith(`${from}[`);

/** The fields of one group in the order of the case; those of lists come with their list. */
export function fieldsOf(group: Group): FieldRecord[] {
  return group.from.flatMap((from) => FIELDS.filter((field) => within(field.path, from)));
}

/** Which group a place of the case is read in; -1 where it is in none. */
export function groupOf(path: string): number {
  return GROUPS.findIndex((group) => group.from.some((from) => within(plain(path), from)));
}
