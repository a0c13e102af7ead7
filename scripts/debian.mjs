// What the checks need from the machine: a browser, a PDF rasteriser and a finite element solver, from Debian's packages.
import { spawnSync } from "node:child_process";
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

/** Program, the Debian package it comes in, and what cannot be checked without it. */
const needs = [
  {
    program: "chromium",
    package: "chromium",
    without: "the page in a real browser, and core's figures in one",
  },
  {
    program: "ccx",
    package: "calculix-ccx",
    without: "the bed of springs beside finite elements, run anew",
  },
  {
    program: "strace",
    package: "strace",
    without: "that a kept reading is synced to the disk, counted in the browser's own calls",
  },
  {
    program: "WebKitWebDriver",
    package: "webkit2gtk-driver",
    without: "a visit and core's figures in a browser of another family",
  },
  { program: "Xvfb", package: "xvfb", without: "the made screen of that browser" },
  { program: "pdftoppm", package: "poppler-utils", without: "the printed sheets, measured on their raster" },
];
/** Modules of the machine's own Python that a check reads files back with. */
const modules = [
  {
    program: "ezdxf",
    package: "python3-ezdxf",
    without: "drawings for a cutter, read back and audited by another program",
  },
];
/** Text outside our own embedded fonts would be empty boxes without any system font. */
const alongside = ["fonts-liberation"];

function isOnPath(program) {
  return (process.env.PATH ?? "").split(delimiter).some((folder) => {
    try {
      accessSync(join(folder, program), constants.X_OK);
      return true;
    } catch {
      return false;
    }
  });
}

function apt(args) {
  return spawnSync("apt-get", ["-o", "DPkg::Lock::Timeout=600", ...args], {
    stdio: ["ignore", "ignore", "inherit"],
    env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" },
  }).status;
}

const hasEzdxf = () =>
  spawnSync("/usr/bin/python3", ["-c", "import ezdxf"], { stdio: "ignore" }).status === 0;

function missing() {
  return [...needs.filter((need) => !isOnPath(need.program)), ...(hasEzdxf() ? [] : modules)];
}

export function missingPrograms() {
  return missing().map((need) => need.program);
}

/** Installs what is missing where it may; returns a line for each thing that must be left out. */
export function takeFromDebian() {
  const wanted = missing();
  if (wanted.length > 0 && isOnPath("apt-get") && process.getuid?.() === 0) {
    const packages = wanted.map((need) => need.package);
    console.log(`Installing ${packages.join(" and ")} from Debian's packages ...`);
    if (apt(["update", "-qq"]) === 0)
      apt(["install", "-qq", "-y", "--no-install-recommends", ...packages, ...alongside]);
  }
  return missing().map((need) => `Left out, since ${need.program} is not on this machine: ${need.without}.`);
}
