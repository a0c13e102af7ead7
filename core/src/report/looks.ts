import type { Look } from "../engine/drawing/paragraph.ts";

/** The few sizes that sheets use, mm of body and of leading. A hand's breadth of type, no more. */
export const TITLE: Look = { face: "text", bold: true, size: 6, leading: 7.4, figures: false };
export const ANSWER: Look = { face: "text", bold: true, size: 4.4, leading: 5.6, figures: false };
export const HEADING: Look = { face: "text", bold: true, size: 3.2, leading: 4.4, figures: false };
export const TEXT: Look = { face: "text", bold: false, size: 3.2, leading: 4.4, figures: true };
export const SMALL: Look = { face: "text", bold: false, size: 2.6, leading: 3.5, figures: true };
/** Assumptions and sources under a part. */
export const FINE: Look = { ...SMALL, size: 2.4, leading: 3.2 };
export const FIGURE: Look = { face: "figure", bold: false, size: 2.9, leading: 4.4, figures: true };
/** The owner's letter: about 60 characters to a line of 105 mm. */
export const LETTER: Look = { face: "letter", bold: false, size: 3.9, leading: 5.5, figures: false };
export const LETTER_BOLD: Look = { ...LETTER, bold: true };
