import { afterEach, describe, expect, it, vi } from "vitest";
import { DEMO_JOBS } from "../../../test/demoJobs.ts";
import type { JobFile } from "../../job/file.ts";
import { makeRunner } from "../worker/runner.ts";
import { answerFor, forgetBooks } from "./answer.ts";

// In place of the worker, which only a browser has: the same runner in this thread.
vi.mock("./river.ts", () => {
  const runner = makeRunner();
  return { runFile: (...given: Parameters<typeof runner.run>) => Promise.resolve(runner.run(...given)) };
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

async function issuesOf(one: JobFile): Promise<readonly string[]> {
  const answer = await answerFor(one);
  if (answer?.kind !== "issues") throw new Error(answer?.kind);
  return answer.issues.map(({ path }) => path);
}

describe("the answer to a file", () => {
  afterEach(() => {
    forgetBooks();
    vi.unstubAllGlobals();
  });

  it("says that a price book is missing as an issue of its field, with what would do, and asks for none that is not there", async () => {
    const asked = serverWithBook();
    const answer = await answerFor(unpriced);
    expect(answer).toEqual({
      kind: "issues",
      issues: [
        {
          code: "unknown name",
          path: "prices.book",
          found: '"no-such-book"',
          wants: `one of the price books under Jobs: ${book.id}`,
          example: JSON.stringify(book.id),
        },
      ],
    });
    expect(asked).toEqual(["/api/price-books"]);
  });

  it("tells it with all other issues", async () => {
    serverWithBook();
    expect(await issuesOf({ ...unpriced, units: "furlongs", notes: 7 })).toEqual(expect.arrayContaining(["units", "notes", "prices.book"]));
    expect(await issuesOf({ ...file, units: "furlongs", prices: { book: 7 } })).toEqual(["units", "prices.book"]);
  });

  it("tells the other issues even when the server is away, and that it is when there are none", async () => {
    vi.stubGlobal("fetch", () => Promise.reject(new TypeError("fetch failed")));
    expect(await issuesOf({ ...file, units: "furlongs" })).toEqual(["units"]);
    expect(await answerFor(file)).toEqual({ kind: "failed", message: expect.stringMatching(/^The price book .* could not be fetched\. The server cannot be reached/) as string });
    serverWithBook();
    expect((await answerFor(file))?.kind).toBe("screen");
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
