import { afterAll, beforeAll, expect, test } from "vitest";
import { startServer } from "../../apps/server/src/main.ts";
import { builtPage } from "../page/served-page.ts";
import { WebKit } from "./webkit.ts";

/*
 * A visit in WebKit, as a fitter with such a phone begins it: a reading by the big keys, a slip refused, undo, what stands after the
 * page was left, the photo's file, the answers worked out on the device.
 */
const SPREAD = "saddle.head.spreadTips";
const row = (path: string) => `.questions button[data-at='${path}']`;
const stands = (path: string, words: string) =>
  `document.querySelector("${row(path)}").textContent.includes(${JSON.stringify(words)})`;

let webkit: WebKit;
let server: Awaited<ReturnType<typeof startServer>>;
beforeAll(async () => {
  server = await startServer({ root: await builtPage(), port: 0 });
  webkit = await WebKit.open();
});
afterAll(async () => {
  await webkit.close();
  await server.close();
});

async function atHead(): Promise<void> {
  await webkit.sees("document.querySelector('.dock')");
  await webkit.run(
    "[...document.querySelectorAll('.steps a')].find((one) => one.textContent.includes('Head and points')).click()",
  );
  await webkit.sees("document.querySelector('.visit-head h1').textContent.includes('Head and points')");
}

test("a reading is typed by the keys, kept, undone, and there after the page was left", async () => {
  await webkit.goTo(server.url);
  await webkit.type(".begin input", "Garganey");
  await webkit.press(".begin button");
  await atHead();
  await webkit.press(row(SPREAD));
  await webkit.sees(`document.querySelector(".dock").dataset.at === "${SPREAD}"`);
  for (const sign of "174") {
    await webkit.run(
      `[...document.querySelectorAll('.number-keys button')].find((one) => one.textContent.trim() === '${sign}').click()`,
    );
    await webkit.sees(`document.querySelector("#taken").value.endsWith("${sign}")`);
  }
  await webkit.press(".enter");
  await webkit.sees(stands(SPREAD, "174 mm"));
  await webkit.press(row(SPREAD));
  await webkit.type("#taken", "17");
  await webkit.press(".enter");
  await webkit.sees("document.querySelector('.dock .problem')");
  const address = await webkit.run<string>("return location.href");
  await webkit.goTo("about:blank");
  await webkit.goTo(address);
  await webkit.sees(stands(SPREAD, "174 mm"));
  await webkit.run(
    "[...document.querySelectorAll('.step-keys button')].find((one) => one.textContent === 'Undo').click()",
  );
  await webkit.sees(stands(SPREAD, "not said"));
});

test("an invented horse is answered on the device", async () => {
  await webkit.goTo(`${server.url}#/`);
  await webkit.sees("document.querySelectorAll('.visit-list .visit-row').length > 5");
  await webkit.run(
    "[...document.querySelectorAll('.visit-list .visit-row')].find((one) => one.textContent.includes('Avocet')).click()",
  );
  await webkit.sees("document.querySelector('.dock')");
  await webkit.run(
    "[...document.querySelectorAll('.steps a')].find((one) => one.textContent.includes('What to do')).click()",
  );
  await webkit.sees("document.querySelector('.paper-keys button:enabled')");
  expect(await webkit.run<string>("return document.body.textContent")).toContain(
    "Set back the earlier change of the head",
  );
});
