import type { Locator, Page } from "playwright-core";
import { expect } from "vitest";
import { readPdf } from "../readPdf.ts";
import { choose, leave, middleOf, picked, settled, side, test, thing, until } from "./app.ts";

/** Small windows: a desk at 200 %, a shop tablet, a phone. */
const WINDOWS = [
  { name: "a desk at 200 %", options: { viewport: { width: 720, height: 450 }, deviceScaleFactor: 2 } },
  { name: "a shop tablet", options: { viewport: { width: 1024, height: 768 }, hasTouch: true } },
  { name: "a phone", options: { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true } },
] as const;

/** The page scrolls in no direction sideways, and what is named can be pressed where it lies. */
async function reachable(page: Page, screen: string, ...controls: readonly Locator[]): Promise<void> {
  const { wide, room } = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.scrollingElement ?? document.documentElement;
    return { wide: scrollWidth, room: clientWidth };
  });
  expect(wide, `${screen} is no wider than the window`).toBeLessThanOrEqual(room);
  for (const control of controls) {
    await control.click({ trial: true });
    const box = (await control.boundingBox())!;
    expect(box.x, `${screen}: ${String(control)} begins in the window`).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width, `${screen}: ${String(control)} ends in the window`).toBeLessThanOrEqual(room + 0.5);
  }
}

test.for(WINDOWS)("everything can be reached on $name", async ({ options }, { app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "A laboratory with a title that is far too long for a small window");
  const list = await window("/", options);
  await list.getByRole("table").waitFor();
  await reachable(list, "list", list.getByRole("button", { name: "Make the job" }), list.getByRole("button", { name: /^Open Snow/ }), list.getByRole("button", { name: "Choose files to import" }));

  const page = await window(`/jobs/${id}`, options);
  await settled(page);
  const save = page.getByRole("button", { name: "Save", exact: true });
  const four = page.getByRole("region", { name: "The four numbers" });
  await reachable(page, "unfolded", save, thing(page, "BN1"), page.getByRole("button", { name: "Whole box" }), ...["Stops", "Mass", "Price", "Delivery"].map((name) => four.getByRole("button", { name: new RegExp(`^${name}`) })));
  const sheet = (await page.getByRole("region", { name: "Unfolded" }).boundingBox())!;
  expect(sheet.height, "the drawing has room").toBeGreaterThan(0.25 * options.viewport.height);
  expect((await four.boundingBox())!.height, "the four numbers leave it room").toBeLessThan(0.16 * options.viewport.height);

  const box = await side(page, "In the box");
  await reachable(page, "in the box", box.getByRole("button", { name: "Add an opening" }), box.getByRole("button", { name: /^ceiling/ }));
  await box.getByRole("button", { name: /^ceiling/ }).click();
  await box.getByRole("button", { name: /^Foam/ }).click();
  await reachable(page, "build-up", box.getByRole("textbox", { name: "Thickness" }), box.getByRole("button", { name: "Add a layer to ceiling" }));
  // Something to save.
  await box.getByRole("textbox", { name: "Thickness" }).fill("90 mm");
  await box.getByRole("textbox", { name: "Thickness" }).press("Enter");
  await settled(page);
  await side(page, "In the box", false);
  const findings = await side(page, "Findings");
  const finding = findings.getByRole("button", { name: /corners carry/ });
  await reachable(page, "findings", findings.getByRole("searchbox"), finding);
  await finding.click();
  await findings.getByRole("region", { name: "Worked out" }).waitFor();
  await reachable(page, "finding");
  await side(page, "Findings", false);

  await page.getByRole("tab", { name: "Three dimensions" }).click();
  await reachable(page, "three dimensions", page.getByRole("combobox", { name: "Section" }), page.getByRole("button", { name: /^Peel/ }));
  await page.getByRole("tab", { name: "Heat" }).click();
  await page.getByRole("application").waitFor();
  await reachable(page, "heat", page.getByRole("radio", { name: /^December/ }), page.getByRole("button", { name: /^1: mark/ }));
  await page.getByRole("tab", { name: "Papers" }).click();
  await reachable(page, "papers", page.getByRole("button", { name: /^Make the pack/ }));
  await page.getByRole("tab", { name: "Compare" }).click();
  await choose(page, page, "After: job", /^Snow laboratory/);
  const compare = page.getByRole("button", { name: "Compare", exact: true });
  await reachable(page, "compare", compare);
  await compare.click();
  await page.getByRole("table", { name: "Fields of the job file" }).waitFor();
  await reachable(page, "compared");
  await four.getByRole("button", { name: /^Price/ }).click();
  await page.getByRole("button", { name: /show the working of the price/ }).click();
  const working = page.getByRole("dialog", { name: "Working: the price" });
  await working.getByRole("region", { name: "Worked out" }).waitFor();
  await reachable(page, "working", working.getByRole("button", { name: "Close Working: the price" }));
  await leave(page, "Working: the price");
  await leave(page, "Price");
  await save.click();
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await reachable(page, "save", saving.getByRole("textbox", { name: "Why" }), saving.getByRole("button", { name: "Save", exact: true }), saving.getByRole("button", { name: "Do not save" }));
});

