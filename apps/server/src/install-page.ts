import { type PhoneStep, phonePicture } from "./phone-picture.ts";

interface Step extends PhoneStep {
  /** The step as a sentence, as HTML. */
  readonly says: string;
}

/** Steps written down from memory; the words differ a little from phone to phone. */
const iPhone = (appUrl: string): readonly Step[] => [
  {
    says: "Open this page in Safari, get the file above, and allow it.",
    where: "Safari",
    rows: ["Ignore", "Allow"],
    press: 1,
  },
  {
    says: "Settings, General, VPN and Device Management: choose the Treewright authority, Install.",
    where: "Device Management",
    rows: ["Treewright", "Install"],
    press: 1,
  },
  {
    says: "Settings, General, About, Certificate Trust Settings: switch it on.",
    where: "Trust Settings",
    rows: ["Treewright: on"],
    press: 0,
  },
  {
    says: `In Safari open <a href="${appUrl}">${appUrl}</a>. Share, then Add to Home Screen.`,
    where: "Share",
    rows: ["Copy", "Add to Home Screen"],
    press: 1,
  },
];

const android = (appUrl: string): readonly Step[] => [
  { says: "Get the file above.", where: "Download", rows: ["authority.crt"], press: 0 },
  {
    says: "Settings, Security, More security settings, Install from storage, CA certificate: choose the file.",
    where: "Install from storage",
    rows: ["CA certificate", "Wi-Fi certificate"],
    press: 0,
  },
  {
    says: `In Chrome open <a href="${appUrl}">${appUrl}</a>. Menu, then Install app.`,
    where: "Menu",
    rows: ["New tab", "Install app"],
    press: 1,
  },
];

const listed = (steps: readonly Step[]): string =>
  steps.map((step) => `<li><p>${step.says}</p>\n${phonePicture(step)}</li>`).join("\n");

/** The page that a phone opens first: how it comes to trust this machine. In words and pictures a person can follow; no script. */
export function installPage(name: string, appUrl: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Treewright on this phone</title>
</head>
<body>
<h1>Treewright on this phone</h1>
<p>A phone keeps an app for use without signal only from a machine that it trusts. The file below makes it trust this machine under the
name ${name}, and no other site: the authority in it can sign for that name alone.</p>
<p><a href="/authority.crt">Get the authority's file</a></p>
<h2>iPhone or iPad</h2>
<ol>
${listed(iPhone(appUrl))}
</ol>
<h2>Android</h2>
<ol>
${listed(android(appUrl))}
</ol>
<p>The pictures show what is pressed, not what each phone looks like; the words differ a little from phone to phone. To take the trust
back, remove the authority in the same place.</p>
</body>
</html>
`;
}
