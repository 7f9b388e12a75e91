import type { Page } from "playwright-core";
import { expect } from "vitest";
import { settled, test, thing, until } from "./app.ts";

const FAILED = /net::ERR_FAILED|Failed to fetch dynamically imported module|Unable to preload/;
const DOWN = "No connection to the server";

async function nudge(page: Page): Promise<void> {
  await thing(page, "W1").focus();
  await page.keyboard.press("Enter");
  await page.keyboard.press("ArrowRight");
  await stands(page, "Revision 1, changed since");
}

function stands(page: Page, status: string): Promise<void> {
  return page.getByRole("status").filter({ hasText: status }).waitFor();
}

test("a view that cannot be fetched says so, keeps what was changed, and comes by trying again", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "View that fails");
  const page = await window("/", { mayHear: FAILED });
  await page.route(/\/assets\/Solid/, (route) => route.abort());
  await page.goto(`/jobs/${job}`);
  await settled(page);
  await nudge(page);
  await page.getByRole("tab", { name: "Three dimensions" }).click();
  const told = page.getByRole("alert").filter({ hasText: "The view in three dimensions could not be shown." });
  await told.waitFor();
  await stands(page, "Revision 1, changed since");
  await page.unroute(/\/assets\/Solid/);
  await told.getByRole("button", { name: "Try again" }).click();
  const section = page.getByRole("combobox", { name: "Section" });
  await section.waitFor();
  expect(await page.locator(".solid").first().evaluate((element) => getComputedStyle(element).display), "with its own style").toBe("flex");
  await page.getByRole("button", { name: "Undo Move W1" }).click();
  await stands(page, "Revision 1, saved");
});

test("the view in three dimensions is there when the server no longer is", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Fetched ahead");
  const page = await window("/", { mayHear: /net::ERR/ });
  const ahead = page.waitForResponse(/\/assets\/Solid[^/]*\.js$/);
  await page.goto(`/jobs/${job}`);
  await (await ahead).finished();
  await settled(page);
  await page.context().setOffline(true);
  await page.getByRole("tab", { name: "Three dimensions" }).click();
  await page.getByRole("combobox", { name: "Section" }).waitFor();
});

test("a window that is cut off says so until it is not", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Cut off");
  const page = await window("/", { mayHear: /net::ERR/ });
  expect(await page.getByText(DOWN).count()).toBe(0);
  await page.route("**/api/live", (route) => route.abort());
  await page.goto(`/jobs/${job}`);
  await page.getByText(DOWN).waitFor();
  await settled(page);
  await page.unroute("**/api/live");
  await page.getByText(DOWN).waitFor({ state: "detached" });
});

test("a worker that cannot be fetched is told, and started anew by trying again", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "No worker");
  const page = await window("/", { mayHear: /net::ERR/ });
  await page.route(/\/assets\/river\.worker/, (route) => route.abort());
  await page.goto(`/jobs/${job}`);
  const told = page.getByRole("alert").filter({ hasText: "Could not compute." });
  await told.waitFor();
  await page.unroute(/\/assets\/river\.worker/);
  await told.getByRole("button", { name: "Try again" }).click();
  await settled(page);
  await thing(page, "W1").waitFor();
  expect(await told.count()).toBe(0);
});

test("a pack is followed through a question that fails, and is over where the server knows of none", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Pack through a break");
  const page = await window(`/jobs/${job}`, { mayHear: /net::ERR_FAILED|status of 404/ });
  await settled(page);
  await page.getByRole("tab", { name: "Papers" }).click();
  const state = { asked: 0 };
  await page.route(/\/api\/packs\/[^/]+$/, (route) => {
    state.asked += 1;
    return state.asked <= 2 ? route.abort() : route.continue();
  });
  const make = page.getByRole("button", { name: "Make the pack of revision 1" });
  await make.click();
  await page.getByRole("alert").filter({ hasText: "asking again" }).waitFor();
  await page.getByRole("link", { name: "Download the pack of revision 1" }).waitFor({ timeout: 120_000 });
  expect(await page.getByRole("alert").count()).toBe(0);

  await page.route(/\/api\/packs\/[^/]+$/, (route) => route.continue({ url: `${app.address}/api/packs/none` }));
  await make.click();
  await page.getByText("The pack of revision 1 could not be made: the server was started anew meanwhile; ask for it once more.").waitFor();
  await until(() => make.isEnabled(), Boolean, "it can be asked for once more");
});
