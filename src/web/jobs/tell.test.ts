import { describe, expect, it } from "vitest";
import type { JobIssue } from "../../job/issue.ts";
import { importedWords } from "./tell.ts";

const issue: JobIssue = { code: "choice", path: "currency", found: '"shells"', wants: "a currency", example: '"USD"' };
const [name, issues] = ["a.json", [issue]];

describe("what became of an imported file", () => {
  it.each([
    [{ name, became: "job", job: "J1", issues: [] }, "a.json became a job.", 0],
    [{ name, became: "job", job: "J1", issues }, "a.json became a job that cannot be read yet; it is kept as a draft.", 1],
    [{ name, became: "price book", book: "shop", number: 2 }, "a.json became revision 2 of the price book shop.", 0],
    [{ name, became: "nothing", format: "price book", issues }, "a.json is a price book, and one with issues is not taken, for jobs are priced from it.", 1],
    [{ name, became: "nothing", format: "other", issues }, "a.json was not taken.", 1],
  ] as const)("%j", (imported, says, count) => {
    const words = importedWords(imported.became === "price book" ? imported : { ...imported, issues: [...imported.issues] });
    expect(words.says).toBe(says);
    expect(words.issues).toEqual(Array.from({ length: count }, () => 'currency is "shells"; wanted: a currency, for example "USD".'));
  });
});
