import { ZONES } from "@treewright/core/terms/places.ts";
import { describe, expect, it } from "vitest";
import { phones } from "./phone.ts";

/* What each step draws of what was read. What this cannot see: whether it helps a cold hand. */
const { phone } = phones();

describe("hands on, as a map from above", () => {
  it("a zone leads to its question on its own side; its grade stands there by figure, and near stays left", async () => {
    const { page, hand, faults } = await phone();
    await hand.beginVisit("Curlew");
    await hand.goTo("Hands on");
    const zone = page.locator(".zone", { hasText: "–" });
    expect(await zone.count()).toBe(2 * ZONES.length);
    await page.getByRole("button", { name: "last ribs, off (right): not felt" }).click();
    await page.waitForSelector(".dock[data-at='horses[0].hands.last-ribs.off.grade']");
    await hand.press("2");
    await hand.enter();
    const felt = page.getByRole("button", { name: "last ribs, off (right): grade 2" });
    await felt.waitFor();
    const other = page.getByRole("button", { name: "last ribs, near (left): not felt" });
    const [off, near] = [await felt.boundingBox(), await other.boundingBox()];
    expect((near?.x ?? 0) < (off?.x ?? 0)).toBe(true);
    // The reaction is felt for again next.
    await page.waitForSelector(".dock[data-at='horses[0].hands.last-ribs.off.twice']");
    // Where there is room the question stays beside what was read, in sight.
    await page.setViewportSize({ width: 1440, height: 900 });
    const [dock, list] = await Promise.all(
      [".dock", ".step-read"].map((one) => page.locator(one).boundingBox()),
    );
    expect((dock?.x ?? 0) >= (list?.x ?? 0) + (list?.width ?? 0)).toBe(true);
    expect((dock?.y ?? 900) + (dock?.height ?? 0)).toBeLessThan(900);
    expect(faults).toEqual([]);
    await page.close();
  });
});

describe("what was read so far, drawn", () => {
  it("the back with its first tracing, the head by itself, and over the back once its clearance is read", async () => {
    const { page, hand, faults } = await phone();
    await hand.beginVisit("Curlew");
    await hand.goTo("Tracings");
    expect(await page.locator(".step-drawing").count()).toBe(0);
    await page.locator(".questions button[data-at$='traces[0].points']").click();
    await hand.type("-120 -90; -80 -56; -40 -20; -20 -6; 0 0; 20 -6; 40 -20; 80 -56; 120 -90");
    await hand.enter();
    await page.locator(".step-drawing .now").waitFor({ state: "attached" });
    await hand.goTo("Head and points");
    const head = {
      "saddle.head.face": "inside",
      "saddle.head.spreadTips": "190",
      "saddle.head.depth": "95",
      "saddle.head.halfAngleNear": "45",
      "saddle.head.halfAngleOff": "45",
    };
    for (const [at, typed] of Object.entries(head)) {
      await page.locator(`.questions button[data-at='${at}']`).click();
      await page.waitForSelector(`.dock[data-at='${at}']`);
      if (at.endsWith("face")) await page.locator(".choices button", { hasText: typed }).click();
      else {
        await hand.type(typed);
        await hand.enter();
      }
    }
    await page.getByText("its clearance was not read").waitFor();
    await hand.goTo("Girthed up");
    await page.locator(".questions button[data-at$='girthed.clearanceTop']").click();
    await hand.type("48");
    await hand.enter();
    await page.getByText("48 mm over the back as it was read").waitFor();
    // Of the inside of the head the highest point lies as far over the top of the back as was read.
    const tops = await page
      .locator(".step-drawing polyline")
      .evaluateAll((lines) =>
        lines.map((line) => [
          line.getAttribute("class"),
          Math.min(
            ...(line.getAttribute("points") ?? "").split(" ").map((pair) => Number(pair.split(",")[1])),
          ),
        ]),
      );
    expect(Object.fromEntries(tops).head).toBeCloseTo(-48, 6);
    expect(Math.abs(Object.fromEntries(tops).now)).toBeLessThan(0.5);
    expect(faults).toEqual([]);
    await page.close();
  });
});
