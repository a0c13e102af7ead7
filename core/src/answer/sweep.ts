import { type Passed, poseAhead } from "../engine/contact/pose-ahead.ts";
import { roomFor } from "../engine/contact/room.ts";
import { cellsOf, type Mesh } from "../fit/panel-cells.ts";
import { ridesAhead } from "../fit/ridden.ts";
import { exchanged, type Moving, opened } from "../reach/move.ts";
import type { Setting } from "../reach/setting.ts";
import type { Forms } from "./forms.ts";
import type { Ready } from "./ready.ts";
import { type Whole, wholeAt } from "./whole.ts";

/** One horse under all settings. `wholes` go with the settings, in their order. */
export interface Tried {
  readonly ready: Ready;
  readonly wholes: readonly (Whole | undefined)[];
}

export function movingOf({ plate, position, changeMm }: Setting, { plates, inserts }: Forms): Moving {
  const belief = plate === undefined ? inserts[position ?? -1] : plates[plate];
  return belief === undefined ? opened(changeMm) : exchanged(belief);
}

/** All settings, from today outward both ways, each from the pose that the two before it point to, and its gaits as far from rest as those before it; the wholes come in the order given. */
export function tryAll(ready: Ready, settings: readonly Setting[], mesh: Mesh): Tried {
  const found = new Map<Setting, Whole | undefined>();
  const room = roomFor(cellsOf(mesh));
  const wider = settings.filter((one) => one.changeMm >= 0).sort((a, b) => a.changeMm - b.changeMm);
  const narrower = settings.filter((one) => one.changeMm < 0).sort((a, b) => b.changeMm - a.changeMm);
  for (const outward of [wider, narrower]) {
    const passed: Passed[] = ready.today?.pose ? [{ at: 0, pose: ready.today.pose }] : [];
    const today = ready.today?.ridden().poses;
    const rides = today ? [{ at: 0, poses: today }] : [];
    for (const setting of outward) {
      const at = setting.changeMm;
      const start = poseAhead(passed, at);
      const whole = wholeAt(ready.means, movingOf(setting, ready.forms), { mesh, start, room });
      if (whole?.pose) passed.push({ at, pose: whole.pose });
      const poses = whole?.ridden(ridesAhead(rides, at)).poses;
      if (poses) rides.push({ at, poses });
      found.set(setting, whole);
    }
  }
  return { ready, wholes: settings.map((setting) => found.get(setting)) };
}
