import type { HeadMove } from "../../core/src/reach/frame/head-move.ts";
import {
  type SectionsBelief,
  sectionsOfTree,
  type TreeSections,
} from "../../core/src/reach/frame/sections.ts";
import { type Travel, travelOf } from "../../core/src/reach/frame/travel.ts";
import { treeAt } from "../../core/src/reach/frame/tree-at.ts";
import { beamsOf } from "../../core/src/reach/frame/tree-frame.ts";
import type { Tree } from "../../core/src/shape/model.ts";
import type { SurveyedSaddle } from "../../core/src/survey/case.ts";
import { modelSaddle } from "../shape/model-saddle.ts";

type Build = Partial<SurveyedSaddle["build"]>;
export const LAMINATED: Build = { arch: "wood", metal: "plates", springs: "none" };
export const MOULDED: Build = { arch: "polymer", metal: "bar", springs: "none" };

/** Unknown sections of a build, nothing of them read. */
export function beliefOf(build: Build = LAMINATED): SectionsBelief {
  const saddle = modelSaddle();
  return sectionsOfTree({ ...saddle, build: { ...saddle.build, ...build } });
}

/** A tree's frame with the base sections, or with some of them otherwise. */
export function travelled(tree: Tree, other: Partial<TreeSections> = {}, build: Build = LAMINATED): Travel {
  const sections = { ...beliefOf(build).at({}), ...other };
  const beams = beamsOf(tree, sections);
  if (!("held" in beams)) throw new Error(`free at node ${beams.node}, ${beams.direction}`);
  return travelOf(beams, sections.hingeOffMm);
}

export const press = (changeMm: number): HeadMove => ({ changeMm, halfTurnRad: undefined });

/** The whole tree after a change of the spread inside the tips. */
export const opened = (tree: Tree, changeMm: number, other: Partial<TreeSections> = {}): Tree =>
  treeAt(travelled(tree, other), press(changeMm));