test("an issue leaves room for the drawing at 200 %, and no name of a face is printed on another", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "With an issue");
  for (const { name, options } of WINDOWS) {
    const page = await window(`/jobs/${id}`, options);
    await settled(page);
    const box = await side(page, "In the box");
    await box.getByRole("button", { name: /^D1 / }).first().click();
    const along = box.getByRole("textbox", { name: "Along" });
    await along.fill("nine");
    await along.press("Enter");
    await page.getByRole("alert").filter({ hasText: "the last build that had one is shown" }).waitFor();
    await side(page, "In the box", false);
    await reachable(page, name, page.getByRole("button", { name: "Whole box" }), page.getByRole("button", { name: "Layers" }));
    const frame = (await page.getByRole("region", { name: "Unfolded" }).boundingBox())!;
    const whole = (await page.getByRole("button", { name: "Whole box" }).boundingBox())!;
    expect(whole.y + whole.height, `${name}: the button ends on the drawing`).toBeLessThanOrEqual(frame.y + frame.height);
    const names = await page.locator(".u-text.is-face").evaluateAll((all) => all.map((one) => {
        const { left, right, top, bottom } = one.getBoundingClientRect();
        return { text: one.textContent, left, right, top, bottom };
      }));
    expect(names.map(({ text }) => text.replace(/\d.*/, "")).toSorted(), name).toEqual(["Blind end", "Door end", "Floor", "Left wall", "Right wall", "Roof"]);
    // Lines of text that touch do not print over each other: their letters are lower than their lines.
    const over = names.flatMap((a, at) => names.slice(at + 1).filter((b) => a.left < b.right - 1 && b.left < a.right - 1 && a.top < b.bottom - 4 && b.top < a.bottom - 4).map((b) => `${a.text} on ${b.text}`));
    expect(over, name).toEqual([]);
    await page.context().close();
  }
});

