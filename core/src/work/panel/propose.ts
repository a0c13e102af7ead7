import { limitRule } from "../../judge/limits/all.ts";
import type { Back, Tree } from "../../shape/model.ts";
import { type ByStation, SIDES, STATIONS } from "../../terms/places.ts";
import { type ReadToday, ratioOf, type Term, type Tried, termsOf, unevenness } from "./evenness.ts";
import { ACROSS, type Fill, figuresIn, NO_FILL } from "./fill.ts";
import { bestLevels, LEVEL } from "./levels.ts";
import { edgeFill, fillFrom } from "./turned.ts";

/** What a panel lets a hand do. */
export interface PanelKind {
  /** Wool is let out again; a shim under anything else only adds. */
  readonly takes: boolean;
  /** Whether one side may be filled otherwise than the other. */
  readonly oneSided: boolean;
}

/** A saddle whose panel is to be looked at. */
export interface PanelCase {
  readonly kind: PanelKind;
  readonly tree: Tree;
  readonly back: Back;
  readonly read: ReadToday;
  /** The same saddle with its panel filled so: coarsely for the search, finely for what is told. */
  searched(fill: Fill): Tried;
  fine(fill: Fill): Tried;
}

export interface PanelProposal {
  readonly fill: Fill;
  /** Whether a hand has anything to do. */
  readonly any: boolean;
  readonly before: readonly Term[];
  readonly after: readonly Term[];
  /** Some place gets more than a fill that may stay, and at most what may stay for eight weeks. */
  readonly deep: boolean;
  /** The two sides are not filled alike. */
  readonly oneSided: boolean;
  /** What was held back because one side alone is not filled while lameness, swelling or slip is not ruled out. */
  readonly heldBack: boolean;
}

/** No panel is opened for less than this at its thickest, and no less is taken out anywhere, mm (common practice, no source). */
export const LEAST_WORK_MM = 2;
/** Thinnest wool that is left where some is taken out, mm (common practice, no source). */
export const LEAST_LEFT_MM = 15;
/** What a full inside fill costs against unevenness, at one place: so little that it only chooses between equals (assumption). */
const COST_OF_FILL = 0.02;

/**
 * The fill that makes the saddle most even on this back within what a fill may be. Nothing is proposed where everything
 * is within half of its limits, or where no fill makes it better. Up to 8 mm first; up to 12 mm only where
 * that leaves something past its limit and more fill helps.
 */
export function proposePanel(panel: PanelCase): PanelProposal {
  const found = panel.fine(NO_FILL);
  const before = termsOf(found, found, panel.read);
  const even = unevenness(before) === 0;
  const wished = even ? NO_FILL : bestFill(panel, panel.kind.oneSided);
  const after = termsOf(panel.fine(wished), found, panel.read);
  const most = Math.max(...figuresIn(wished).map(Math.abs));
  const helps = most >= LEAST_WORK_MM && unevenness(after) < unevenness(before);
  const fill = helps ? wished : NO_FILL;
  const { inside } = limitRule("fill");
  return {
    fill,
    any: figuresIn(fill).some((mm) => mm !== 0),
    before,
    after: helps ? after : before,
    deep: figuresIn(fill).some((mm) => Math.abs(mm) > inside[1]),
    oneSided: !isAlike(fill),
    heldBack: !even && !panel.kind.oneSided && !isAlike(bestFill(panel, true)),
  };
}

function bestFill(panel: PanelCase, oneSided: boolean): Fill {
  const found = panel.searched(NO_FILL);
  const { inside, outside } = limitRule("fill");
  const first = bestWithin(panel, found, inside[1], oneSided);
  if (!isOver(first.terms)) return first.fill;
  const more = bestWithin(panel, found, outside[1], oneSided);
  return unevenness(more.terms) < WORTH * unevenness(first.terms) ? more.fill : first.fill;
}

/** A deeper fill is worth it where it takes a tenth of the unevenness away (assumption). */
const WORTH = 0.9;
const isOver = (terms: readonly Term[]): boolean => terms.some((term) => ratioOf(term) > 1);

interface Best {
  readonly fill: Fill;
  readonly terms: readonly Term[];
}

function bestWithin(panel: PanelCase, found: Tried, most: number, oneSided: boolean): Best {
  const { kind, tree, back, read } = panel;
  const edges = edgeFill(found, back, tree, most, oneSided);
  const triedAt = (levels: ByStation<number>) => panel.searched(fillFrom(edges, levels));
  const cost = (levels: ByStation<number>): number => {
    const fill = fillFrom(edges, levels);
    if (!isAllowed(fill, tree, most, kind.takes)) return Number.POSITIVE_INFINITY;
    const tried = triedAt(levels);
    if (!keepsClear(tried, found, read)) return Number.POSITIVE_INFINITY;
    return unevenness(termsOf(tried, found, read)) + COST_OF_FILL * costOf(fill, most);
  };
  const levels = found.rest?.ok ? bestLevels(cost) : LEVEL;
  return { fill: fillFrom(edges, levels), terms: termsOf(triedAt(levels), found, read) };
}

/** It still comes to rest, and takes no more clearance than there is to spare. */
function keepsClear({ rest }: Tried, found: Tried, { spareMm }: ReadToday): boolean {
  if (!found.rest?.ok) return true;
  return rest?.ok === true && found.rest.crownOverBackMm - rest.crownOverBackMm <= Math.max(0, spareMm);
}

/** Within the most either way, and nothing taken out of a thin panel, nor out of one that is not wool. */
export function isAllowed(fill: Fill, tree: Tree, most: number, takes: boolean): boolean {
  return SIDES.every((side) =>
    STATIONS.every((station) =>
      ACROSS.every((place) => {
        const mm = fill[side][station][place];
        const left = tree.halves[side].thicknessMm[station][place] + mm;
        return mm >= 0 ? mm <= most : takes && -mm >= LEAST_WORK_MM && -mm <= most && left >= LEAST_LEFT_MM;
      }),
    ),
  );
}

const isAlike = ({ near, off }: Fill): boolean =>
  STATIONS.every((station) => ACROSS.every((place) => near[station][place] === off[station][place]));

/** Squares of the fill as parts of the most; what is taken out counts four times as deep, for it lowers the saddle and opens the panel. */
const costOf = (fill: Fill, most: number): number =>
  figuresIn(fill).reduce((sum, mm) => {
    const part = (mm < 0 ? 4 * mm : mm) / most;
    return sum + part * part;
  }, 0);
