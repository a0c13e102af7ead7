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
 * Scripts played in WebKit, one after another: the app is taken from the server once, then the server is gone and each begins from
 * cold. What this cannot see: a browser that was ended in between (the driver's profile goes with it), an iPhone.
 */
export async function* playedInWebKit(scripts: readonly Script[]): AsyncGenerator<OfScript> {
  const server = await startServer({ root: await builtPage(), port: 0 });
  const webkit = await WebKit.open();
  try {
    await webkit.goTo(server.url);
    await webkit.run("return navigator.serviceWorker.ready.then(() => undefined)");
    await webkit.goTo("about:blank");
    await server.close();
    const hand = new WebKitHand(webkit, server.url);
    for (const script of scripts) {
      const began = performance.now();
      await webkit.goTo("about:blank");
      yield { script, ...(await play(hand, script)), tookS: (performance.now() - began) / 1000 };
    }
  } finally {
    await webkit.close();
    await server.close().catch(() => undefined);
  }
}
