import { EN_HELP } from "../../apps/web/src/catalogue/en-help.ts";

const list = (items: Readonly<Record<string, string>>): string =>
  Object.values(items)
    .map((says) => `- ${says}`)
    .join("\n");

/** The statement on accessibility, in the words that the app itself shows on its help screen. */
export function accessPage(): string {
  const { title, aim, testedTitle, tested, failsTitle, fails, notTestedTitle, notTested, tellTitle, tell } =
    EN_HELP.access;
  const parts = [
    `# ${title}`,
    "Made from the words of the app's help screen by `npm run docs`: do not edit. The checks are `evidence/visit/access.test.ts`,\n`evidence/visit/keyboard.test.ts` and, for the page of one case, `evidence/page/looks.test.ts`.",
    aim,
    `## ${testedTitle}`,
    list(tested),
    `## ${failsTitle}`,
    list(fails),
    `## ${notTestedTitle}`,
    list(notTested),
    `## ${tellTitle}`,
    tell,
  ];
  return `${parts.join("\n\n")}\n`;
}
