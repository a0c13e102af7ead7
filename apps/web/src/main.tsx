import { indexedStore } from "@treewright/store/indexed.ts";
import { StrictMode } from "react";
import { createRoot } from "react-dom/client";
import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/page.css";
import "./look/app.css";
import "./look/steps.css";
import "./look/photo.css";
import "./look/agreement.css";
import "./look/help.css";
import "./look/forced.css";
import { App } from "./app.tsx";
import { chosenLanguage, LANGUAGES, languageOf } from "./catalogue/use-words.ts";
import { watchActions } from "./help/watch.ts";
import { keepForOffline } from "./offline.ts";
import { bringInvented } from "./practice/first-practice.ts";
import { DATA_BASE, thisMachine } from "./practice/machine.ts";
import { Practice } from "./practice/practice.ts";
import { NotKept } from "./records.ts";

async function start(root: HTMLElement): Promise<void> {
  const language = chosenLanguage();
  try {
    const practice = await Practice.open(await indexedStore(DATA_BASE), thisMachine());
    await bringInvented(practice);
    watchActions(practice.actions);
    const spoken = await languageOf(language);
    // Without such a worker the app still works while there is signal, and its line says so.
    keepForOffline().catch(() => undefined);
    createRoot(root).render(
      <StrictMode>
        <App practice={practice} language={spoken} />
      </StrictMode>,
    );
  } catch (error) {
    const said = (LANGUAGES[language] ?? LANGUAGES.en)?.saved;
    root.textContent = (error instanceof NotKept ? said?.[error.why] : said?.other) ?? "";
    root.setAttribute("role", "alert");
  }
}

const place = document.getElementById("page");
if (place) void start(place);
