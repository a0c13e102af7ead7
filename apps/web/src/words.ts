import type { PaperKind, Rest, Side, Station } from "./road.ts";

export const STATION_WORDS: { readonly [S in Station]: string } = {
  front: "Front",
  mid: "Mid",
  rear: "Rear",
};
export const SIDE_WORDS: { readonly [S in Side]: string } = { near: "near (left)", off: "off (right)" };
export const THIRD_WORDS: { readonly [T in Rest["thirds"][number]["third"]]: string } = {
  front: "front",
  middle: "middle",
  rear: "rear",
};

export const PAPER_WORDS: {
  readonly [P in PaperKind]: { readonly name: string; readonly says: string; readonly needs: string };
} = {
  letter: { name: "Letter", says: "For the owner, in plain words, at most two pages.", needs: "" },
  sheet: { name: "Sheet", says: "For the bench: answers, limits, sections, what follows.", needs: "" },
  calculation: {
    name: "Calculation",
    says: "For the bench: what a press does, the whole tree, the saddle ridden, and what was assumed.",
    needs:
      "It wants a saddle and a back that could be laid on one another, and a horse on which nothing was found.",
  },
  sections: {
    name: "Sections",
    says: "Tree over back before and after, at 1 : 2, front, mid and rear.",
    needs: "They want a front trace, and a horse on which nothing was found.",
  },
  template: {
    name: "Template",
    says: "The wanted head at 1 : 1, with bars to prove the print.",
    needs: "It wants a head, a front trace, and a horse on which nothing was found.",
  },
};
