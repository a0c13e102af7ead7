import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/page.css";
import "./look/drawing.css";
import "./look/readings.css";
import "./look/print.css";
import { emptyCase, exampleNames, exampleText, today } from "./case/open-save.ts";
import { Hand } from "./desk/hand.ts";
import { Page } from "./page.tsx";

const place = document.getElementById("page");

/** The first invented case lies open; where there is none, an empty one. */
async function firstCase(): Promise<{ text: string; name: string }> {
  const [name] = await exampleNames().catch(() => []);
  return name === undefined ? { text: emptyCase(today()), name: "new-case.json" } : { text: await exampleText(name), name };
}

async function start(root: HTMLElement): Promise<void> {
  if (new URLSearchParams(location.search).has("figures")) {
    const { showFigures } = await import("./bench/figures.ts");
    return showFigures(root);
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
