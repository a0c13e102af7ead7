import type { PhoneStep } from "./phone-picture.ts";

export interface Step extends PhoneStep {
  /** The step as a sentence. Where APP stands, the address of the app is put. */
  readonly says: string;
}

/** Words of the page that a phone opens first, in one language. Where NAME stands, the name that is served is put. */
export interface InstallWords {
  readonly title: string;
  readonly why: string;
  readonly getFile: string;
  readonly iPhone: string;
  readonly android: string;
  readonly iPhoneSteps: readonly Step[];
  readonly androidSteps: readonly Step[];
  /** What a picture says to who cannot see it. */
  readonly press: (where: string, row: string) => string;
  readonly note: string;
}

/* Steps are written down from memory; the words differ a little from phone to phone. */

const EN: InstallWords = {
  title: "Treewright on this phone",
  why: "A phone keeps an app for use without signal only from a machine that it trusts. The file below makes it trust this machine under the name NAME, and no other site: the authority in it can sign for that name alone.",
  getFile: "Get the authority's file",
  iPhone: "iPhone or iPad",
  android: "Android",
  iPhoneSteps: [
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
      says: "In Safari open APP. Share, then Add to Home Screen.",
      where: "Share",
      rows: ["Copy", "Add to Home Screen"],
      press: 1,
    },
  ],
  androidSteps: [
    { says: "Get the file above.", where: "Download", rows: ["authority.crt"], press: 0 },
    {
      says: "Settings, Security, More security settings, Install from storage, CA certificate: choose the file.",
      where: "Install from storage",
      rows: ["CA certificate", "Wi-Fi certificate"],
      press: 0,
    },
    {
      says: "In Chrome open APP. Menu, then Install app.",
      where: "Menu",
      rows: ["New tab", "Install app"],
      press: 1,
    },
  ],
  press: (where, row) => `On the phone, ${where}: press ${row}`,
  note: "The pictures show what is pressed, not what each phone looks like; the words differ a little from phone to phone. To take the trust back, remove the authority in the same place.",
};

/** Not yet read by a German fitter. */
const DE: InstallWords = {
  title: "Treewright auf diesem Telefon",
  why: "Ein Telefon behält eine App für den Gebrauch ohne Netz nur von einem Gerät, dem es vertraut. Mit der Datei unten vertraut es diesem Gerät unter dem Namen NAME und keiner anderen Seite: Die Stelle darin kann nur für diesen Namen unterschreiben.",
  getFile: "Die Datei der Stelle laden",
  iPhone: "iPhone oder iPad",
  android: "Android",
  iPhoneSteps: [
    {
      says: "Diese Seite in Safari öffnen, die Datei oben laden und zulassen.",
      where: "Safari",
      rows: ["Ignorieren", "Zulassen"],
      press: 1,
    },
    {
      says: "Einstellungen, Allgemein, VPN und Geräteverwaltung: die Stelle Treewright wählen, Installieren.",
      where: "Geräteverwaltung",
      rows: ["Treewright", "Installieren"],
      press: 1,
    },
    {
      says: "Einstellungen, Allgemein, Info, Zertifikatsvertrauenseinstellungen: einschalten.",
      where: "Vertrauen",
      rows: ["Treewright: ein"],
      press: 0,
    },
    {
      says: "In Safari APP öffnen. Teilen, dann Zum Home-Bildschirm.",
      where: "Teilen",
      rows: ["Kopieren", "Zum Home-Bildschirm"],
      press: 1,
    },
  ],
  androidSteps: [
    { says: "Die Datei oben laden.", where: "Download", rows: ["authority.crt"], press: 0 },
    {
      says: "Einstellungen, Sicherheit, Weitere Sicherheitseinstellungen, Von Speicher installieren, CA-Zertifikat: die Datei wählen.",
      where: "Von Speicher",
      rows: ["CA-Zertifikat", "WLAN-Zertifikat"],
      press: 0,
    },
    {
      says: "In Chrome APP öffnen. Menü, dann App installieren.",
      where: "Menü",
      rows: ["Neuer Tab", "App installieren"],
      press: 1,
    },
  ],
  press: (where, row) => `Auf dem Telefon, ${where}: ${row} drücken`,
  note: "Die Bilder zeigen, was gedrückt wird, nicht wie jedes Telefon aussieht; die Worte sind von Telefon zu Telefon etwas anders. Um das Vertrauen zurückzunehmen, die Stelle am selben Ort entfernen. Diese Übersetzung wurde noch von keinem deutschen Sattler gelesen.",
};

export const INSTALL_WORDS = { en: EN, de: DE } as const;
export type InstallTag = keyof typeof INSTALL_WORDS;

/** German where the browser asks for it before English, else English. accepts: the request's Accept-Language, best first as browsers send it. */
export function installTag(accepts = ""): InstallTag {
  const asked = accepts.split(",").map((one) => one.trim().slice(0, 2).toLowerCase());
  return asked.find((tag): tag is InstallTag => tag in INSTALL_WORDS) ?? "en";
}
