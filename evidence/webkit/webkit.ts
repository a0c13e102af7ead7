import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";

/*
 * A browser of another family than Chromium's: WebKit (GTK's build), driven as the WebDriver standard of the W3C says, on a made
 * screen. What this cannot see: an iPhone, its keyboard, its way of clearing storage, its camera.
 */

/** The standard's name for a reference to an element (WebDriver, section 12.1). */
const ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
/** An answer over all examples takes its time on a slow machine. */
const SCRIPT_MS = 280_000;

export class WebKit {
  private constructor(
    private readonly base: string,
    private readonly session: string,
    readonly version: string,
    private readonly programs: readonly ChildProcess[],
  ) {}

  static async open(): Promise<WebKit> {
    const screen = spawn("Xvfb", ["-displayfd", "3", "-screen", "0", "900x1000x24", "-nolisten", "tcp"], {
      stdio: ["ignore", "ignore", "ignore", "pipe"],
    });
    const told = screen.stdio[3];
    if (!told) throw new Error("the made screen tells its number");
    const [number] = await once(told, "data");
    const port = await freePort();
    const driver = spawn("WebKitWebDriver", [`--port=${port}`], {
      env: { ...process.env, DISPLAY: `:${String(number).trim()}` },
      stdio: "ignore",
    });
    const base = `http://127.0.0.1:${port}`;
    await until(async () => (await fetch(`${base}/status`).catch(() => undefined))?.ok === true);
    const { sessionId, capabilities } = await call(base, "POST", "/session", {
      capabilities: { alwaysMatch: { timeouts: { script: SCRIPT_MS } } },
    });
    return new WebKit(base, sessionId, capabilities.browserVersion, [driver, screen]);
  }

  async goTo(url: string): Promise<void> {
    await this.asks("POST", "/url", { url });
  }

  /** The value of a function's body in the page. */
  run<Value>(body: string): Promise<Value> {
    return this.asks("POST", "/execute/sync", { script: body, args: [] });
  }

  /** Waits until the page has it: looked at once a frame. */
  async sees(condition: string): Promise<void> {
    const script = `const done = arguments[0];
      const look = () => { let is = false; try { is = Boolean(${condition}); } catch {} is ? done(true) : requestAnimationFrame(look); };
      look();`;
    await this.asks("POST", "/execute/async", { script, args: [] });
  }

  async press(css: string): Promise<void> {
    await this.asks("POST", `/element/${await this.one(css)}/click`, {});
  }

  async type(css: string, text: string): Promise<void> {
    await this.asks("POST", `/element/${await this.one(css)}/value`, { text });
  }

  async picture(): Promise<Buffer> {
    return Buffer.from(await this.asks<string>("GET", "/screenshot"), "base64");
  }

  async close(): Promise<void> {
    await this.asks("DELETE", "").catch(() => undefined);
    for (const program of this.programs) program.kill();
  }

  private async one(css: string): Promise<string> {
    await this.sees(`document.querySelector(${JSON.stringify(css)})`);
    const found = await this.asks<Record<string, string>>("POST", "/element", {
      using: "css selector",
      value: css,
    });
    return found[ELEMENT] ?? "";
  }

  private asks<Value>(method: string, path: string, body?: unknown): Promise<Value> {
    return call(this.base, method, `/session/${this.session}${path}`, body);
  }
}

// biome-ignore lint/suspicious/noExplicitAny: what a driver answers is as the standard says, and is read where it is used
async function call(base: string, method: string, path: string, body?: unknown): Promise<any> {
  const answer = await fetch(base + path, {
    method,
    ...(body === undefined ? {} : { body: JSON.stringify(body) }),
  });
  const { value } = (await answer.json()) as { value: { error?: string; message?: string } };
  if (!answer.ok) throw new Error(`${method} ${path}: ${value.error}: ${value.message}`);
  return value;
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (typeof address !== "object" || address === null) throw new Error("a port is free");
  return address.port;
}

/** A driver tells nobody that it listens: it is asked until it answers. */
async function until(is: () => Promise<boolean>): Promise<void> {
  while (!(await is())) await new Promise((done) => setImmediate(done));
}
