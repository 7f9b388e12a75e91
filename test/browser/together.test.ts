import type { Page } from "playwright-core";
import { expect } from "vitest";
import { picked, settled, test, thing, until } from "./app.ts";
import type { App, JobText, Revision } from "./app.ts";

async function moveTo(page: Page, id: string, along: string): Promise<void> {
  await thing(page, id).focus();
  await page.keyboard.press("Enter");
  const field = picked(page, id).getByRole("textbox", { name: "Along" });
  await field.fill(along);
  await field.press("Enter");
  await settled(page);
}

async function save(page: Page, why: string): Promise<void> {
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await saving.getByRole("textbox", { name: "Why" }).fill(why);
  await saving.getByRole("button", { name: "Save", exact: true }).click();
}

function stands(page: Page, status: string): Promise<void> {
  return page.getByRole("status").filter({ hasText: status }).waitFor();
}

/** A revision as the server keeps it, with where its openings are. */
async function kept(app: App, job: string, number: number): Promise<Revision & { readonly along: Readonly<Record<string, string>> }> {
  const revision = await app.revision(job, number);
  const { openings } = JSON.parse(revision.file) as JobText;
  return { ...revision, along: Object.fromEntries(openings.map(({ id, at }) => [id, at.along])) };
}

test("both see each other's saves", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Seen by two");
  const ada = await window(`/jobs/${job}`, { who: "Ada" });
  const grace = await window(`/jobs/${job}`, { who: "Grace" });
  await Promise.all([settled(ada), settled(grace)]);

  // Nothing is changed at Grace's: she is shown what Ada saved.
  await moveTo(ada, "W1", "4500 mm");
  await save(ada, "Over the sink");
  await stands(ada, "Revision 2, saved");
  await stands(grace, "Revision 2, saved");
  await until(() => thing(grace, "W1").getAttribute("aria-label"), (label) => label!.includes("along 4500 mm"), "Grace sees the window moved");

  // Something is changed at Ada's: she is told, and keeps her change.
  await moveTo(ada, "W1", "4400 mm");
  await moveTo(grace, "W2", "7200 mm");
  await save(grace, "Over the slab");
  await ada.getByText(/Grace saved revision 3 meanwhile/).waitFor();
  await stands(ada, "Revision 2, changed since");
  expect(await thing(ada, "W1").getAttribute("aria-label")).toContain("along 4400 mm");
});

test("different fields are merged, and nothing is lost", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Merged");
  const ada = await window(`/jobs/${job}`, { who: "Ada" });
  const grace = await window(`/jobs/${job}`, { who: "Grace" });
  await Promise.all([settled(ada), settled(grace)]);
  await moveTo(grace, "W2", "7200 mm");
  await moveTo(ada, "W1", "4500 mm");
  await save(ada, "Over the sink");
  await stands(ada, "Revision 2, saved");
  await save(grace, "Over the slab");
  const conflict = grace.getByRole("dialog", { name: "Ada saved first" });
  await conflict.getByText("No field was changed by both").waitFor();
  await conflict.getByRole("row", { name: /W1 › Place › Along 4600 mm 4500 mm/ }).waitFor();
  await conflict.getByRole("button", { name: "Keep both and save" }).click();
  await stands(grace, "Revision 3, saved");
  await stands(ada, "Revision 3, saved");

  expect(await kept(app, job, 2)).toMatchObject({ who: "Ada", parent: 1, along: { W1: "4500 mm", W2: "7300 mm" } });
  expect(await kept(app, job, 3)).toMatchObject({ who: "Grace", parent: 2, why: "Over the slab", along: { W1: "4500 mm", W2: "7200 mm" } });
  await until(() => thing(ada, "W2").getAttribute("aria-label"), (label) => label!.includes("along 7200 mm"), "Ada sees both");
});

test("the same field is chosen by a person, and both values stay in the history", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Chosen");
  const ada = await window(`/jobs/${job}`, { who: "Ada" });
  const grace = await window(`/jobs/${job}`, { who: "Grace" });
  await Promise.all([settled(ada), settled(grace)]);
  await moveTo(grace, "W1", "4700 mm");
  await moveTo(grace, "W2", "7200 mm");
  await moveTo(ada, "W1", "4500 mm");
  await save(ada, "Over the sink");
  await stands(ada, "Revision 2, saved");
  await save(grace, "Clear of the shelf");
  const conflict = grace.getByRole("dialog", { name: "Ada saved first" });
  const both = conflict.getByRole("radiogroup", { name: /W1 › Place › Along/ });
  await both.waitFor();
  expect(await conflict.getByRole("radiogroup").count(), "only what both changed is asked").toBe(1);
  expect(await conflict.getByRole("button", { name: "Keep both and save" }).isDisabled(), "no save before a choice").toBe(true);
  await both.getByText("Theirs:").click();
  await conflict.getByRole("button", { name: "Keep both and save" }).click();
  await stands(grace, "Revision 3, saved");
  expect(await kept(app, job, 3)).toMatchObject({ who: "Grace", parent: 2, along: { W1: "4500 mm", W2: "7200 mm" } });

  // Once more, and this time Ada's own goes over Grace's.
  await stands(ada, "Revision 3, saved");
  await moveTo(ada, "W1", "4550 mm");
  await moveTo(grace, "W1", "4650 mm");
  await save(ada, "Half way");
  await stands(ada, "Revision 4, saved");
  await save(grace, "Mine");
  await grace.getByRole("dialog", { name: "Ada saved first" }).getByRole("button", { name: "Save mine over theirs" }).click();
  await stands(grace, "Revision 5, saved");
  expect((await kept(app, job, 4)).along["W1"]).toBe("4550 mm");
  expect((await kept(app, job, 5)).along["W1"]).toBe("4650 mm");
});

/** As when another tab is put before this one, and when it is put away again. */
function show(page: Page, shown: boolean): Promise<void> {
  return page.evaluate((isShown) => {
    Object.defineProperty(document, "hidden", { configurable: true, get: () => !isShown });
    document.dispatchEvent(new Event("visibilitychange"));
  }, shown);
}

test("a window listens once while it is shown, and catches up with what it missed while it was not", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Looked away from");
  const page = await window(`/jobs/${job}`);
  await settled(page);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  const lives = (): number => asked.filter((path) => path === "/api/live").length;
  const away = (): Promise<unknown> => page.waitForEvent("requestfailed", (request) => request.url().endsWith("/api/live"));
  await page.reload();
  await settled(page);
  await page.getByRole("button", { name: "Jobs", exact: true }).click();
  await page.getByRole("region", { name: "Price books" }).getByRole("listitem").first().waitFor();
  expect(lives(), "the list hears over the window's own connection").toBe(1);

  await Promise.all([away(), show(page, false)]);
  await app.saveElsewhere(job, 1, "Grace", ({ openings }) => {
    openings.find(({ id }) => id === "W1")!.at.along = "4500 mm";
  });
  await show(page, true);
  await page.getByRole("row", { name: /Looked away from.*Grace/ }).waitFor();
  await page.getByRole("button", { name: "Back to the job" }).click();
  await stands(page, "Revision 2, saved");
  await until(() => thing(page, "W1").getAttribute("aria-label"), (label) => label!.includes("along 4500 mm"), "the window has moved");
  expect(lives()).toBe(2);
});