test("findings and workings follow the units shown, and the file does not", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Two systems");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  const finding = (await side(page, "Findings")).getByText(/CE1 cuts /);
  await finding.filter({ hasText: "210 mm" }).waitFor();
  await page.getByRole("radio", { name: "Feet and inches" }).click();
  await finding.filter({ hasText: /8-1\/4"/ }).waitFor();
  await page.getByRole("region", { name: "The four numbers" }).getByRole("button", { name: /^Price/ }).click();
  const dialog = page.getByRole("dialog", { name: "Price" });
  await dialog.getByText(/^[\d,.]+ ft of whole bars$/).first().waitFor();
  expect(await dialog.getByText("metre of").count()).toBe(0);
  await leave(page, "Price");
  await page.getByRole("status").filter({ hasText: /^Revision 1, saved$/ }).waitFor();
});

test("a job without its price book shows all but price and days, and says why once", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "No book", (file) => {
    file.prices.book = "no-such-book";
  });
  const page = await window(`/jobs/${id}`);
  await settled(page);
  await thing(page, "BN1").waitFor();
  await (await side(page, "Findings")).getByText(/CE1 cuts /).waitFor();
  expect(await page.getByText(/no-such-book is not here/).count()).toBe(1);
  const four = page.getByRole("region", { name: "The four numbers" });
  await four.getByRole("button", { name: /^Mass 7,941 kg/ }).waitFor();
  await four.getByRole("button", { name: /^Price none/ }).click();
  await page.getByRole("dialog", { name: "Price" }).getByText("Choose demo-shop-usd").waitFor();
  await leave(page, "Price");
});

test("an id that is taken is refused in words, and the field keeps what was typed", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Two of one name");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  const box = await side(page, "In the box");
  await box.getByRole("button", { name: /^D1 / }).first().click();
  const field = box.getByRole("textbox", { name: "Id" });
  await field.fill("bn1");
  await field.press("Enter");
  await box.getByText("bn1 is taken").waitFor();
  expect(await field.inputValue()).toBe("bn1");
  await field.press("Escape");
  await until(() => field.inputValue(), (text) => text === "D1", "Escape takes the typing back");
  await page.getByRole("status").filter({ hasText: /^Revision 1, saved$/ }).waitFor();
});

interface Finger {
  readonly x: number;
  readonly y: number;
}

/** Between the inside planes of the side walls, mm, as the floor's dimension says. */
const FLOOR_WIDTH = 2352;

/** Fingers go down, move in steps, and come up. */
async function swipe(page: Page, from: readonly Finger[], to: readonly Finger[]): Promise<void> {
  const touch = await page.context().newCDPSession(page);
  const points = (share: number): { x: number; y: number; id: number }[] =>
    from.map((start, id) => ({ x: start.x + share * (to[id]!.x - start.x), y: start.y + share * (to[id]!.y - start.y), id }));
  await touch.send("Input.dispatchTouchEvent", { type: "touchStart", touchPoints: points(0) });
  for (let step = 1; step <= 10; step += 1) await touch.send("Input.dispatchTouchEvent", { type: "touchMove", touchPoints: points(step / 10) });
  await touch.send("Input.dispatchTouchEvent", { type: "touchEnd", touchPoints: [] });
  await touch.detach();
}

test("a finger picks, drags, and two fingers zoom on a tablet", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "By finger");
  const page = await window(`/jobs/${id}`, { viewport: { width: 1024, height: 768 }, hasTouch: true });
  await settled(page);
  const bench = thing(page, "BN2");
  const label = (): Promise<string | null> => bench.getAttribute("aria-label");
  const first = await label();
  const at = await middleOf(bench);
  await page.touchscreen.tap(at.x, at.y);
  await picked(page, "BN2").waitFor();
  expect(await bench.getAttribute("aria-pressed")).toBe("true");
  expect(await label(), "a tap moves nothing").toBe(first);

  await swipe(page, [at], [{ x: at.x + 40, y: at.y }]);
  await until(label, (text) => text !== first, "the bench follows the finger");
  await settled(page);
  const now = await middleOf(bench);
  expect(Math.abs(at.x + 40 - now.x)).toBeLessThan(12);
  await page.getByRole("button", { name: /^Undo/ }).tap();
  await until(label, (text) => text === first, "one drag is one step");
  await settled(page);
  expect(await middleOf(bench), "the drawing stays where it was under the hand").toEqual(at);

  await swipe(page, [at], [{ x: at.x, y: at.y - 250 }]);
  const farSide = async (): Promise<number> => {
    const [, across, deep] = /across (\d+) mm, \d+ mm by (\d+) mm/.exec((await label())!)!;
    return Number(across) + Number(deep);
  };
  await until(farSide, (to) => to === FLOOR_WIDTH, "the bench follows the finger to the wall, and not off the floor");
  await page.getByRole("button", { name: /^Undo/ }).tap();
  await until(label, (text) => text === first, "back again");

  const width = async (): Promise<number> => (await bench.boundingBox())!.width;
  const small = await width();
  const floor = await middleOf(thing(page, "P1"));
  await swipe(page, [{ x: floor.x - 30, y: floor.y }, { x: floor.x + 30, y: floor.y }], [{ x: floor.x - 90, y: floor.y }, { x: floor.x + 90, y: floor.y }]);
  await until(width, (large) => large > 1.5 * small, "two fingers zoom");
  expect(await label()).toBe(first);
});

