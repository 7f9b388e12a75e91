import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright-core";
import type { Browser, BrowserContext, BrowserContextOptions, Locator, Page } from "playwright-core";
import { expect, inject, test as base } from "vitest";

const ROOT = join(import.meta.dirname, "../..");
/** Longest that a state is waited for. A shared machine is slow; a state that never comes fails all the same. */
const PATIENCE = 30_000;

/** One server for the file, on a free port, with a folder that is thrown away. */
export interface App {
  readonly address: string;
  /** Puts a job into the list that starts as an example, and gives its id. */
  readonly jobFrom: (example: string, title: string, change?: (file: JobText) => void) => Promise<string>;
  /** Saves a revision of a job without any browser, made from another revision. */
  readonly saveElsewhere: (job: string, base: number, who: string, change: (file: JobText) => void) => Promise<void>;
  /** The same with a text that need be no job file. */
  readonly saveText: (job: string, base: number, who: string, text: string) => Promise<void>;
  /** Has a pack made of a revision without any browser. */
  readonly makePack: (job: string, number: number) => Promise<string>;
  readonly saveBook: (text: string) => Promise<void>;
  readonly revision: (job: string, number: number) => Promise<Revision>;
}

/** A job file as the tests change it before it is put into the list. */
export interface JobText {
  readonly job: { id: string; title: string };
  notes?: string[];
  readonly prices: { book: string };
  readonly openings: { readonly id: string; what?: string; readonly at: { along: string; up: string } }[];
  readonly items: { readonly id: string; what: string; mass: string }[];
}

export interface Revision {
  readonly file: string;
  readonly parent: number | null;
  readonly who: string;
  readonly why: string;
}

interface Person extends BrowserContextOptions {
  /** Who is written as the one who saves. */
  readonly who?: string;
  readonly theme?: "light" | "dark";
  /** What the browser itself may say on the console in this test. */
  readonly mayHear?: RegExp;
}

interface Given {
  readonly app: App;
  readonly browser: Browser;
  /** A window of a new person at an address. When the test ends, nothing may have been said on any console. */
  readonly window: (path: string, person?: Person) => Promise<Page>;
}

export const test = base.extend<Given>({
  app: [
    async ({}, use) => {
      const folder = mkdtempSync(join(tmpdir(), "cornerpost-browser-"));
      const server = spawn(process.execPath, ["--import", "tsx", "src/server/main.ts", "--folder", folder, "--port", "0"], {
        cwd: ROOT,
        env: { ...process.env, DATABASE_URL: undefined },
        stdio: ["ignore", "pipe", "inherit"],
      });
      const ended = new Promise((resolve) => server.once("exit", resolve));
      const address = await told(server.stdout, /Cornerpost is at (\S+)/);
      await use(appAt(address.replace(/\/$/, "")));
      server.kill("SIGTERM");
      await ended;
      rmSync(folder, { recursive: true, force: true });
    },
    { scope: "file" },
  ],
  browser: [
    async ({}, use) => {
      const libraries = inject("libraries");
      // Drawn without a graphics card: faces by the browser itself, three dimensions by its own stand-in for one.
      const browser = await chromium.launch({
        executablePath: inject("chromium"),
        args: ["--no-sandbox", "--font-render-hinting=none", "--disable-gpu-rasterization", "--use-gl=angle", "--use-angle=swiftshader", "--enable-unsafe-swiftshader"],
        env: { ...process.env, ...(libraries === "" ? {} : { LD_LIBRARY_PATH: libraries }) },
      });
      await use(browser);
      await browser.close();
    },
    { scope: "file" },
  ],
  window: async ({ app, browser, task }, use) => {
    const heard: string[] = [];
    const contexts: BrowserContext[] = [];
    await use(async (path, { who = "Ada", theme, mayHear, ...options } = {}) => {
      const kept = JSON.stringify({ who, ...(theme === undefined ? {} : { theme }) });
      const context = await browser.newContext({
        baseURL: app.address,
        locale: "en-US",
        viewport: { width: 1440, height: 900 },
        reducedMotion: "reduce",
        storageState: { cookies: [], origins: [{ origin: app.address, localStorage: [{ name: "cornerpost-settings", value: kept }] }] },
        ...options,
      });
      contexts.push(context);
      context.setDefaultTimeout(PATIENCE);
      context.on("console", (message) => {
        const text = message.text();
        if (mayHear?.test(text) !== true) heard.push(`${message.type()}: ${text}`);
      });
      context.on("weberror", (error) => heard.push(`error: ${String(error.error())}`));
      context.on("dialog", (dialog) => {
        heard.push(`dialog: ${dialog.message()}`);
        void dialog.dismiss();
      });
      const page = await context.newPage();
      await page.goto(path);
      return page;
    });
    if (task.result?.state === "fail") await picture(task.name, contexts);
    await Promise.all(contexts.map((context) => context.close()));
    expect(heard, "what the browser said on its console").toEqual([]);
  },
});

