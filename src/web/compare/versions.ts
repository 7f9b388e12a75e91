import { isObject, type JobFile, type JsonValue } from "../../job/file.ts";
import { contentOf } from "../../job/merge.ts";
import { server } from "../state/server.ts";
import type { Version } from "./runBoth.ts";

/** Which file to compare: the open job as it stands here, or a revision that was saved. */
export type Which = { readonly kind: "here" } | { readonly kind: "revision"; readonly job: string; readonly number: number };

/** Fetches a version with the price book that it names. Throws RangeError where its file is no job file. */
export async function fetchVersion(which: Which, here: JobFile): Promise<Version> {
  if (which.kind === "here") return { name: "The job as it stands here", file: here, book: await bookOf(here) };
  const { file, title, number } = await server.revision(which.job, which.number);
  const name = `${title ?? which.job}, revision ${number}`;
  const content = contentOf(file);
  if (!isObject(content)) throw new RangeError(`${name} is no job file.`);
  return { name, file: content, book: await bookOf(content) };
}

async function bookOf(file: JobFile): Promise<JsonValue> {
  const prices = file["prices"];
  const book = isObject(prices) ? prices["book"] : undefined;
  return typeof book === "string" ? contentOf((await server.priceBook(book)).file) : null;
}