test("on a phone a finger moves the paper, never a thing", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "By thumb");
  const page = await window(`/jobs/${id}`, { viewport: { width: 390, height: 844 }, hasTouch: true });
  await settled(page);
  const bench = thing(page, "BN2");
  const first = await bench.getAttribute("aria-label");
  const at = await middleOf(bench);
  await swipe(page, [at], [{ x: at.x - 60, y: at.y + 30 }]);
  await until(async () => (await middleOf(bench)).x, (x) => Math.abs(x - (at.x - 60)) < 3, "the paper follows the finger");
  expect(await bench.getAttribute("aria-label")).toBe(first);
  await page.getByRole("status").filter({ hasText: /^Revision 1, saved$/ }).waitFor();
});

/** Letters alone: a line that breaks, and a sign set high, are still the same text. */
function bare(text: string): string {
  return text.normalize("NFKC").replace(/\s/g, "");
}

test("on paper stand the head, the four numbers, the whole box and every finding, without what is pressed", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "On paper");
  for (const width of [1440, 1024, 390]) {
    const page = await window(`/jobs/${id}`, { viewport: { width, height: 800 }, theme: "dark" });
    await settled(page);
    const says = await (await side(page, "Findings")).locator(".finding-head > span:last-child").evaluateAll((all) => all.map(({ lastChild }) => lastChild?.textContent ?? ""));
    await side(page, "Findings", false);
    const { pages } = await readPdf(await page.pdf({ preferCSSPageSize: true }));
    const [first, ...others] = pages.map(({ text }) => text);
    for (const word of ["On paper", "Revision 1", "revision A", "2026-09-14", "Stops", "Delivery", "Left wall", "Door end"]) expect(first, `${width} px`).toContain(word);
    expect(pages[0]!.width).toBeGreaterThan(pages[0]!.height);
    const rest = others.join(" ");
    expect(says.length).toBeGreaterThan(5);
    for (const one of says) expect(bare(rest), `${width} px`).toContain(bare(one));
    for (const text of ["passes", "On paper · revision A, 2026-09-14"]) expect(rest).toContain(text);
    for (const chrome of ["Undo", "Save", "Whole box", "Three dimensions", "Search everything"]) expect(`${String(first)} ${rest}`).not.toContain(chrome);
    await page.emulateMedia({ media: "print" });
    expect(await page.evaluate(() => getComputedStyle(document.documentElement).getPropertyValue("--paper").trim())).toMatch(/^#fff/);
    await page.context().close();
  }
});

test("a list of numbers that is open is printed whole in place of the window", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Plan on paper");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  await page.getByRole("region", { name: "The four numbers" }).getByRole("button", { name: /^Delivery/ }).click();
  const rows = await page.getByRole("dialog").getByRole("row").allInnerTexts();
  const { pages } = await readPdf(await page.pdf({ preferCSSPageSize: true }));
  const all = pages.map(({ text }) => text).join(" ");
  expect(all).toContain("Plan on paper");
  for (const row of rows) expect(all).toContain(row.split("\t")[0]!.trim());
  expect(all).not.toContain("Left wall");
});
