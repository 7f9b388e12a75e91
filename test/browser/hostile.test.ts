import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { choose, leave, numbers, settled, side, test, until } from "./app.ts";
import type { App } from "./app.ts";

const IMAGE = "<img src=x onerror=alert(1)>";
const SCRIPT = "<script>alert(2)</script>";
const ODD = `"><svg onload=alert(3)> javascript:alert(4) \u202egnitirw sdrawkcab ${"مرحبا ".repeat(4)}{{7*7}} \${alert(5)}`;
const LONG = "W".repeat(990);
const HOSTILE = [IMAGE, SCRIPT, ODD] as const;

/** Holds that what is on the screen is text: nothing that hostile text asks for is there, and the text itself is. */
async function onlyText(page: Page, texts: readonly string[]): Promise<void> {
  const made = await page.evaluate(() =>
    [...document.querySelectorAll("img, iframe, object, embed, script:not([src]), [onload], [onerror], a[href^='javascript:']")].map((element) => element.outerHTML),
  );
  expect(made).toEqual([]);
  const shown = await page.evaluate(() => `${document.body.innerText} ${[...document.querySelectorAll("input, textarea")].map((field) => (field as HTMLInputElement).value).join(" ")}`);
  for (const text of texts) expect(shown.includes(text), `${text.slice(0, 60)} is shown as it was written`).toBe(true);
}

function hostileJob(app: App): Promise<string> {
  return app.jobFrom("snow-laboratory", IMAGE, (file) => {
    file.notes = [SCRIPT, ODD, LONG];
    file.openings.forEach((opening, index) => {
      opening.what = HOSTILE[index % HOSTILE.length]!;
    });
    file.items.forEach((item, index) => {
      item.what = HOSTILE[index % HOSTILE.length]!;
    });
  });
}

test("a hostile job shows as text on every screen", async ({ app, window }) => {
  const id = await hostileJob(app);
  const asked: string[] = [];
  const list = await window("/", { who: SCRIPT });
  await list.getByRole("button", { name: `Open ${IMAGE}` }).waitFor();
  await onlyText(list, [IMAGE]);

  const page = await window(`/jobs/${id}`, { who: SCRIPT });
  page.on("request", (request) => asked.push(new URL(request.url()).pathname));
  await settled(page);
  await onlyText(page, [IMAGE, SCRIPT]);
  const box = await side(page, "In the box");
  await box.getByRole("button", { name: /^Notes/ }).click();
  await box.getByRole("textbox", { name: "Notes 1" }).waitFor();
  await onlyText(page, [SCRIPT, LONG]);
  await box.getByRole("button", { name: "All in the box" }).click();
  await box.getByRole("button", { name: /^D1 / }).first().click();
  const what = box.getByRole("textbox", { name: "In words" });
  await what.fill(`${IMAGE} ${SCRIPT}`);
  await what.press("Enter");
  await settled(page);
  await onlyText(page, [`${IMAGE} ${SCRIPT}`]);
  await page.getByRole("searchbox", { name: "Search everything" }).fill("onerror");
  await page.getByText(/\d+ found/).waitFor();
  await onlyText(page, [IMAGE]);

  await page.getByRole("tab", { name: "Three dimensions" }).click();
  await page.getByRole("combobox", { name: "Section" }).waitFor();
  await onlyText(page, []);
  await page.getByRole("tab", { name: "Compare" }).click();
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await page.getByRole("table", { name: "Fields of the job file" }).waitFor();
  await onlyText(page, [`${IMAGE} ${SCRIPT}`]);
  const first = box.getByRole("button", { name: "All in the box" });
  await first.click();
  await box.getByRole("button", { name: /^Notes/ }).click();
  await box.getByRole("textbox", { name: "Notes 1" }).fill(`${SCRIPT} ${LONG}`);
  await box.getByRole("textbox", { name: "Notes 1" }).press("Tab");
  await settled(page);
  await page.getByRole("button", { name: "Save", exact: true }).click();
  const saving = page.getByRole("dialog", { name: "Save a revision" });
  await saving.getByRole("textbox", { name: "Why" }).fill(IMAGE);
  await onlyText(page, [SCRIPT, `${IMAGE} ${SCRIPT}`]);
  const note = saving.getByRole("cell").filter({ hasText: "WWW" });
  expect((await note.innerText()).length, "a long value is cut").toBeLessThan(200);
  await saving.getByRole("button", { name: "Show all of Notes › 1 after" }).click();
  await until(() => note.innerText(), (text) => text.includes(`${SCRIPT} ${LONG}`), "and shown whole when asked");
  await saving.getByRole("button", { name: "Save", exact: true }).click();
  await page.getByRole("status").filter({ hasText: "Revision 2, saved" }).waitFor();
  // The other window hears of the save by a hostile name, for a hostile reason.
  await until(() => list.getByRole("table").innerText(), (text) => text.includes(SCRIPT) && text.includes(IMAGE), "the list tells who saved, and why");
  await onlyText(list, [SCRIPT, IMAGE]);
  expect(asked.filter((path) => !path.startsWith("/api/") && !path.startsWith("/assets/"))).toEqual([]);
});

