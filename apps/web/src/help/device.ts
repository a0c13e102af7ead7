/** What is told of a browser: family, main number and system, out of closed lists. A full agent string can tell one device from others. */
export interface BrowserKind {
  readonly family: string;
  readonly number: number;
  readonly system: string;
}

/** Order matters: most name others beside themselves (common practice of the field `User-Agent`, RFC 9110 section 10.1.5). */
const FAMILIES = [
  ["Edge", /\bEdg[A-Za-z]*\/(\d{1,4})/],
  ["Firefox", /\b(?:Firefox|FxiOS)\/(\d{1,4})/],
  ["Chromium", /\b(?:Headless)?(?:Chrome|CriOS)\/(\d{1,4})/],
  ["Safari", /\bVersion\/(\d{1,4}).*\bSafari\//],
] as const;
const SYSTEMS = [
  ["Android", /\bAndroid\b/],
  ["iPhone or iPad", /\b(?:iPhone|iPad)\b/],
  ["Windows", /\bWindows\b/],
  ["macOS", /\bMac OS X\b/],
  ["Linux", /\bLinux\b/],
] as const;

export function browserKind(agent: string): BrowserKind {
  const system = SYSTEMS.find(([, sign]) => sign.test(agent))?.[0] ?? "another";
  for (const [family, sign] of FAMILIES) {
    const number = sign.exec(agent)?.[1];
    if (number !== undefined) return { family, number: Number(number), system };
  }
  return { family: "another", number: 0, system };
}

/** The screen and how it is looked at. CSS pixels. */
export function screenNow() {
  const asked = (wish: string) => matchMedia(wish).matches;
  return {
    widePx: innerWidth,
    highPx: innerHeight,
    pixelsToOne: Math.round(100 * devicePixelRatio) / 100,
    look: document.documentElement.dataset.look ?? "as the device",
    dark: asked("(prefers-color-scheme: dark)"),
    forcedColours: asked("(forced-colors: active)"),
    lessMotion: asked("(prefers-reduced-motion: reduce)"),
    touch: asked("(pointer: coarse)"),
  };
}

/** Language and country of a BCP 47 tag, without what else may hang on it. */
export const languageOf = (tag: string): string => /^[a-z]{2,3}(-[A-Z]{2})?/.exec(tag)?.[0] ?? "another";
