/** All of core's records that the page knows, in one place. */
export { CSV_LIMITS } from "@treewright/core/engine/csv.ts";
export { grouped } from "@treewright/core/engine/grouped.ts";
export { type Entry, isWhole, sealed } from "@treewright/core/records/entry.ts";
export { endsOf, graphOf, merged } from "@treewright/core/records/graph.ts";
export { ID_CHANCE_BYTES, uuidV7 } from "@treewright/core/records/id.ts";
export { ERASED, GRAPH_KINDS, STATED, TAKEN_BACK } from "@treewright/core/records/kinds.ts";
export { RECORD_LIMITS } from "@treewright/core/records/limits.ts";
export {
  committed,
  committedSchema,
  type Held,
  revealed,
  SALT_BYTES,
} from "@treewright/core/records/personal.ts";
export { photoPath } from "@treewright/core/records/photo-file.ts";
export {
  firstLineOf,
  type Photo,
  RECORDS_VERSION,
  RecordsReader,
} from "@treewright/core/records/records-file.ts";
export type { Refusal } from "@treewright/core/records/refusal.ts";
export { counting, standingOf } from "@treewright/core/records/stands.ts";
export { agreementText } from "@treewright/core/report/agreement-text.ts";
export type { Piece } from "@treewright/core/report/copy/tables.ts";
export { CopyTexts } from "@treewright/core/report/copy/texts.ts";
export { type Beside, besideOf, type ToldPaper, visitTold } from "@treewright/core/report/copy/visit-told.ts";
export { type VisitDraft, visitDraft } from "@treewright/core/survey/recorded/draft.ts";
export {
  type CitedPhoto,
  citing,
  erasedPhotoOf,
  erasing,
  photoPlace,
  photosOf,
} from "@treewright/core/survey/recorded/photos.ts";
export { isPersonal, LASTING, OF_VISIT } from "@treewright/core/survey/recorded/places.ts";
export { refusedOfVisit } from "@treewright/core/survey/recorded/refused.ts";
export { type RowIn, type RowsIn, rowsIn } from "@treewright/core/survey/recorded/rows-in.ts";
export {
  SIGNATURE_HIGH,
  SIGNATURE_LIMITS,
  SIGNS_AS,
  type Signature,
  signatureIn,
} from "@treewright/core/survey/recorded/signature.ts";
export {
  answerAsStatements,
  caseAsStatements,
  clearingStatements,
  type Statement,
} from "@treewright/core/survey/recorded/statements.ts";
export { type VisitLine, visitLine } from "@treewright/core/survey/recorded/visit-line.ts";
export { STORE_VERSION } from "@treewright/store/indexed.ts";
export type { Batch, Card, KeptPhoto, Store } from "@treewright/store/store.ts";
export { NotKept } from "@treewright/store/store.ts";
