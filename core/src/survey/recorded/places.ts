/*
 * What a visit is made of, as places of its records. What was read, felt, seen and said stands at its path in the case
 * (`horses[0].girthed.clearanceTop`); what only the records need stands at the places below, which no case has.
 */

/** Kinds of subject. */
export const SORTS = ["visit", "horse", "saddle", "person", "yard"] as const;
export type Sort = (typeof SORTS)[number];

/** Places of a visit that are not of the case. */
export const OF_VISIT = {
  /** Id of the horse, and of the saddle, that this visit is about. */
  horse: "about.horse",
  saddle: "about.saddle",
  /** The visit that this one was begun from: by its id, since clocks are wrong. */
  last: "about.last",
  /** Minutes that the visit is planned for. */
  plannedMinutes: "planned.minutes",
  /** Moment at which it was begun, and finished, in UTC. */
  begun: "run.begun",
  finished: "run.finished",
  /** What was done, in one line, and weeks until the next look: what the next visit reads first. */
  done: "left.done",
  nextInWeeks: "left.nextInWeeks",
  /** What was agreed. */
  agreedWork: "agreed.work",
  agreedRisks: "agreed.risks",
  agreedWorse: "agreed.worseCase",
  agreedLimit: "agreed.limit",
  /** The text that was shown, and the signature over it: kept apart from the entries, and erased with whoever signed. */
  agreedText: "agreed.text",
  signature: "agreed.signature",
  handedOver: "handed.over",
  /** The three answers when they were last looked at, by their ids. */
  horseAnswer: "answered.horse",
  saddleAnswer: "answered.saddle",
  workAnswer: "answered.work",
  /** The one reading that would settle what was open then, in words; empty where nothing was. */
  nextReading: "answered.nextReading",
} as const;

/**
 * Places that tell who somebody is: an entry holds what commits to the value, a store of people the value.
 * Words that are typed freely elsewhere ("what the owner asked") stand in the entry itself.
 */
const PERSONAL =
  /^(visit\.owner|rider\.name|agreed\.(text|signature)|worker\.name|practice\.\w+|saddle\.looked\.seenBy|horses\[\d+\]\.traces\[\d+\]\.drawnBy)$/;
export const isPersonal = (at: string): boolean => PERSONAL.test(at);

/**
 * What a next visit may begin with: who, where, and how the saddle is built. What happened since (accidents, alterations, weight)
 * is asked anew: an old "no" would pass for a new one.
 */
export const LASTING =
  /^(practice|worker|visit\.(place|owner)|rider\.name|saddle\.(name|maker|model|build|standing\.serial$)|horses\[\d+\]\.(name|about|identity))/;
