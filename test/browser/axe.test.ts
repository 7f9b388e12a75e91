import { AxeBuilder } from "@axe-core/playwright";
import type { Page } from "playwright-core";
import { expect } from "vitest";
import { leave, settled, side, test } from "./app.ts";

interface Violation {
  readonly id: string;
  readonly impact?: string | null | undefined;
  readonly nodes: readonly { readonly target: unknown; readonly failureSummary?: string | undefined }[];
}

/** What axe finds serious or critical on the page as it stands. */
async function grave(page: Page): Promise<readonly string[]> {
  const { violations } = (await new AxeBuilder({ page }).analyze()) as { readonly violations: readonly Violation[] };
  return violations
    .filter(({ impact }) => impact === "serious" || impact === "critical")
    .flatMap(({ id, nodes }) => nodes.map(({ target, failureSummary = "" }) => `${id} at ${JSON.stringify(target)}: ${failureSummary}`));
}

/** The theme changes colours alone, which no width changes: every width in one of them, one width in both. */
const LOOKS = [
  { width: 1440, height: 900, theme: "light" },
  { width: 1440, height: 900, theme: "dark" },
  { width: 1024, height: 768, theme: "light" },
  { width: 390, height: 844, theme: "dark" },
] as const;

test.for(LOOKS)(
  "axe finds nothing grave on any screen, $width px, $theme",
  async ({ width, height, theme }, { app, window }) => {
    const found: string[] = [];
    const look = async (page: Page, screen: string): Promise<void> => {
      found.push(...(await grave(page)).map((one) => `${screen}: ${one}`));
    };
    const id = await app.jobFrom("snow-laboratory", `Looked at, ${width} px, ${theme}`);
    const options = { viewport: { width, height }, theme };

    const list = await window("/", options);
    await list.getByRole("table").waitFor();
    expect(await list.evaluate(() => document.documentElement.dataset["theme"])).toBe(theme);
    await look(list, "list");

    const page = await window(`/jobs/${id}`, options);
    await settled(page);
    await look(page, "unfolded");

    const box = await side(page, "In the box");
    await look(page, "in the box");
    await box.getByRole("button", { name: /^ceiling/ }).click();
    await box.getByRole("button", { name: /^Foam/ }).click();
    await box.getByRole("textbox", { name: "Thickness" }).waitFor();
    await look(page, "build-up");
    await box.getByRole("button", { name: "All in the box" }).click();
    await box.getByRole("button", { name: /^D1 / }).first().click();
    const along = box.getByRole("textbox", { name: "Along" });
    await along.fill("1500 mm");
    await along.press("Enter");
    await settled(page);
    await look(page, "opening");

    await side(page, "In the box", false);
    const findings = await side(page, "Findings");
    await findings.getByRole("button", { name: /corners carry/ }).click();
    await findings.getByRole("region", { name: "Worked out" }).waitFor();
    await look(page, "findings");
    await side(page, "Findings", false);

    await page.getByRole("tab", { name: "Three dimensions" }).click();
    await page.getByRole("combobox", { name: "Section" }).selectOption("Level");
    await look(page, "three dimensions");
    await page.getByRole("tab", { name: "Heat" }).click();
    const probe = page.getByRole("application");
    await probe.focus();
    await page.keyboard.press("Home");
    await look(page, "heat");
    const isNarrow = width < 700;
    if (isNarrow) await page.getByRole("button", { name: /Section$/ }).click();
    await page.getByRole("option", { name: /^The whole box/ }).click();
    await page.getByRole("table", { name: "Faces", exact: true }).waitFor();
    await look(page, "heat of the whole box");
    await page.getByRole("tab", { name: "Papers" }).click();
    await page.getByRole("button", { name: /^Make the pack/ }).waitFor();
    await look(page, "papers");
    await page.getByRole("tab", { name: "Compare" }).click();
    await page.getByRole("button", { name: "Compare", exact: true }).click();
    await page.getByRole("table", { name: "Fields of the job file" }).waitFor();
    await look(page, "compare");

    await page.getByRole("region", { name: "The four numbers" }).getByRole("button", { name: /^Price/ }).click();
    await page.getByRole("button", { name: /show the working of the price/ }).click();
    await page.getByRole("dialog", { name: "Working: the price" }).getByRole("region", { name: "Worked out" }).waitFor();
    await look(page, "working");
    await leave(page, "Working: the price");
    await leave(page, "Price");

    // Someone else moves the same door meanwhile.
    await app.saveElsewhere(id, 1, "Grace", ({ openings }) => {
      openings.find((one) => one.id === "D1")!.at.along = "1100 mm";
    });
    await page.getByText(/Grace saved revision 2 meanwhile/).waitFor();
    await look(page, "saved elsewhere");
    await page.getByRole("button", { name: "Save", exact: true }).click();
    const saving = page.getByRole("dialog", { name: "Save a revision" });
    await saving.getByRole("table").waitFor();
    await look(page, "save");
    await saving.getByRole("button", { name: "Save", exact: true }).click();
    await page.getByRole("dialog", { name: "Grace saved first" }).getByRole("radiogroup").waitFor();
    await look(page, "conflict");

    expect(found).toEqual([]);
  },
);

test("axe finds what is wrong with a page that is", async ({ window }) => {
  const page = await window("/");
  await page.getByRole("table").waitFor();
  await page.locator("main").evaluate((main) => {
    const faint = document.createElement("p");
    faint.textContent = "Hardly to be read";
    faint.style.color = "#999";
    faint.style.backgroundColor = "#fff";
    main.append(document.createElement("button"), faint);
  });
  expect((await grave(page)).toSorted()).toEqual([expect.stringMatching(/^button-name at /), expect.stringMatching(/^color-contrast at /)]);
});