/** What a test that failed saw last, in out/browser. */
async function picture(test: string, contexts: readonly BrowserContext[]): Promise<void> {
  const name = test.replace(/[^a-z0-9]+/gi, "-");
  const pages = contexts.flatMap((context) => context.pages());
  await Promise.all(pages.map((page, index) => page.screenshot({ path: join(ROOT, "out/browser", `${name}-${index + 1}.png`) })));
}

function appAt(address: string): App {
  const ask = async (path: string, body?: unknown): Promise<unknown> => {
    const sent = body === undefined ? {} : { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
    const answer = await fetch(`${address}${path}`, sent);
    expect(answer.ok, `${path} answers ${answer.status}`).toBe(true);
    return answer.json();
  };
  const revision = (job: string, number: number): Promise<Revision> => ask(`/api/jobs/${job}/revisions/${number}`) as Promise<Revision>;
  const save = async (job: string, base: number, who: string, file: string): Promise<void> => {
    const { saved } = (await ask(`/api/jobs/${job}/revisions`, { base, file, who, why: "" })) as { readonly saved: boolean };
    expect(saved, "nobody saved first").toBe(true);
  };
  return {
    address,
    revision,
    saveBook: async (text) => {
      await ask("/api/import", { files: [{ name: "book", file: text }], who: "Test", why: "" });
    },
    saveElsewhere: async (job, base, who, change) => {
      const file = JSON.parse((await revision(job, base)).file) as JobText;
      change(file);
      await save(job, base, who, JSON.stringify(file, null, 2));
    },
    saveText: save,
    makePack: async (job, number) => ((await ask(`/api/jobs/${job}/revisions/${number}/pack`, {})) as { readonly id: string }).id,
    jobFrom: async (example, title, change) => {
      const file = JSON.parse(readFileSync(join(ROOT, "examples", `${example}.job.json`), "utf8")) as JobText;
      file.job.title = title;
      change?.(file);
      const made = (await ask("/api/jobs", { file: JSON.stringify(file, null, 2), who: "Test", why: "" })) as { readonly job: string };
      return made.job;
    },
  };
}

/** What a program says about itself on a line that matches. */
function told(output: NodeJS.ReadableStream, line: RegExp): Promise<string> {
  return new Promise((resolve, reject) => {
    let text = "";
    output.on("data", (part: Buffer) => {
      text += part.toString("utf8");
      const found = line.exec(text)?.[1];
      if (found !== undefined) resolve(found);
    });
    output.on("end", () => reject(new Error(`the server ended early: ${text}`)));
  });
}

/** Resolves when the last answer is that of the file as it stands. */
export async function settled(page: Page): Promise<void> {
  await page.locator('section[aria-label="The four numbers"][aria-busy="false"]').waitFor();
}

/** The four numbers as they are read, with what changed. */
export async function numbers(page: Page): Promise<readonly string[]> {
  return page.getByRole("region", { name: "The four numbers" }).getByRole("button").allInnerTexts();
}

/** An opening, item or partition on the unfolded box. */
export function thing(page: Page, id: string): Locator {
  return page.getByRole("region", { name: "Unfolded" }).locator(`[data-hit="thing"][data-id="${id}"]`);
}

/** The bar with the place and size of what is picked. */
export function picked(page: Page, id: string): Locator {
  return page.getByRole("group", { name: new RegExp(`^${id}, `) }).filter({ has: page.getByRole("textbox") });
}

/** Middle of what is drawn, in the window. */
export async function middleOf(locator: Locator): Promise<{ readonly x: number; readonly y: number }> {
  const box = await locator.boundingBox();
  if (box === null) throw new Error("nothing is drawn there");
  return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
}

/** Chooses from a list by its label. */
export async function choose(page: Page, within: Page | Locator, label: string, option: string | RegExp): Promise<void> {
  await within.getByRole("button", { name: label }).click();
  await page.getByRole("option", { name: option }).click();
}

/** Leaves a dialog by its key, once the focus is in it: a dialog that closes above it gives the focus back a frame later. */
export async function leave(page: Page, name: string): Promise<void> {
  const dialog = page.getByRole("dialog", { name, exact: true });
  await until(() => dialog.evaluate((element) => element.contains(document.activeElement)), Boolean, `the focus is in the dialog ${name}`);
  await page.keyboard.press("Escape");
  await dialog.waitFor({ state: "detached" });
}

/** Resolves when asking gives what is wanted. */
export async function until<T>(ask: () => Promise<T>, wanted: (value: T) => boolean, what: string): Promise<void> {
  await expect.poll(async () => wanted(await ask()), { timeout: PATIENCE, message: what }).toBe(true);
}

/** Shows a side of the job where it does not stand beside the views; `false` puts its drawer away. */
export async function side(page: Page, name: "In the box" | "Findings", shown = true): Promise<Locator> {
  const aside = page.getByRole("complementary", { name });
  if ((await aside.isVisible()) !== shown) {
    const narrow = (page.viewportSize()?.width ?? Infinity) < 700;
    if (narrow) await page.getByRole("radio", { name: shown ? name : "Views", exact: true }).click();
    else if (await page.getByRole("button", { name, exact: true }).isVisible()) await page.getByRole("button", { name, exact: true }).click();
  }
  return aside;
}
