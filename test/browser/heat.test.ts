import type { Page } from "playwright-core";
import { expect } from "vitest";
import { readPdf } from "../readPdf.ts";
import { leave, settled, side, test, until } from "./app.ts";

/** Opens the view of heat once all checks have answered. */
async function openHeat(page: Page): Promise<void> {
  await settled(page);
  await page.getByRole("tab", { name: "Heat" }).click();
  await page.getByRole("application").waitFor();
}

/** What the canvas shows at a share of its width and height: red, green, blue and opacity. */
function pixel(page: Page, x: number, y: number): Promise<readonly number[]> {
  return page.locator("canvas").first().evaluate(
    (canvas, at) => {
      const { width, height } = canvas as HTMLCanvasElement;
      return [...(canvas as HTMLCanvasElement).getContext("2d")!.getImageData(Math.floor(at.x * width), Math.floor(at.y * height), 1, 1).data];
    },
    { x, y },
  );
}

test("a section is found, read at any point by keys, at any hour, and as a table", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Heat by key");
  // The test reads the canvas again and again.
  const page = await window(`/jobs/${id}`, { mayHear: /willReadFrequently/ });
  await openHeat(page);
  const list = page.getByRole("listbox", { name: "Sections" });

  // By the first letters, as in any list.
  await list.getByRole("option", { selected: true }).click();
  await page.keyboard.type("Left wall at a stud on an inner");
  await page.keyboard.press("Enter");
  await page.getByRole("heading", { name: "Left wall at a stud on an inner flat" }).waitFor();
  const probe = page.getByRole("application", { name: /^Temperatures in the left wall at a stud/ });
  await probe.focus();
  await page.keyboard.press("Home");
  const heard = page.getByRole("status").filter({ hasText: /across, .* up$/ });
  await until(() => heard.innerText(), (text) => /^\d+\.\d °C .*gypsum board/.test(text), "the coldest surface is told");
  const coldest = await heard.innerText();
  expect(await page.getByText(/^Coldest surface at the winter design hour/).innerText()).toContain(/^[\d.]+ °C/.exec(coldest)![0]);
  for (let step = 0; step < 8; step += 1) await page.keyboard.press("ArrowDown");
  await until(() => heard.innerText(), (text) => /^−?\d+\.\d °C .*foam.* W\/m²/.test(text), "foam, its temperature and its heat are told");
  await page.keyboard.press("Escape");
  await page.getByText(/^Point at the picture/).waitFor();

  // A warmer hour is another picture, and the table follows.
  const table = page.getByRole("table", { name: /^Materials in the picture/ });
  const foam = (): Promise<string> => table.getByRole("row", { name: /sprayed foam/ }).innerText();
  const [winter, cold] = [await foam(), await pixel(page, 0.5, 0.7)];
  await page.getByRole("radio", { name: "July, by its mean" }).click();
  await until(foam, (text) => text !== winter, "the table follows the hour");
  expect(await page.getByText(/^Coldest surface in July/).count()).toBe(1);
  await until(() => pixel(page, 0.5, 0.7), (colour) => colour.join() !== cold.join(), "the picture follows the hour");
  expect(await page.evaluate(() => document.activeElement?.getAttribute("aria-label"))).toBe("July, by its mean");

  // Feet and Fahrenheit.
  await page.getByRole("radio", { name: "Feet and inches" }).click();
  await until(foam, (text) => text.includes("°F") && text.includes("BTU"), "the table follows the units");

  // A number of the table marks its material.
  await table.getByRole("button", { name: /mark closed-cell sprayed foam/ }).click();
  expect(await page.locator(".h-outline.is-marked").count()).toBeGreaterThan(0);
});

test("a finding leads to its section, the section to its finding, and every number to its working", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Heat found");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  const findings = page.getByRole("complementary", { name: "Findings" });
  await findings.getByRole("button", { name: /^stop: .*edge of blind end and floor/ }).click();
  await findings.getByRole("button", { name: "Show the section" }).click();
  await page.getByRole("heading", { name: "Edge of blind end and floor" }).waitFor();
  const here = page.getByRole("region", { name: "Findings at this section" });
  await here.getByRole("button", { name: /^stop: / }).click();
  await findings.getByRole("region", { name: "Worked out" }).waitFor();

  await page.getByRole("option", { name: /^The whole box/ }).click();
  const faces = page.getByRole("table", { name: "Faces", exact: true });
  await faces.getByRole("button", { name: /show the working of the left wall with what bridges it/ }).click();
  const working = page.getByRole("dialog", { name: "Working: the left wall with what bridges it" });
  await working.getByRole("region", { name: "Worked out" }).waitFor();
  expect(await working.innerText()).toContain("sum(psi_bar * L_bar)");
  await leave(page, "Working: the left wall with what bridges it");
  const edges = page.getByRole("table", { name: /^Edges/ });
  await edges.getByRole("button", { name: /show the working of edge of left wall and roof/ }).click();
  await page.getByRole("dialog").getByRole("region", { name: "Worked out" }).waitFor();
  await leave(page, "Working: edge of left wall and roof");
  const numbers = await page.getByRole("region", { name: "Heat" }).locator("td.is-number").allInnerTexts();
  expect(numbers.length).toBeGreaterThan(40);
  expect(numbers.filter((text) => /NaN|Infinity|undefined/.test(text))).toEqual([]);
  expect(await page.getByRole("region", { name: "Heat" }).locator("td.is-number:not(:has(button))").count()).toBe(0);
  await edges.getByRole("button", { name: "Edge of left wall and roof", exact: true }).click();
  await page.getByRole("heading", { name: "Edge of left wall and roof" }).waitFor();
});

