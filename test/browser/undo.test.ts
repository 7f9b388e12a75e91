import type { Page } from "playwright-core";
import { expect } from "vitest";
import { middleOf, picked, settled, side, test, thing, until } from "./app.ts";
import type { App } from "./app.ts";

async function opened(app: App, window: (path: string) => Promise<Page>, title: string): Promise<Page> {
  const page = await window(`/jobs/${await app.jobFrom("snow-laboratory", title)}`);
  await settled(page);
  return page;
}

function stands(page: Page, status: string): Promise<void> {
  return page.getByRole("status").filter({ hasText: status }).waitFor();
}

/** Takes a thing by the hand and moves it, without letting go. */
async function dragged(page: Page, id: string, by: number): Promise<{ readonly x: number; readonly y: number }> {
  const { x, y } = await middleOf(thing(page, id));
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + by / 2, y, { steps: 4 });
  await page.mouse.move(x + by, y, { steps: 4 });
  await page.getByRole("button", { name: /^Undo (Move|Copy) / }).waitFor();
  return { x: x + by, y };
}

test("an arrow key that is held while the focus goes elsewhere leaves a step that can be undone", async ({ app, window }) => {
  const page = await opened(app, window, "Held key");
  const door = thing(page, "D1");
  const label = (): Promise<string | null> => door.getAttribute("aria-label");
  const first = await label();
  await door.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.down("ArrowRight");
  await until(label, (text) => text !== first, "the door follows the key");
  expect(await page.getByRole("button", { name: "Undo Move D1" }).isEnabled(), "while the key is down").toBe(true);
  // The key is let go in a field, and on another tab.
  await picked(page, "D1").getByRole("textbox", { name: "Up" }).focus();
  await page.keyboard.up("ArrowRight");
  const nudged = await label();
  const up = picked(page, "D1").getByRole("textbox", { name: "Up" });
  await up.fill("10 mm");
  await up.press("Enter");
  await settled(page);
  await page.getByRole("button", { name: "Undo Up of D1" }).click();
  await until(label, (text) => text === nudged, "the typing is a step of its own");
  await page.getByRole("button", { name: "Undo Move D1" }).click();
  await until(label, (text) => text === first, "and the key another");

  await door.focus();
  await page.keyboard.press("Enter");
  await page.keyboard.down("ArrowRight");
  await until(label, (text) => text !== first, "the door follows the key");
  await page.getByRole("tab", { name: "Papers" }).click();
  await page.keyboard.up("ArrowRight");
  await page.getByRole("button", { name: "Undo Move D1" }).click();
  await stands(page, "Revision 1, saved");
});

test("an undo in mid-drag puts the thing back and takes it out of the hand", async ({ app, window }) => {
  const page = await opened(app, window, "Undone in the hand");
  const label = (): Promise<string | null> => thing(page, "W1").getAttribute("aria-label");
  const first = await label();
  const { x, y } = await dragged(page, "W1", 60);
  await page.keyboard.press("Control+z");
  await page.mouse.move(x + 30, y, { steps: 4 });
  await page.mouse.up();
  await stands(page, "Revision 1, saved");
  expect(await label()).toBe(first);
  expect(await page.getByRole("button", { name: "Undo", exact: true }).isDisabled(), "no step is left of it").toBe(true);
  await page.getByRole("button", { name: "Redo Move W1" }).click();
  await until(label, (text) => text !== first, "the drag is done again");
});

test("a copy that is given up in the hand leaves what was picked before", async ({ app, window }) => {
  const page = await opened(app, window, "Copy given up");
  await thing(page, "W1").click();
  const box = await side(page, "In the box");
  await box.getByRole("heading", { name: "Opening W1" }).waitFor();
  await page.keyboard.down("Alt");
  await dragged(page, "W1", 60);
  await page.keyboard.press("Escape");
  await page.keyboard.up("Alt");
  await page.mouse.up();
  await stands(page, "Revision 1, saved");
  await box.getByRole("heading", { name: "Opening W1" }).waitFor();
  expect(await page.getByText(/not in the job any more/).count()).toBe(0);
});

test("what is removed by key or button gives the focus to the face that it was on", async ({ app, window }) => {
  const page = await opened(app, window, "Removed by key");
  const focused = (): Promise<string> => page.evaluate(() => document.activeElement?.getAttribute("aria-label") ?? "");
  await thing(page, "W1").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Delete");
  await thing(page, "W1").waitFor({ state: "detached" });
  expect(await focused()).toMatch(/^(left|right) wall, \d+ on it$/);
  // In a partition, whose faces stand there only while it is picked.
  const box = await side(page, "In the box");
  await box.getByRole("button", { name: /^D2 / }).first().click();
  await thing(page, "D2").first().focus();
  await page.keyboard.press("Delete");
  await thing(page, "D2").first().waitFor({ state: "detached" });
  await until(focused, (label) => /^partition P1, .* on it$/.test(label), "the focus is on the partition");
});

test("nothing is undone behind a dialog", async ({ app, window }) => {
  const page = await opened(app, window, "Behind a dialog");
  await thing(page, "W1").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowRight");
  await stands(page, "Revision 1, changed since");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("dialog", { name: "Save a revision" }).getByRole("button", { name: "Do not save" }).focus();
  await page.keyboard.press("Control+z");
  await page.keyboard.press("Escape");
  await page.getByRole("dialog").waitFor({ state: "detached" });
  await stands(page, "Revision 1, changed since");
  await page.keyboard.press("Control+z");
  await stands(page, "Revision 1, saved");
});
