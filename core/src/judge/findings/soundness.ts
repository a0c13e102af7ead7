import type { SurveyedSaddle } from "../../survey/case.ts";
import type { SoundnessFindings } from "./orders.ts";
import { otherPart, riderPart } from "./parts.ts";
import { age, past, trauma } from "./past.ts";
import { square } from "./square.ts";

/** Seen bare counts only with the name of the person who saw it. */
function level(saddle: SurveyedSaddle): SoundnessFindings["level"] {
  const { level: typed, seenBy } = saddle.looked;
  return typed === "bare" && seenBy.trim() === "" ? "dressed" : typed;
}

/** A serial that is missing or unread is not known, whatever was said of it. */
function serial(saddle: SurveyedSaddle): SoundnessFindings["serial"] {
  const { serial: read, serialIsOfRecord } = saddle.standing;
  if (serialIsOfRecord === "no") return "differs";
  return serialIsOfRecord === "yes" && read.trim() !== "" ? "of-record" : "not-known";
}

export function soundnessFindings(saddle: SurveyedSaddle): SoundnessFindings {
  return {
    level: level(saddle),
    riderPart: riderPart(saddle),
    otherPart: otherPart(saddle),
    trauma: trauma(saddle),
    past: past(saddle),
    age: age(saddle),
    square: square(saddle, level(saddle) === "bare"),
    serial: serial(saddle),
  };
}