test("what the slow checks found stays, greyed, until they have answered again", async ({ app, window }) => {
  const id = await app.jobFrom("snow-laboratory", "Heat in change");
  const page = await window(`/jobs/${id}`);
  await settled(page);
  const findings = page.getByRole("complementary", { name: "Findings" });
  const box = page.getByRole("complementary", { name: "In the box" });
  await box.getByRole("button", { name: /^D1 / }).first().click();
  const along = box.getByRole("textbox", { name: "Along" });
  await along.fill("1500 mm");
  // Seen as it happens: greyed findings, and what stands among them.
  await page.evaluate(() => {
    const seen = { greyed: 0 };
    Object.assign(globalThis, { seen });
    new MutationObserver(() => (seen.greyed = Math.max(seen.greyed, document.querySelectorAll(".finding.is-stale").length))).observe(document.body, { subtree: true, attributes: true });
  });
  await along.press("Enter");
  await settled(page);
  expect(await page.evaluate(() => (globalThis as unknown as { seen: { greyed: number } }).seen.greyed)).toBeGreaterThan(0);
  expect(await findings.locator(".is-stale").count()).toBe(0);
});

test("on a phone a finger reads the picture, and a finding brings its section in front", async ({ app, window }) => {
  const id = await app.jobFrom("trail-crew-bunk-room", "Heat by thumb");
  const page = await window(`/jobs/${id}`, { viewport: { width: 390, height: 844 }, hasTouch: true });
  await settled(page);
  const findings = await side(page, "Findings");
  await findings.getByRole("button", { name: /left wall at a stud/ }).first().tap();
  await findings.getByRole("button", { name: "Show the section" }).tap();
  const probe = page.getByRole("application", { name: /left wall/ });
  await probe.scrollIntoViewIfNeeded();
  const at = (await probe.boundingBox())!;
  await page.touchscreen.tap(at.x + at.width / 2, at.y + at.height / 2);
  await page.getByText(/^−?\d+\.\d °C .* up$/).waitFor();
  const { wide, room } = await page.evaluate(() => ({ wide: document.documentElement.scrollWidth, room: document.documentElement.clientWidth }));
  expect(wide).toBeLessThanOrEqual(room);
  await page.getByRole("button", { name: /Section$/ }).tap();
  await page.getByRole("option", { name: "The whole box" }).tap();
  await page.getByRole("table", { name: "Faces", exact: true }).waitFor();
});

test("a picture is printed in the light colours whatever the theme, without what is pressed", async ({ app, window }) => {
  const id = await app.jobFrom("trail-crew-bunk-room", "Heat on paper");
  const page = await window(`/jobs/${id}`, { theme: "dark", mayHear: /willReadFrequently/ });
  await openHeat(page);
  await until(() => pixel(page, 0.05, 0.9), (colour) => colour[3] === 255 || colour[3] === 0, "the picture is painted");
  const colours = (): Promise<string> =>
    page.locator("canvas").first().evaluate((canvas) => {
      const { width, height } = canvas as HTMLCanvasElement;
      const { data } = (canvas as HTMLCanvasElement).getContext("2d")!.getImageData(0, 0, width, height);
      const sum = [0, 0];
      for (let k = 0; k < data.length; k += 4) if (data[k + 3] === 255) [sum[0], sum[1]] = [sum[0]! + 1, sum[1]! + data[k]! + data[k + 1]! + data[k + 2]!];
      return (sum[1]! / sum[0]!).toFixed(0);
    });
  const dark = Number(await colours());
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  await until(async () => Number(await colours()), (light) => light > dark + 150, "the picture is in light colours while it is printed");
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await until(async () => Number(await colours()), (again) => again === dark, "the picture is dark again");
  const text = (await readPdf(await page.pdf({ preferCSSPageSize: true }))).pages.map((one) => one.text).join(" ");
  expect(text).toContain("Materials in the picture");
  for (const chrome of ["Design hour", "Edges of the box"]) expect(text).not.toContain(chrome);
});
