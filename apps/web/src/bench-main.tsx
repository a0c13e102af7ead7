import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/page.css";
import "./look/answers.css";
import "./look/bench.css";
import "./look/drawing.css";
import "./look/readings.css";
import "./look/forced.css";
import "./look/print.css";
import { emptyCase, exampleNames, exampleText, today } from "./case/open-save.ts";
import { Hand } from "./desk/hand.ts";
import { Page } from "./page.tsx";

const place = document.getElementById("page");

/** The invented case that lies open at first: one in which a head may be moved. */
const OPENING = "09-alter-in-the-saddle.json";

/** Where that case is not there, the first one; where there is none, an empty one. */
async function firstCase(): Promise<{ text: string; name: string }> {
  const names = await exampleNames().catch((): string[] => []);
  const name = names.includes(OPENING) ? OPENING : names[0];
  return name === undefined
    ? { text: emptyCase(today()), name: "new-case.json" }
    : { text: await exampleText(name), name };
}

async function start(root: HTMLElement): Promise<void> {
  const workers = Number(new URLSearchParams(location.search).get("figures"));
  if (workers > 0 && workers <= 8) {
    const { showFigures } = await import("./bench/figures.ts");
    return showFigures(root, Math.ceil(workers));
  }
  const { text, name } = await firstCase();
  const hand = new Hand(text, name);
  createRoot(root).render(
    <StrictMode>
      <Page hand={hand} />
    </StrictMode>,
  );
}

if (place) void start(place);
