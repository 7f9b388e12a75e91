import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { choose, middleOf, numbers, picked, settled, test, thing, until } from "./app.ts";

/** More than the test does. */
const MOST_STEPS = 60;

/** All findings that are unfolded, as they are read. */
function findings(page: Page): Promise<string> {
  return page.getByRole("complementary", { name: "Findings" }).innerText();
}

function outline(page: Page): Locator {
  return page.getByRole("complementary", { name: "In the box" });
}

async function type(field: Locator, text: string): Promise<void> {
  await field.fill(text);
  await field.press("Enter");
}

/** Adds an opening by the menu of the air section and leaves its form open. */
async function addAir(page: Page, kind: string, id: string, along: string, up: string): Promise<void> {
  const box = outline(page);
  await box.getByRole("button", { name: "Add a fan or intake" }).click();
  await page.getByRole("menuitem", { name: kind, exact: true }).click();
  await box.getByRole("heading", { name: `Opening ${id}` }).waitFor();
  await type(box.getByRole("textbox", { name: "Along" }), along);
  await type(box.getByRole("textbox", { name: "Up" }), up);
  await settled(page);
  await box.getByRole("button", { name: "All in the box" }).click();
}

test("a person takes a job from a demo to its pack", async ({ app, window }) => {
  const page = await window("/");

  // A new job from a demo.
  await choose(page, page.getByRole("region", { name: "New job" }), "Start from", /^Snow laboratory/);
  await page.getByRole("textbox", { name: "Title" }).fill("Laboratory of the test");
  await page.getByRole("textbox", { name: "Your name" }).fill("Ada");
  await page.getByRole("button", { name: "Make the job" }).click();
  await page.getByRole("heading", { name: "Laboratory of the test", level: 1 }).waitFor();
  await settled(page);
  const id = decodeURIComponent(new URL(page.url()).pathname.replace("/jobs/", ""));
  const first = await numbers(page);

  // Another box.
  await outline(page).getByRole("button", { name: /^Box / }).click();
  await choose(page, outline(page), "Type", /^45/);
  await until(() => numbers(page), ([, mass]) => mass !== first[1] && mass!.includes("since the save"), "the mass follows the box");
  await settled(page);
  await page.getByText(/13556 mm|13\d{3} mm × 26\d\d mm/).first().waitFor();
  await outline(page).getByRole("button", { name: "All in the box" }).click();

  // A door moved by hand, then by typing.
  const door = thing(page, "D1");
  const before = { at: await middleOf(door), findings: await findings(page) };
  await page.mouse.move(before.at.x, before.at.y);
  await page.mouse.down();
  await page.mouse.move(before.at.x - 20, before.at.y, { steps: 5 });
  await page.mouse.move(before.at.x - 40, before.at.y, { steps: 5 });
  await page.mouse.up();
  const along = picked(page, "D1").getByRole("textbox", { name: "Along" });
  await until(() => along.inputValue(), (text) => text !== "900 mm" && / mm$/.test(text), "the drag is written as a length");
  await settled(page);
  const after = await middleOf(door);
  expect(Math.abs(before.at.x - 40 - after.x), "the door lies where the hand left it, but for the snap").toBeLessThan(12);
  expect(Math.abs(before.at.y - after.y), "and no higher or lower").toBeLessThan(2);
  await until(() => findings(page), (text) => text !== before.findings, "the findings answer the drag");
  const dragged = await findings(page);
  await type(along, "1500 mm");
  await until(() => findings(page), (text) => text !== dragged, "the findings answer the typing");
  await settled(page);
  expect(await door.getAttribute("aria-label")).toContain("along 1500 mm");

  // A fan and two intakes.
  await outline(page).getByRole("button", { name: "All in the box" }).click();
  await addAir(page, "fan", "FN1", "3500 mm", "1900 mm");
  await addAir(page, "intake", "IN2", "3500 mm", "300 mm");
  await addAir(page, "intake", "IN3", "2700 mm", "300 mm");
  for (const opening of ["FN1", "IN2", "IN3"]) await thing(page, opening).waitFor();

  // Another build-up: thicker foam, one more board.
  const mass = (await numbers(page))[1];
  await outline(page).getByRole("button", { name: /^ceiling/ }).click();
  const layers = outline(page).getByRole("region", { name: "Layers of ceiling" });
  await layers.getByRole("button", { name: /^Foam/ }).click();
  await type(outline(page).getByRole("textbox", { name: "Thickness" }), "120 mm");
  await page.getByRole("button", { name: /Roof: .*foam 120 mm thick/ }).waitFor();
  await outline(page).getByRole("button", { name: "Add a layer to ceiling" }).click();
  await page.getByRole("menuitem", { name: "Board", exact: true }).click();
  await until(() => layers.getByRole("button", { name: /^Board/ }).count(), (count) => count === 2, "the board stands in the list");
  await settled(page);
  expect((await numbers(page))[1]).not.toBe(mass);

  // A finding read to its source.
  await page.getByRole("button", { name: /corners carry/ }).click();
  const working = page.getByRole("complementary", { name: "Findings" });
  await working.getByRole("region", { name: "Worked out" }).waitFor();
  const step = working.getByRole("region", { name: "Worked out" }).getByRole("listitem").first();
  expect(await step.innerText()).toMatch(/=[\s\S]*Source: \S/);
  expect(await working.getByRole("region", { name: "Sources" }).getByRole("listitem").count()).toBeGreaterThan(0);

  // All taken back, and all done again.
  const edited = await numbers(page);
  const undo = page.getByRole("button", { name: /^Undo/ });
  const redo = page.getByRole("button", { name: /^Redo/ });
  let steps = 0;
  for (; steps < MOST_STEPS && (await undo.isEnabled()); steps += 1) await undo.click();
  await page.getByRole("status").filter({ hasText: /^Revision 1, saved$/ }).waitFor();
  await settled(page);
  expect(await numbers(page)).toEqual(first);
  expect(steps).toBeGreaterThan(10);
  for (; steps > 0; steps -= 1) await redo.click();
  expect(await redo.isEnabled()).toBe(false);
  await settled(page);
  expect(await numbers(page)).toEqual(edited);

  // Saved: who and why.
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await saving.getByRole("textbox", { name: "Who saves" }).fill("Grace");
  await saving.getByRole("textbox", { name: "Why" }).fill("The customer wants a longer box");
  await saving.getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("status").filter({ hasText: /^Revision 2, saved$/ }).waitFor();
  const saved = await app.revision(id, 2);
  expect(saved).toMatchObject({ who: "Grace", why: "The customer wants a longer box", parent: 1 });
  expect(JSON.parse(saved.file)).toMatchObject({ box: { row: "45-high-cube" }, buildUps: { ceiling: { foam: { thickness: "120 mm" } } } });

  // What differs from the first revision.
  await page.getByRole("tab", { name: "Compare" }).click();
  await choose(page, page, "Before: revision", /^Revision 1/);
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  const input = page.getByRole("table", { name: "Fields of the job file" });
  await input.waitFor();
  const rows = await input.getByRole("row").allInnerTexts();
  expect(rows.some((row) => /Box › Type\s+40-high-cube\s+45-high-cube/.test(row)), rows.join("\n")).toBe(true);
  expect(rows.some((row) => /D1 › Place › Along\s+900 mm\s+1500 mm/.test(row)), rows.join("\n")).toBe(true);
  expect(rows.filter((row) => /FN1|IN2|IN3/.test(row))).toHaveLength(3);

  // The pack, made with progress, downloaded and opened.
  await page.getByRole("tab", { name: "Papers" }).click();
  await page.getByRole("button", { name: "Make the pack of revision 2" }).click();
  await page.getByRole("progressbar", { name: "Pack of revision 2" }).waitFor();
  const link = page.getByRole("link", { name: "Download the pack of revision 2" });
  await link.waitFor({ timeout: 120_000 });
  const [download] = await Promise.all([page.waitForEvent("download"), link.click()]);
  expect(download.suggestedFilename()).toMatch(/\.zip$/);
  const files = unzipSync(readFileSync(await download.path()));
  const named = (name: string): Uint8Array => files[Object.keys(files).find((path) => path === name || path.endsWith(`/${name}`)) ?? name]!;
  expect(strFromU8(named("pack.pdf").slice(0, 5))).toBe("%PDF-");
  expect(JSON.parse(strFromU8(named("job.json")))).toEqual(JSON.parse(saved.file));
});