test("hostile files that are imported show as text", async ({ window }) => {
  const page = await window("/");
  const broken = JSON.stringify({ format: "cornerpost-job", version: 1, [IMAGE]: SCRIPT, job: { id: IMAGE, title: ODD.slice(0, 190) }, units: SCRIPT });
  const book = readFileSync("examples/price-books/demo-shop-usd.price-book.json", "utf8")
    .replace('"id": "demo-shop-usd"', '"id": "hostile-book"')
    .replaceAll('"supplierGroup": "box depot"', `"supplierGroup": ${JSON.stringify(IMAGE)}`)
    .replace(/"what": "Demo shop[^"]*"/, `"what": ${JSON.stringify(SCRIPT)}`);
  const files = [
    { name: `${IMAGE}.json`, text: broken },
    { name: `\u202enosj.json`, text: `{"format": "${SCRIPT.replace("/", "\\/")}"` },
    { name: "../../../etc/passwd", text: JSON.stringify({ format: "cornerpost-price-book", version: 1, id: IMAGE, [SCRIPT]: IMAGE }) },
    { name: "book.json", text: book },
  ];
  const [chooser] = await Promise.all([page.waitForEvent("filechooser"), page.getByRole("button", { name: "Choose files to import" }).click()]);
  await chooser.setFiles(files.map(({ name, text }) => ({ name: name.replaceAll("/", "∕"), mimeType: "application/json", buffer: Buffer.from(text) })));
  const became = page.getByRole("region", { name: "Import" }).getByRole("status");
  await until(() => became.innerText(), (text) => text.includes("became revision 1 of the price book hostile-book"), "the book is taken");
  await onlyText(page, [IMAGE, SCRIPT]);
  expect(await became.innerText()).toContain(`${IMAGE}.json became a job that cannot be read yet`);
  const refused = became.getByRole("listitem").filter({ hasText: "passwd is a price book, and one with issues is not taken" });
  await refused.getByRole("listitem").filter({ hasText: "currency is missing" }).waitFor();
  await page.getByRole("region", { name: "Price books" }).getByText("hostile-book").waitFor();

  // The draft opens: its issues are told as text, and there is no build.
  await page.getByRole("button", { name: /^Open "><svg/ }).click();
  await page.getByRole("alert").filter({ hasText: /places in the job/ }).waitFor();
  await onlyText(page, [IMAGE]);
});

test("a job priced from a hostile book shows its words as text", async ({ app, window }) => {
  const text = readFileSync("examples/price-books/demo-shop-usd.price-book.json", "utf8");
  await app.saveBook(text.replace('"id": "demo-shop-usd"', '"id": "words-book"').replaceAll('"supplierGroup": "box depot"', `"supplierGroup": ${JSON.stringify(IMAGE)}`));
  const id = await app.jobFrom("snow-laboratory", "Hostile prices", (file) => {
    file.prices.book = "words-book";
  });
  const page = await window(`/jobs/${id}`);
  await settled(page);
  expect((await numbers(page))[2]).toMatch(/USD/);
  const four = page.getByRole("region", { name: "The four numbers" });
  for (const [name, dialog] of [["Price", "Price"], ["Delivery", "Shop plan to delivery"]] as const) {
    await four.getByRole("button", { name: new RegExp(`^${name}`) }).click();
    await page.getByRole("dialog", { name: dialog }).getByRole("table").first().waitFor();
    await onlyText(page, []);
    await leave(page, dialog);
  }
  await page.getByRole("tab", { name: "Compare" }).click();
  await choose(page, page, "After: job", /^Snow laboratory/);
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await page.getByRole("table", { name: "Fields of the job file" }).waitFor();
  await onlyText(page, []);
});

test("the content policy stops what should ever get through", async ({ app, window }) => {
  for (const path of ["/", "/jobs/snow-laboratory", "/api/jobs"]) {
    const policy = (await fetch(`${app.address}${path}`)).headers.get("content-security-policy") ?? "";
    const directives = policy.split(";").map((one) => one.trim());
    expect(directives).toEqual(expect.arrayContaining(["default-src 'self'", "script-src 'self'", "object-src 'none'", "base-uri 'none'", "frame-ancestors 'none'"]));
    expect(policy).not.toContain("unsafe");
  }
  const page = await window("/", { mayHear: /Content Security Policy/ });
  await page.getByRole("table").waitFor();
  const broken = await page.evaluate(async () => {
    const seen: string[] = [];
    document.addEventListener("securitypolicyviolation", ({ effectiveDirective }) => seen.push(effectiveDirective));
    const script = document.createElement("script");
    script.textContent = "document.title = 'run'";
    const holder = document.createElement("div");
    holder.innerHTML = "<img src='data:,' onerror='document.title = \"run\"'>";
    document.body.append(script, holder);
    while (seen.length < 2) await new Promise((resolve) => requestAnimationFrame(resolve));
    return { seen: seen.toSorted(), title: document.title };
  });
  expect(broken).toEqual({ seen: ["script-src-attr", "script-src-elem"], title: "Cornerpost" });
});
