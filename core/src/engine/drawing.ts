/** A point on paper, mm from the left and from the top. */
export type At = readonly [number, number];

/** The three pens, mm. */
export const PENS = { thin: 0.25, medium: 0.5, heavy: 1.0 } as const;
export type Pen = keyof typeof PENS;

export type Face = "text" | "figure" | "letter";

/** Ink and unprinted paper. */
export const INKS = { ink: "#15120E", paper: "#FFFFFF" } as const;
/** One ramp of five sepia tints, light to dark; dark ink stays readable on all of them (contrast over 4.5). */
export const TINTS = ["#F4ECDD", "#E7D5B7", "#D5B78A", "#BF9660", "#A87B43"] as const;

/** A drawing is plain data with named parts; one model gives SVG and PDF. All lengths in mm. */
export type Item =
  | {
      readonly kind: "line";
      /** Name of the part, so that it can be found again in the paper. */
      readonly name: string;
      readonly points: readonly At[];
      readonly closed: boolean;
      readonly pen: Pen;
      readonly dashed: boolean;
      readonly fill: "none" | "ink" | "paper" | "hatch";
    }
  | {
      /** Areas without an outline, filled as one. Rings may touch but do not overlap. */
      readonly kind: "band";
      readonly name: string;
      readonly rings: readonly (readonly At[])[];
      /** Index into TINTS, or fine lines crossing at 45 degrees. */
      readonly tint: 0 | 1 | 2 | 3 | 4 | "crossed";
    }
  | {
      readonly kind: "text";
      readonly name: string;
      /** On the base line of the words. */
      readonly at: At;
      readonly words: string;
      readonly face: Face;
      readonly bold: boolean;
      /** Height of the type's body (its em), mm. */
      readonly size: number;
      readonly anchor: "start" | "middle" | "end";
      readonly ink: "ink" | "paper";
      /** Clockwise turn about `at`, degrees. */
      readonly turn: number;
    };

export interface Page {
  readonly width: number;
  readonly height: number;
  readonly items: readonly Item[];
}

export interface Document {
  readonly title: string;
  readonly language: string;
  readonly pages: readonly Page[];
}

/** Width of words set in one face, mm. The fonts live behind the paper bridge, which supplies this. */
export type Measure = (words: string, face: Face, bold: boolean, size: number) => number;
