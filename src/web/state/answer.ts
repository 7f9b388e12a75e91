import { isObject, type JobFile, type JsonValue } from "../../job/file.ts";
import { foundText, type JobIssue } from "../../job/issue.ts";
import { contentOf } from "../../job/merge.ts";
import { problemWords } from "../jobs/tell.ts";
import type { RunAnswer } from "../worker/answers.ts";
import { runFile } from "./river.ts";
import { server } from "./server.ts";

/**
 * Works out a file with the price book that it names. A book that the server does not have is an issue of the file, beside
 * all its others. Undefined where a later call took this one's place.
 */
export async function answerFor(file: JobFile): Promise<RunAnswer | undefined> {
  try {
    const asked = await bookOf(file);
    const answer = await runFile(file, asked.kind === "book" ? asked.book : null);
    if (answer === undefined || asked.kind === "book") return answer;
    const issues = answer.kind === "issues" ? answer.issues : [];
    if (asked.kind === "missing") return { kind: "issues", issues: issues.some(({ path }) => path === PATH) ? issues : [...issues, asked.issue] };
    return issues.length > 0 ? answer : { kind: "failed", message: asked.why };
  } catch (error) {
    return { kind: "failed", message: problemWords(error) };
  }
}

/** Asks for every price book anew from now on, as when one was saved. */
export function forgetBooks(): void {
  BOOKS.clear();
}

const PATH = "prices.book";
/** By id, asked for once: a drag runs the file many times. */
const BOOKS = new Map<string, Promise<Asked>>();

type Asked =
  | { readonly kind: "book"; readonly book: JsonValue }
  | { readonly kind: "missing"; readonly issue: JobIssue }
  | { readonly kind: "unknown"; readonly why: string };

async function bookOf(file: JobFile): Promise<Asked> {
  const { prices } = file;
  const id = isObject(prices) ? prices["book"] : undefined;
  // The reader says what is wrong with a file that names none.
  if (typeof id !== "string") return { kind: "book", book: null };
  const asking = BOOKS.get(id) ?? ask(id);
  BOOKS.set(id, asking);
  const asked = await asking;
  if (asked.kind !== "book" && BOOKS.get(id) === asking) BOOKS.delete(id);
  return asked;
}

async function ask(id: string): Promise<Asked> {
  try {
    const ids = (await server.priceBooks()).map((book) => book.id);
    if (!ids.includes(id)) return { kind: "missing", issue: missing(id, ids) };
    return { kind: "book", book: contentOf((await server.priceBook(id)).file) };
  } catch (error) {
    return { kind: "unknown", why: `The price book ${id} could not be fetched. ${problemWords(error)}` };
  }
}

function missing(id: string, ids: readonly string[]): JobIssue {
  const [first] = ids;
  const wants = first === undefined ? "a price book that is imported under Jobs; there is none yet" : `one of the price books under Jobs: ${ids.join(", ")}`;
  return { code: "unknown name", path: PATH, found: foundText(id), wants, example: first === undefined ? "" : JSON.stringify(first) };
}
