import "./look/fonts.css";
import "./look/tokens.css";
import "./look/base.css";
import "./look/owner.css";
import { askPage } from "./owner/ask-page.ts";

const place = document.getElementById("page");
if (place) askPage(place);
