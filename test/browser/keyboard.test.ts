import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { leave, numbers, picked, settled, test, thing, until } from "./app.ts";

/** More stops than any screen has. */
const MOST_STOPS = 300;

/** Presses Tab until something has the focus; each stop on the way has to show that it has it. */
async function tabTo(page: Page, target: Locator, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  await target.waitFor();
  for (let stop = 0; stop < MOST_STOPS; stop += 1) {
    await page.keyboard.press(key);
    expect(await unseenFocus(page), "a stop of the Tab key that does not show the focus").toBe("");
    if (await target.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`the Tab key does not reach ${String(target)}`);
}

/** What has the focus without showing it: "" where it is shown by an outline, or by a line on a drawing, in the colour of the focus. */
function unseenFocus(page: Page): Promise<string> {
  return page.evaluate(() => {
    const active = document.activeElement;
    if (active === null || active === document.body) return "";
    const probe = document.body.appendChild(document.createElement("i"));
    probe.style.color = "var(--focus)";
    const { color } = getComputedStyle(probe);
    probe.remove();
    const label = active.closest("label");
    const shown = [active, ...(label === null ? [] : [label]), ...active.querySelectorAll(".u-body, .u-plate")].some((element) => {
      const { outlineColor, outlineStyle, outlineWidth, stroke, strokeWidth } = getComputedStyle(element);
      return (outlineStyle !== "none" && parseFloat(outlineWidth) >= 1 && outlineColor === color) || (stroke === color && parseFloat(strokeWidth) >= 2);
    });
    return shown ? "" : active.outerHTML.slice(0, 200);
  });
}

async function press(page: Page, ...keys: readonly string[]): Promise<void> {
  for (const key of keys) await page.keyboard.press(key);
}

/** Presses an arrow key until an option or entry has the focus. */
async function arrowTo(page: Page, target: Locator): Promise<void> {
  await target.waitFor();
  for (let step = 0; step < MOST_STOPS; step += 1) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press("ArrowDown");
  }
  throw new Error(`the arrow keys do not reach ${String(target)}`);
}

