import { useSyncExternalStore } from "react";

/** Where the app is. An address that is not of this form, such as a link within a page, leaves it where it was. */
export type Route =
  | { readonly screen: "first" }
  | { readonly screen: "horse"; readonly horse: string }
  | {
      readonly screen: "visit";
      readonly subject: string;
      readonly step: number;
      /** The wanted head at true size instead of the bench. */
      readonly trueSize: boolean;
    }
  | { readonly screen: "data" }
  | { readonly screen: "help" }
  /** What another app handed over; kept: false where it could not be laid by. */
  | { readonly screen: "taken-in"; readonly kept: boolean };

const FIRST: Route = { screen: "first" };
let last: Route = FIRST;
let lastHash: string | undefined;

export function routeOf(hash: string): Route | undefined {
  const horse = /^#\/horse\/([0-9a-f-]{36})$/.exec(hash);
  if (horse?.[1]) return { screen: "horse", horse: horse[1] };
  const visit = /^#\/visit\/([0-9a-f-]{36})(?:\/(\d{1,2})(\/scale)?)?$/.exec(hash);
  if (visit?.[1])
    return {
      screen: "visit",
      subject: visit[1],
      step: Number(visit[2] ?? 0),
      trueSize: visit[3] !== undefined,
    };
  if (hash === "#/data") return { screen: "data" };
  if (hash === "#/help") return { screen: "help" };
  if (hash === "#/taken-in" || hash === "#/taken-in/not-kept")
    return { screen: "taken-in", kept: hash === "#/taken-in" };
  return hash === "" || hash === "#/" ? FIRST : undefined;
}

export const visitAddress = (subject: string, step?: number): string =>
  `#/visit/${subject}${step === undefined ? "" : `/${step}`}`;

export const horseAddress = (horse: string): string => `#/horse/${horse}`;
export const trueSizeAddress = (stepAddress: string): string => `${stepAddress}/scale`;

function now(): Route {
  if (location.hash !== lastHash) {
    lastHash = location.hash;
    last = routeOf(location.hash) ?? last;
  }
  return last;
}

function listen(listener: () => void): () => void {
  addEventListener("hashchange", listener);
  return () => removeEventListener("hashchange", listener);
}

export const useRoute = (): Route => useSyncExternalStore(listen, now);
