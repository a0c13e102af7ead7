/** A point on paper, mm from the left and from the top. */
export type At = readonly [number, number];

/** The three pens, mm. */
export const PENS = { thin: 0.25, medium: 0.5, heavy: 1.0 } as const;
export type Pen = keyof typeof PENS;

export type Face = "text" | "figure" | "letter";

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
      readonly kind: "text";
      readonly name: string;
      readonly at: At;
      readonly words: string;
      readonly face: Face;
      readonly bold: boolean;
      /** Height of the type, mm. */
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
  readonly language: "en";
  readonly pages: readonly Page[];
}
