import { rm } from "node:fs/promises";
import { startServer } from "../../apps/server/src/main.ts";
import { builtPage } from "../page/served-page.ts";
import { type Played, play } from "../visit/scripted.ts";
import type { Script } from "../visit/trainer.ts";
import { WebKitHand } from "./hand.ts";
import { WebKit } from "./webkit.ts";

export interface OfScript extends Played {
  readonly script: Script;
  readonly tookS: number;
}

/**
 * Scripts played in WebKit, each in a browser of its own: the app is taken from the server once, then the server is gone and the app
 * begins from cold. What this cannot see: a browser that was ended in between (the driver's profile goes with it), an iPhone.
 */
export async function* playedInWebKit(scripts: readonly Script[]): AsyncGenerator<OfScript> {
  const root = await builtPage();
  try {
    for (const script of scripts) {
      const began = performance.now();
      const played = await playedIn(root, script);
      yield { script, ...played, tookS: (performance.now() - began) / 1000 };
    }
  } finally {
    await rm(root, { recursive: true });
  }
}

async function playedIn(root: string, script: Script): Promise<Played> {
  const server = await startServer({ root, port: 0 });
  const webkit = await WebKit.open();
  try {
    await webkit.goTo(server.url);
    await webkit.run("return navigator.serviceWorker.ready.then(() => undefined)");
    await webkit.goTo("about:blank");
    await server.close();
    return await play(new WebKitHand(webkit, server.url), script);
  } finally {
    await webkit.close();
    await server.close().catch(() => undefined);
  }
}
