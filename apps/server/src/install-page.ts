import { INSTALL_WORDS, type InstallTag, type InstallWords, type Step } from "./install-words.ts";
import { phonePicture } from "./phone-picture.ts";

/** As the app looks, without its fonts: this page is fetched once, over plain http. */
export const INSTALL_LOOK = `
:root { color-scheme: light dark; --paper: #fbfaf5; --ink: #15120e; --press: #0c5b4f; --on-press: #fbfaf5; --faint: #d9d3c4; }
@media screen and (prefers-color-scheme: dark) {
  :root { --paper: #14130f; --ink: #efeae0; --press: #6fc7b5; --on-press: #14130f; --faint: #3d392f; }
}
body { max-width: 40rem; margin: 0 auto; padding: 24px 16px 64px; background: var(--paper); color: var(--ink); font: 1rem/1.5 system-ui, sans-serif; overflow-wrap: break-word; }
h1 { font-size: 1.75rem; line-height: 1.15; }
h2 { margin-top: 32px; padding-top: 16px; border-top: 1px solid var(--faint); font-size: 1.25rem; }
a { color: var(--press); }
.key { display: flex; align-items: center; justify-content: center; min-height: 56px; padding: 8px 16px; background: var(--press); color: var(--on-press); font-weight: 600; text-decoration: none; }
ol { padding-inline-start: 24px; }
li { margin-block: 16px; break-inside: avoid; }
svg { display: block; max-width: 100%; }
:focus-visible { outline: 3px solid var(--press); outline-offset: 3px; }
@media print { .key { background: none; color: var(--ink); border: 2px solid; } }
`;

/** The page that a phone opens first: how it comes to trust this machine. In words and pictures a person can follow; no script. */
export function installPage(name: string, appUrl: string, tag: InstallTag): string {
  const words = INSTALL_WORDS[tag];
  const listed = (steps: readonly Step[]): string =>
    steps.map((step) => `<li><p>${withApp(step.says, appUrl)}</p>\n${picture(step, words)}</li>`).join("\n");
  return `<!doctype html>
<html lang="${tag}">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${words.title}</title>
<link rel="stylesheet" href="/look.css">
</head>
<body>
<main>
<h1>${words.title}</h1>
<p>${words.why.replace("NAME", name)}</p>
<p><a class="key" href="/authority.crt">${words.getFile}</a></p>
<h2>${words.iPhone}</h2>
<ol>
${listed(words.iPhoneSteps)}
</ol>
<h2>${words.android}</h2>
<ol>
${listed(words.androidSteps)}
</ol>
<p>${words.note}</p>
</main>
</body>
</html>
`;
}

const withApp = (says: string, appUrl: string): string =>
  says.replace("APP", `<a href="${appUrl}">${appUrl}</a>`);

const picture = (step: Step, { press }: InstallWords): string =>
  phonePicture(step, press(step.where, step.rows[step.press] ?? ""));
