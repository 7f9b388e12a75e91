import { expect } from "vitest";
import { middleOf, numbers, picked, settled, test, thing } from "./app.ts";

const STEPS = 30;
/**
 * How far the drawing may lag behind the hand, half of the time and at most, ms. Two cores with five times their work took
 * 46 ms and 142 ms; four times that is what another laden machine may take, and more is a fault of the page.
 */
const LAG_MS = 200;
const FROZEN_MS = 600;

interface Measured {
  /** From each move of the pointer until the page has handed over the frame that follows it, ms. */
  readonly frames: number[];
  /** What kept the page busy in one piece, ms. */
  readonly busy: number[];
}

declare global {
  interface Window {
    measured: Measured;
  }
}

test("a drag keeps the page moving, and the last answer is that of the last place", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Dragged");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  await page.evaluate(() => {
    const measured: Measured = { frames: [], busy: [] };
    globalThis.window.measured = measured;
    new PerformanceObserver((list) => measured.busy.push(...list.getEntries().map(({ duration }) => duration))).observe({ type: "longtask" });
    addEventListener(
      "pointermove",
      ({ timeStamp }) => {
        // The next frame is made after this callback and handed over before the message arrives.
        requestAnimationFrame(() => {
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => measured.frames.push(performance.now() - timeStamp);
          port2.postMessage("");
        });
      },
      { capture: true },
    );
  });

  const window3 = thing(page, "W3");
  const { x, y } = await middleOf(window3);
  await page.mouse.move(x, y);
  await page.mouse.down();
  for (let step = 1; step <= STEPS; step += 1) await page.mouse.move(x + 2 * step, y + (step % 3));
  await page.mouse.up();
  const released = performance.now();
  await settled(page);
  const caughtUp = performance.now() - released;
  const { frames, busy } = await page.evaluate(() => globalThis.window.measured);
  const sorted = frames.toSorted((a, b) => a - b);
  const lag = (share: number): number => sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? NaN;
  const at = (share: number): string => lag(share).toFixed(0);
  process.stdout.write(`A drag of ${STEPS} steps: pointer to frame ${at(0.5)} ms at the middle, ${at(0.95)} ms at the 95th of 100, ${at(1)} ms at most; busy in one piece ${Math.max(0, ...busy).toFixed(0)} ms at most; all checks answered ${caughtUp.toFixed(0)} ms after the hand let go.\n`);
  expect(frames.length).toBeGreaterThan(STEPS / 2);
  expect(lag(0.5)).toBeLessThan(LAG_MS);
  expect(Math.max(...frames, ...busy)).toBeLessThan(FROZEN_MS);

  // What is shown is what a new window works out from the saved file.
  const along = await picked(page, "W3").getByRole("textbox", { name: "Along" }).inputValue();
  expect(along).not.toBe("4500 mm");
  expect(await window3.getAttribute("aria-label")).toContain(`along ${along}`);
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("dialog").getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("status").filter({ hasText: /^Revision 2, saved$/ }).waitFor();
  const fresh = await window(`/jobs/${id}`);
  await settled(fresh);
  expect(await numbers(page)).toEqual(await numbers(fresh));
  const findings = { name: "Findings" } as const;
  expect(await page.getByRole("complementary", findings).innerText()).toBe(await fresh.getByRole("complementary", findings).innerText());
});
