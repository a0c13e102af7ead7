// The import rule. Data runs down the list of rooms; imports look only up it.
const rooms = ["engine", "records", "terms", "survey", "shape", "reach", "fit", "judge", "work", "report"];
const isTest = "\\.test\\.tsx?$";

/** Where a line belongs that a room wanted from below, in one sentence a room. */
const home = {
  survey: "survey only takes down what was read: what makes form of readings belongs in shape",
  shape: "shape makes form of readings: what a head can become belongs in reach, how it bears in fit",
  reach:
    "reach says what a head can become before anyone judges it: how a setting bears belongs in fit, whether it is allowed in judge",
  fit: "fit is the physics of one setting and one load: limits and answers belong in judge",
  judge: "judge is rules: what lays them out for a reader belongs in report",
  work: "work sizes the passes of a job that was answered: what was kept against what was foretold belongs in prove, paper in report",
  report:
    "report lays out what was answered and computes no number: the road itself is answer.ts, whose result is passed in",
};

const looksUp = Object.keys(home).map((room) => ({
  name: `${room}-looks-up`,
  severity: "error",
  comment: `Imports look only up the list (${rooms.join(", ")}, answer.ts, papers.ts): ${home[room]}.`,
  from: { path: `^core/src/${room}/`, pathNot: isTest },
  to: {
    path: `^core/src/((answer|papers)(\\.ts$|/)|(${[...rooms.slice(rooms.indexOf(room) + 1), "-"].join("|")})/)`,
  },
}));

const closed = [
  {
    name: "answer-looks-up",
    comment:
      "answer.ts is the road to an answer: what puts it in words for paper belongs in papers, a layout in report.",
    from: { path: "^core/src/answer(\\.ts$|/)", pathNot: isTest },
    to: { path: "^core/src/(papers(\\.ts$|/)|report/)" },
  },
  {
    name: "engine-knows-engine",
    comment:
      "engine imports nothing but engine: what it shares with a room is defined in engine, in words of mathematics.",
    from: { path: "^core/src/engine/", pathNot: isTest },
    to: { path: "^core/src/", pathNot: "^core/src/engine/" },
  },
  {
    name: "records-know-engine",
    comment:
      "records knows no word of the trade and imports nothing but engine: what a place or a value means belongs in survey.",
    from: { path: "^core/src/records/", pathNot: isTest },
    to: { path: "^core/src/", pathNot: "^core/src/(engine|records)/" },
  },
  {
    name: "terms-import-nothing",
    comment:
      "terms import nothing but terms: a word that needs more than itself belongs in the room that owns the thing.",
    from: { path: "^core/src/terms/", pathNot: isTest },
    to: { pathNot: "^core/src/terms/" },
  },
  {
    name: "core-is-pure",
    comment:
      "core imports only itself and zod: clock, disk, network, screen and chance belong in an app, a heavy library behind a bridge.",
    from: { path: "^core/src/", pathNot: isTest },
    to: { pathNot: "^core/src/|^node_modules/zod/" },
  },
  {
    name: "bridges-know-engine",
    comment:
      "a bridge knows no trade word: of core it sees only engine (drawing, quantities) and records; what it paints is laid out in report.",
    from: { path: "^bridges/", pathNot: isTest },
    to: { path: "^core/src/", pathNot: "^core/src/(engine|records)/" },
  },
  {
    name: "bridges-know-no-app",
    comment: "a bridge knows no app and no other bridge: pass what it needs as an argument, from the app.",
    from: { path: "^bridges/([^/]+)/", pathNot: isTest },
    to: { path: "^(apps|evidence|bridges)/", pathNot: "^bridges/$1/" },
  },
  {
    name: "apps-stand-alone",
    comment:
      "an app imports core and bridges, never another app: what two apps share belongs in core, or behind a bridge.",
    from: { path: "^apps/([^/]+)/", pathNot: isTest },
    to: { path: "^(apps|evidence)/", pathNot: "^apps/$1/" },
  },
  {
    name: "data-base-behind-store",
    comment: "dexie lives behind bridges/store alone: say what is to be kept by its contract, `store.ts`.",
    from: { pathNot: "^bridges/store/" },
    to: { path: "^node_modules/dexie/" },
  },
  {
    name: "pdf-library-behind-paper",
    comment:
      "pdfkit lives behind bridges/paper alone: lay out a Document in report and let the bridge paint it.",
    from: { pathNot: "^bridges/paper/" },
    to: { path: "^node_modules/(pdfkit|@types/pdfkit)/" },
  },
  {
    name: "zip-library-behind-zip",
    comment: "zip.js lives behind bridges/zip alone: hand it paths and bytes.",
    from: { pathNot: "^bridges/zip/" },
    to: { path: "^node_modules/@zip\\.js/" },
  },
  {
    name: "node-stays-outside",
    comment:
      "Node's own modules belong in apps/cli, apps/server, evidence, scripts and a bridge's *-node files: the rest runs in a browser too.",
    from: { path: "^(core/src|bridges|apps/web/src)/", pathNot: `${isTest}|-node\\.ts$` },
    to: { dependencyTypes: ["core"] },
  },
  {
    name: "no-circle",
    comment:
      "two files that need each other are one thing: put what both need in a third file further up the list.",
    from: {},
    to: { circular: true },
  },
  {
    name: "import-leads-somewhere",
    comment:
      "this import leads to no file: write the path with its .ts ending, or the package's name as in package.json.",
    from: { pathNot: "^apps/web/dist/" },
    to: { couldNotResolve: true, pathNot: "\\?(url|raw|worker)|\\.css$" },
  },
].map((rule) => ({ severity: "error", ...rule }));

export default {
  forbidden: [...looksUp, ...closed],
  options: {
    doNotFollow: { path: "node_modules" },
    exclude: { path: "(^|/)dist/" },
    tsPreCompilationDeps: true,
    tsConfig: { fileName: "tsconfig.json" },
    enhancedResolveOptions: {
      exportsFields: ["exports"],
      conditionNames: ["import", "node", "default", "types"],
      extensions: [".ts", ".tsx", ".mjs", ".js"],
    },
  },
};