test("the main job is done with the keyboard alone", async ({ window }) => {
  const page = await window("/");

  // A new job from a demo.
  await tabTo(page, page.getByRole("button", { name: /Start from/ }));
  await press(page, "Enter");
  await arrowTo(page, page.getByRole("option", { name: /^Snow laboratory/ }));
  await press(page, "Enter");
  await tabTo(page, page.getByRole("textbox", { name: "Title" }));
  await page.keyboard.type("Laboratory by key");
  await tabTo(page, page.getByRole("button", { name: "Make the job" }));
  await press(page, "Enter");
  await page.getByRole("heading", { name: "Laboratory by key", level: 1 }).waitFor();
  await settled(page);

  // Another box.
  const box = page.getByRole("complementary", { name: "In the box" });
  await tabTo(page, box.getByRole("button", { name: /^Box / }));
  await press(page, "Enter");
  await tabTo(page, box.getByRole("button", { name: /Type$/ }));
  await press(page, "Enter");
  await arrowTo(page, page.getByRole("option", { name: /^45/ }));
  await press(page, "Enter");
  await until(() => numbers(page), ([, mass]) => mass!.includes("since the save"), "the mass follows the box");
  await settled(page);
  await tabTo(page, box.getByRole("button", { name: "All in the box" }), "Shift+Tab");
  await press(page, "Enter");

  // A fan, by the menu.
  await tabTo(page, box.getByRole("button", { name: "Add a fan or intake" }));
  await press(page, "Enter");
  await arrowTo(page, page.getByRole("menuitem", { name: "fan", exact: true }));
  await press(page, "Enter");
  await box.getByRole("heading", { name: "Opening FN1" }).waitFor();
  await thing(page, "FN1").waitFor();

  // A door picked, moved by the arrow keys, by typing, and both taken back.
  const door = thing(page, "D1");
  const label = (): Promise<string | null> => door.getAttribute("aria-label");
  const first = await label();
  await tabTo(page, door);
  await press(page, "Enter", "ArrowLeft", "ArrowLeft", "Shift+ArrowLeft");
  await until(label, (text) => text !== first, "the door follows the arrow keys");
  await settled(page);
  const nudged = await label();
  expect(nudged).not.toBe(first);
  const along = picked(page, "D1").getByRole("textbox", { name: "Along" });
  await tabTo(page, along);
  await press(page, "Control+a");
  await page.keyboard.type("5'");
  await press(page, "Enter");
  await until(label, (text) => text?.includes("along 1524 mm") === true, "five feet are taken");
  await tabTo(page, door, "Shift+Tab");
  await press(page, "Control+z");
  await until(label, (text) => text === nudged, "the typing is taken back");
  for (let taken = 0; taken < 3; taken += 1) await press(page, "Control+z");
  await until(label, (text) => text === first, "the arrow keys are taken back");
  await press(page, "Control+y");
  await until(label, (text) => text !== first, "and done again");
  await settled(page);

  // A finding read to its source.
  await tabTo(page, page.getByRole("button", { name: /corners carry/ }));
  await press(page, "Enter");
  const findings = page.getByRole("complementary", { name: "Findings" });
  expect(await findings.getByRole("region", { name: "Worked out" }).getByRole("listitem").first().innerText()).toMatch(/Source: \S/);
  await press(page, "Enter");

  // The price, and its working over it; Escape leads back.
  const price = page.getByRole("region", { name: "The four numbers" }).getByRole("button", { name: /^Price/ });
  await tabTo(page, price);
  await press(page, "Enter");
  await page.getByRole("dialog", { name: "Price", exact: true }).waitFor();
  await tabTo(page, page.getByRole("button", { name: /show the working of the price/ }));
  await press(page, "Enter");
  await page.getByRole("dialog", { name: "Working: the price" }).getByRole("region", { name: "Worked out" }).waitFor();
  await leave(page, "Working: the price");
  await leave(page, "Price");
  expect(await price.evaluate((element) => element === document.activeElement), "the focus is back where it was").toBe(true);

  // Saved.
  await tabTo(page, page.getByRole("button", { name: "Save", exact: true }), "Shift+Tab");
  await press(page, "Enter");
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await saving.waitFor();
  const why = saving.getByRole("textbox", { name: "Why" });
  if (!(await why.evaluate((element) => element === document.activeElement))) await tabTo(page, why);
  await page.keyboard.type("By key");
  await tabTo(page, saving.getByRole("button", { name: "Save", exact: true }));
  await press(page, "Enter");
  await page.getByRole("status").filter({ hasText: /^Revision 2, saved$/ }).waitFor();

  // Compared, and the papers made.
  await tabTo(page, page.getByRole("tab", { name: "Unfolded" }));
  await press(page, "ArrowLeft");
  await tabTo(page, page.getByRole("button", { name: /Before: revision$/ }));
  await press(page, "Enter");
  await arrowTo(page, page.getByRole("option", { name: /^Revision 1/ }));
  await press(page, "Enter");
  await tabTo(page, page.getByRole("button", { name: "Compare", exact: true }));
  await press(page, "Enter");
  await page.getByRole("table", { name: "Fields of the job file" }).getByRole("row", { name: /Box › Type/ }).waitFor();
  await tabTo(page, page.getByRole("tab", { name: "Compare" }), "Shift+Tab");
  await press(page, "ArrowLeft");
  await tabTo(page, page.getByRole("button", { name: "Make the pack of revision 2" }));
  await press(page, "Enter");
  const link = page.getByRole("link", { name: "Download the pack of revision 2" });
  await link.waitFor({ timeout: 120_000 });
  await tabTo(page, link);
  const [download] = await Promise.all([page.waitForEvent("download"), press(page, "Enter")]);
  expect(download.suggestedFilename()).toMatch(/\.zip$/);
});

test("a layer that is moved keeps the focus, and a partition goes with its openings in one step", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Moved by key");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  const box = page.getByRole("complementary", { name: "In the box" });
  const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");
  await box.getByRole("button", { name: /^wall/ }).click();
  const inward = box.getByRole("button", { name: /^Move plywood .* inward$/ });
  await inward.focus();
  await press(page, "Enter");
  await until(focused, (label) => /^Move plywood .* toward the sheet$/.test(label), "the focus goes along, to the button that is left");
  await press(page, "Enter");
  await until(focused, (label) => /^Move plywood .* inward$/.test(label), "and back");

  await box.getByRole("button", { name: "All in the box" }).click();
  await box.getByRole("button", { name: /^Prices/ }).click();
  await box.getByRole("button", { name: /Price book$/ }).click();
  await page.getByRole("option", { name: /^demo-shop-usd/ }).waitFor();
  await page.keyboard.press("Escape");
  await box.getByRole("button", { name: "All in the box" }).click();
  await box.getByRole("button", { name: /^P1/ }).click();
  for (const button of await page.getByRole("button", { name: /^Remove P1/ }).allInnerTexts()) expect(button).toBe("Remove P1 with D2");
  await box.getByRole("button", { name: "Remove P1 with D2" }).click();
  await thing(page, "P1").waitFor({ state: "detached" });
  await page.getByRole("button", { name: "Undo Remove P1 with D2" }).click();
  await thing(page, "P1").waitFor();
  await box.getByRole("button", { name: /^D2/ }).waitFor();
});

test("an opening that its article sizes has no grips, and says why until a size is typed", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Sized by its article");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  await thing(page, "D1").click();
  const bar = picked(page, "D1");
  await bar.getByText(/^The article says the size/).waitFor();
  expect(await page.locator(".u-handle").count()).toBe(0);
  await bar.getByRole("button", { name: "Type a size" }).click();
  await bar.getByRole("textbox", { name: "Width" }).waitFor();
  expect(await page.locator(".u-handle").count()).toBe(8);
});
