import type { Page } from "playwright-core";
import { expect } from "vitest";
import { choose, picked, settled, test, thing, until } from "./app.ts";
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

test("mine that is dropped for theirs comes back by undo, and so does what stood before their save", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Dropped");
  const page = await window(`/jobs/${job}`, { who: "Ada" });
  await settled(page);
  const label = (): Promise<string | null> => thing(page, "W1").getAttribute("aria-label");
  const shows = (along: string): Promise<void> => until(label, (text) => text!.includes(`along ${along}`), `the window is at ${along}`);
  const elsewhere = (base: number, along: string): Promise<void> =>
    app.saveElsewhere(job, base, "Grace", ({ openings }) => {
      openings.find(({ id }) => id === "W1")!.at.along = along;
    });
  await moveTo(page, "W1", "4700 mm");
  await elsewhere(1, "4500 mm");
  await page.getByText(/Grace saved revision 2 meanwhile/).waitFor();
  await save(page, "Mine");
  await page.getByRole("dialog", { name: "Grace saved first" }).getByRole("button", { name: "Take theirs, drop mine" }).click();
  await stands(page, "Revision 2, saved");
  await shows("4500 mm");
  await page.getByRole("button", { name: "Undo revision 2 by Grace" }).click();
  await stands(page, "Revision 2, changed since");
  await shows("4700 mm");
  await page.getByRole("button", { name: "Redo revision 2 by Grace" }).click();
  await stands(page, "Revision 2, saved");

  // Nothing is changed here, so the next one is taken at once; the past is still there.
  await elsewhere(2, "4550 mm");
  await stands(page, "Revision 3, saved");
  await shows("4550 mm");
  for (const along of ["4500 mm", "4700 mm", "4600 mm"]) {
    await page.getByRole("button", { name: /^Undo / }).click();
    await shows(along);
  }
});

test("nothing changed is nothing to save, and an earlier revision is brought back as a change", async ({ app, window }) => {
  const job = await app.jobFrom("snow-laboratory", "Brought back");
  const page = await window(`/jobs/${job}`);
  await settled(page);
  await moveTo(page, "W1", "4500 mm");
  await stands(page, "Revision 1, changed since");
  await moveTo(page, "W1", "4600 mm");
  await stands(page, "Revision 1, saved");
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await saving.getByText("Nothing is changed since revision 1").waitFor();
  expect(await saving.getByRole("button", { name: "Save", exact: true }).isDisabled()).toBe(true);
  await saving.getByRole("button", { name: "Do not save" }).click();

  await moveTo(page, "W1", "4500 mm");
  await save(page, "Over the sink");
  await stands(page, "Revision 2, saved");
  await page.getByRole("tab", { name: "Compare" }).click();
  await choose(page, page, "Before: revision", /^Revision 1/);
  await page.getByRole("button", { name: "Go back to revision 1" }).click();
  await page.getByText("The job stands as it was in revision 1.").waitFor();
  await stands(page, "Revision 2, changed since");
  await save(page, "As it was");
  await stands(page, "Revision 3, saved");
  expect(await kept(app, job, 3)).toMatchObject({ parent: 2, along: { W1: "4600 mm" } });
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
