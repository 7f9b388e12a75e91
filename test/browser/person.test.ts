import { readFileSync } from "node:fs";
import { strFromU8, unzipSync } from "fflate";
import type { Locator, Page, Route } from "playwright-core";
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

test("a pack that waits is cancelled, and asked for once more", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Cancelled");
  const page = await window(`/jobs/${job}`);
  await settled(page);
  await page.getByRole("tab", { name: "Papers" }).click();
  // Others asked before, so that this one has to wait.
  for (let asked = 0; asked < 2; asked += 1) await app.makePack(job, 1);
  await page.getByRole("button", { name: "Make the pack of revision 1" }).click();
  await page.getByRole("button", { name: "Cancel" }).click();
  await page.getByText("The pack of revision 1 was cancelled.").waitFor();
  expect(await page.getByRole("link", { name: /^Download the pack/ }).count()).toBe(0);
  await page.getByRole("button", { name: "Make the pack of revision 1" }).click();
  await page.getByRole("link", { name: "Download the pack of revision 1" }).waitFor({ timeout: 120_000 });
});

test("files are picked from the device, and a job among them opens", async ({ window }) => {
  const page = await window("/");
  const text = readFileSync("examples/snow-laboratory.job.json", "utf8").replace(/"title": "[^"]*"/, '"title": "Picked from the device"');
  const book = readFileSync("examples/price-books/demo-shop-usd.price-book.json", "utf8").replace('"currency"', '"currenzy"');
  await page.getByRole("button", { name: "Choose files to import" }).waitFor();
  await page.locator('input[type="file"]').setInputFiles([
    { name: "picked.job.json", mimeType: "application/json", buffer: Buffer.from(text) },
    { name: "book.json", mimeType: "application/json", buffer: Buffer.from(book) },
  ]);
  const became = page.getByRole("region", { name: "Import" }).getByRole("status");
  await became.getByText("picked.job.json became a job.").waitFor();
  await became.getByText(/^book.json is a price book, and one with issues is not taken/).waitFor();
  await became.getByText(/currenzy/).waitFor();
  await page.getByRole("button", { name: "Open Picked from the device" }).click();
  await page.getByRole("heading", { name: "Picked from the device", level: 1 }).waitFor();
  await settled(page);
});

test("an address of a job leads straight to it", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Gone to straight");
  const page = await window("/");
  await page.getByRole("region", { name: "All jobs" }).waitFor();
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  const held: Route[] = [];
  await page.route(`**/api/jobs/${job}`, (route) => void held.push(route));
  await page.goto(`/jobs/${job}`);
  await page.getByRole("progressbar", { name: "Opening…" }).waitFor();
  expect(await page.getByRole("main").innerText()).toBe("Opening…");
  await Promise.all(held.map((route) => route.continue()));
  await page.getByRole("heading", { name: "Gone to straight", level: 1 }).waitFor();
  await settled(page);
  expect(asked, "the list of jobs is not asked for").not.toContain("/api/jobs");
});

test("a job whose text is no job file is shown as typed, taken out, and taken back to an earlier revision", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Broken elsewhere");
  const { file } = await app.revision(job, 1);
  const broken = file.slice(0, 300);
  await app.saveText(job, 1, "Test", broken);
  const page = await window(`/jobs/${job}`);
  await page.getByRole("heading", { name: "Revision 2 cannot be read as a job" }).waitFor();
  await page.getByRole("alert").getByText(new RegExp(`^line ${broken.split("\n").length}, column \\d+: the text is not JSON`)).waitFor();
  expect(await page.getByRole("region", { name: "Text of the file" }).textContent()).toBe(broken);
  const [download] = await Promise.all([page.waitForEvent("download"), page.getByRole("link", { name: "Take the text out" }).click()]);
  expect(readFileSync(await download.path(), "utf8")).toBe(broken);
  await page.getByRole("button", { name: "Go back to revision 1" }).click();
  await page.getByRole("status").filter({ hasText: /^Revision 3, saved$/ }).waitFor();
  await settled(page);
  expect([(await app.revision(job, 2)).file, (await app.revision(job, 3)).file]).toEqual([broken, file]);
});

test("changes that are not saved are not dropped without a word", async ({ app, window }) => {
  const title = "Left for another";
  await app.jobFrom("snow-laboratory", title);
  const page = await window("/");
  await page.getByRole("button", { name: `Open ${title}` }).click();
  await settled(page);
  await outline(page).getByRole("button", { name: /^D1 / }).first().click();
  await type(outline(page).getByRole("textbox", { name: "Along" }), "1520 mm");
  await settled(page);

  const openOther = async (): Promise<void> => {
    await page.getByRole("button", { name: "Jobs", exact: true }).click();
    await page.getByRole("button", { name: /^Open Bunk room/ }).click();
  };
  const asked = page.getByRole("dialog", { name: "Changes that are not saved" });
  await openOther();
  await asked.getByRole("button", { name: "Back to the job" }).click();
  await page.getByRole("heading", { name: title, level: 1 }).waitFor();
  expect(await outline(page).getByRole("textbox", { name: "Along" }).inputValue()).toBe("1520 mm");

  // The browser's own way back asks too; the job itself in the list is no other job.
  await page.goBack();
  await asked.getByRole("button", { name: "Back to the job" }).click();
  await page.getByRole("button", { name: "Jobs", exact: true }).click();
  await page.getByRole("button", { name: `Open ${title}` }).click();
  expect(await outline(page).getByRole("textbox", { name: "Along" }).inputValue()).toBe("1520 mm");

  await openOther();
  await asked.getByRole("button", { name: "Leave them behind" }).click();
  await page.getByRole("heading", { name: /^Bunk room/, level: 1 }).waitFor();
  await settled(page);
});

test("a backup is made and handed over", async ({ window }) => {
  const page = await window("/");
  const part = page.getByRole("region", { name: "Backup" });
  await part.getByRole("button", { name: "Make a backup" }).click();
  const [download] = await Promise.all([page.waitForEvent("download"), part.getByRole("link", { name: "Download the backup" }).click()]);
  expect(download.suggestedFilename()).toMatch(/\.sqlite$/);
  expect(readFileSync(await download.path()).subarray(0, 15).toString()).toBe("SQLite format 3");
});
