import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";

/** What Debian's python3-ezdxf, another program, finds in a DXF text. */
export interface ReadByPython {
  readonly version: string;
  /** 4: millimetres. */
  readonly units: number;
  readonly errors: readonly string[];
  /** What it had to put right before it could go on. */
  readonly fixes: readonly string[];
  readonly layers: readonly string[];
  readonly lines: readonly {
    readonly layer: string;
    readonly closed: boolean;
    readonly points: readonly (readonly [number, number])[];
  }[];
  readonly words: readonly { readonly layer: string; readonly text: string }[];
}

const SCRIPT = `
import ezdxf, json, sys
from ezdxf.lldxf.encoding import decode_dxf_unicode
doc = ezdxf.readfile(sys.argv[1])
audit = doc.audit()
space = doc.modelspace()
json.dump({
  "version": doc.dxfversion, "units": doc.units,
  "errors": [one.message for one in audit.errors], "fixes": [one.message for one in audit.fixes],
  "layers": [one.dxf.name for one in doc.layers],
  "lines": [{"layer": one.dxf.layer, "closed": one.closed, "points": [list(p) for p in one.get_points("xy")]}
            for one in space.query("LWPOLYLINE")],
  "words": [{"layer": one.dxf.layer, "text": decode_dxf_unicode(one.dxf.text)} for one in space.query("TEXT")],
}, sys.stdout)
`;

export function readByPython(dxf: string): ReadByPython {
  const folder = mkdtempSync(join(tmpdir(), "treewright-dxf-"));
  try {
    const file = join(folder, "drawing.dxf");
    writeFileSync(file, dxf);
    return JSON.parse(execFileSync("/usr/bin/python3", ["-c", SCRIPT, file], { encoding: "utf8" }));
  } finally {
    rmSync(folder, { recursive: true });
  }
}
