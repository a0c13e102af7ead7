import { type Route, routeOf } from "../route.ts";
import type { Actions } from "./actions.ts";

/** Notes which screens are entered, and faults that nobody expected. Runs once, before anything is drawn. */
export function watchActions(actions: Actions): void {
  actions.add("opened", placeOf(location.hash));
  addEventListener("hashchange", () => actions.add("went to", placeOf(location.hash)));
  addEventListener("error", ({ error }) => actions.add("fault", faultName(error)));
  addEventListener("unhandledrejection", ({ reason }) => actions.add("fault", faultName(reason)));
}

function placeOf(hash: string): string {
  const route: Route | undefined = routeOf(hash);
  if (route?.screen === "visit") return `step ${route.step}`;
  return route ? `${route.screen} screen` : "elsewhere";
}

/** What kind of fault it was and where in our own script. Its words are left out: they may tell a value. */
function faultName(fault: unknown): string {
  if (!(fault instanceof Error)) return "Error";
  const at = /([\w-]+\.js:\d+:\d+)/.exec(fault.stack ?? "")?.[1];
  return at ? `${fault.name} at ${at}` : fault.name;
}
