import type { Pose } from "../engine/contact/problem.ts";
import type { Mesh } from "../fit/panel-cells.ts";
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

export function movingOf({ plate, changeMm }: Setting, { plates }: Forms): Moving {
  const belief = plate === undefined ? undefined : plates[plate];
  return belief === undefined ? opened(changeMm) : exchanged(belief);
}

/** All settings, from today outward both ways, each from the pose that the two before it point to; the wholes come in the order given. */
export function tryAll(ready: Ready, settings: readonly Setting[], mesh: Mesh): Tried {
  const found = new Map<Setting, Whole | undefined>();
  const wider = settings.filter((one) => one.changeMm >= 0).sort((a, b) => a.changeMm - b.changeMm);
  const narrower = settings.filter((one) => one.changeMm < 0).sort((a, b) => b.changeMm - a.changeMm);
  for (const outward of [wider, narrower]) {
    const passed: Passed[] = ready.today?.pose ? [{ changeMm: 0, pose: ready.today.pose }] : [];
    for (const setting of outward) {
      const { changeMm } = setting;
      const whole = wholeAt(ready.means, movingOf(setting, ready.forms), {
        mesh,
        start: pointedTo(passed, changeMm),
      });
      if (whole?.pose && changeMm !== passed.at(-1)?.changeMm) passed.push({ changeMm, pose: whole.pose });
      found.set(setting, whole);
    }
  }
  return { ready, wholes: settings.map((setting) => found.get(setting)) };
}

/** A setting that was brought to rest, and where. */
interface Passed {
  readonly changeMm: number;
  readonly pose: Pose;
}

/** On the straight line through the last two poses; where there is one only, there. A start only: it moves no answer. */
function pointedTo(passed: readonly Passed[], changeMm: number): Pose | undefined {
  const [before, last] = [passed.at(-2), passed.at(-1)];
  if (before === undefined || last === undefined) return last?.pose;
  const part = (changeMm - last.changeMm) / (last.changeMm - before.changeMm);
  const on = (of: keyof Pose) => last.pose[of] + part * (last.pose[of] - before.pose[of]);
  return { heave: on("heave"), pitch: on("pitch"), roll: on("roll") };
}
