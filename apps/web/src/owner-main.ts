import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/owner.css";
import { chooseLanguage, chosenAmong } from "./catalogue/chosen.ts";
import { askPage, NOTHING_CHOSEN, type OwnerChose } from "./owner/ask-page.ts";
import { PAGE_WORDS } from "./owner/page-words.ts";
import { OWNER_LANGUAGES, ownerTongue } from "./owner/tongues.ts";

const place = document.getElementById("page");

async function show(tag: string, chose: OwnerChose): Promise<void> {
  if (!place) return;
  const tongue = await ownerTongue(tag);
  document.documentElement.lang = tongue.tag;
  document.title = `${tongue.said(PAGE_WORDS.title)} Treewright`;
  askPage(place, tongue, chose, (other, now) => {
    chooseLanguage(other);
    void show(other, now);
  });
}

void show(chosenAmong(Object.keys(OWNER_LANGUAGES)), NOTHING_CHOSEN);
