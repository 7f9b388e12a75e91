import { afterEach, describe, expect, it, vi } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JobFile } from "../../job/file.ts";
import { makeRunner } from "../worker/runner.ts";
import { answerFor, forgetBooks } from "./answer.ts";
import { useSettings } from "./settings.ts";

// In place of the worker, which only a browser has: the same runner in this thread.
vi.mock("./river.ts", () => {
  const runner = makeRunner();
  return { runFile: (...given: Parameters<typeof runner.quick>) => Promise.resolve(runner.quick(...given)) };
});

const [demo] = DEMO_JOBS;
if (demo === undefined) throw new Error("there is no demo job");
const { file, book, bookText } = demo;
const unpriced: JobFile = { ...file, prices: { book: "no-such-book" } };

/** A server with the demo's price book; gives what it was asked. */
function serverWithBook(): readonly string[] {
  const asked: string[] = [];
  const row = { id: book.id, number: 1, parent: null, who: "A", why: "", when: "2027-01-01T00:00:00Z" };
  vi.stubGlobal("fetch", (address: string) => {
    asked.push(address);
    return Promise.resolve(new Response(JSON.stringify(address === "/api/price-books" ? { books: [row] } : { ...row, file: bookText })));
  });
  return asked;
}

/** Why the answer to a file has no price; undefined where it has one. */
async function unpricedOf(one: JobFile): Promise<readonly string[] | undefined> {
  const answer = await answerFor(one);
  if (answer?.kind !== "screen") throw new Error(answer?.kind);
  const { headline } = answer.screen;
  return "unpriced" in headline ? [headline.unpriced, headline.mend] : undefined;
}

describe("the answer to a file", () => {
  afterEach(() => {
    forgetBooks();
    vi.unstubAllGlobals();
  });

  it("has no price without its book, says what would do, and asks for none that is not there", async () => {
    const asked = serverWithBook();
    expect(await unpricedOf(unpriced)).toEqual(["The price book no-such-book is not here.", `Choose ${book.id}, or import it under Jobs.`]);
    expect(asked).toEqual(["/api/price-books"]);
  });

  it("has issues first", async () => {
    serverWithBook();
    const answer = await answerFor({ ...unpriced, units: "furlongs", prices: { book: 7 } });
    expect(answer?.kind === "issues" ? answer.issues.map(({ path }) => path) : answer?.kind).toEqual(["units", "prices.book"]);
  });

  it("goes on without a price while the server is away", async () => {
    vi.stubGlobal("fetch", () => Promise.reject(new TypeError("fetch failed")));
    expect(await unpricedOf(file)).toEqual([`The price book ${book.id} could not be fetched.`, expect.stringMatching(/^The server cannot be reached/)]);
    serverWithBook();
    expect(await unpricedOf(file)).toBeUndefined();
  });

  it("is worded in the units that are shown", async () => {
    serverWithBook();
    for (const [system, other] of [["metric", /\d"/], ["imperial", /\d mm/]] as const) {
      useSettings.getState().setSystem(system);
      const answer = await answerFor(file);
      if (answer?.kind !== "screen") throw new Error(answer?.kind);
      expect(answer.screen.findings.map(({ says }) => says).join(" ")).not.toMatch(other);
    }
    useSettings.getState().setSystem("metric");
  });

  it("asks for a book once, until it is told to forget", async () => {
    const asked = serverWithBook();
    await Promise.all([answerFor(file), answerFor(file)]);
    await answerFor(file);
    expect(asked).toHaveLength(2);
    forgetBooks();
    await answerFor(file);
    expect(asked).toHaveLength(4);
  });
});
