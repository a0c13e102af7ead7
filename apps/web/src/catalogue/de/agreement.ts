import type { Table } from "../trade.ts";

/** What is agreed and signed. What stands in it in capitals is filled in. */
export const AGREEMENT: Table = {
  "Agreed on DAY": "Vereinbart am DAY",
  "Saddle: SADDLE": "Sattel: SADDLE",
  "Every horse of this visit that wears it: HORSES.": "Jedes Pferd dieses Besuchs, das ihn trägt: HORSES.",
  "No other horse wears it.": "Kein anderes Pferd trägt ihn.",
  "Other horses wear it too, and it was not judged for them.":
    "Andere Pferde tragen ihn auch, und für sie wurde er nicht beurteilt.",
  "Whether other horses wear it was not said.": "Ob andere Pferde ihn tragen, wurde nicht gesagt.",
  "The horse: ANSWER": "Das Pferd: ANSWER",
  "The saddle: ANSWER": "Der Sattel: ANSWER",
  "The work: ANSWER": "Die Arbeit: ANSWER",
  "not answered.": "nicht beantwortet.",
  "What is done: SAID": "Was gemacht wird: SAID",
  "Risks that were told: SAID": "Risiken, die genannt wurden: SAID",
  "The worse case, and what is done then: SAID": "Der schlechtere Fall, und was dann gemacht wird: SAID",
  "The limit that is not passed: SAID": "Die Grenze, die nicht überschritten wird: SAID",
  "Nothing was said.": "Nichts wurde gesagt.",
  "A tree can fail when it is altered, and an alteration may end what its maker promises.":
    "Ein Baum kann beim Ändern versagen, und eine Änderung kann beenden, was sein Hersteller verspricht.",
  "The old plate or inserts stay with the saddle. Pain, heat, swelling, a sore or lameness end the work until a vet has seen the horse.":
    "Das alte Kopfeisen oder die alten Einsätze bleiben beim Sattel. Schmerz, Wärme, Schwellung, eine wunde Stelle oder Lahmheit beenden die Arbeit, bis ein Tierarzt das Pferd gesehen hat.",
  "Who signs is of age, and is the legal owner of the saddle or acts for the owner.":
    "Wer unterschreibt, ist volljährig und Eigentümer des Sattels oder handelt für den Eigentümer.",
  "SHA-256 of this text: PRINT": "SHA-256 dieses Textes: PRINT",
  "Not signed on this device: name, day, signature":
    "Nicht auf diesem Gerät unterschrieben: Name, Tag, Unterschrift",
  "Signed: NAME, for the owner": "Unterschrieben: NAME, für den Eigentümer",
  "Signed: NAME, owner": "Unterschrieben: NAME, Eigentümer",
};
