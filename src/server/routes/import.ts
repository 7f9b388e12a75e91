import type { Hono } from "hono";
import { importRequest, ROUTES } from "../../job/api.ts";
import type { Imported, ImportRequest } from "../../job/api.ts";
import { isObject } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import { JOB_FORMAT } from "../../job/job.ts";
import { contentOf } from "../../job/merge.ts";
import { PRICE_BOOK_FORMAT } from "../../job/priceBook.ts";
import { readJob } from "../../job/read.ts";
import { createJob } from "../../store/jobs.ts";
import { latestPriceBook, savePriceBook } from "../../store/priceBooks.ts";
import { IMPORT_LIMIT, readBody } from "../body.ts";
import type { ServerContext } from "../context.ts";

/** Takes in job files and price books, told apart by their `format`. */
export function importRoutes(app: Hono, context: Importing): void {
  app.post(ROUTES.import, async ({ req, json }) => {
    const { files, ...said } = await readBody(req.raw, importRequest, IMPORT_LIMIT);
    const imported: Imported[] = [];
    for (const one of files) imported.push(await taken(context, one, said, imported.some(({ became }) => became !== "nothing")));
    return json({ imported });
  });
}

/** One answer for each file: what was taken before a file that could not be saved stays in, and is told. */
async function taken(context: Importing, one: ImportRequest["files"][number], said: Said, hasTaken: boolean): Promise<Imported> {
  try {
    return await take(context, one, said);
  } catch (error) {
    if (!hasTaken) throw error;
    context.log(error instanceof Error ? (error.stack ?? error.message) : String(error));
    return { name: one.name, became: "nothing", format: "other", issues: [NOT_SAVED] };
  }
}

type Importing = Pick<ServerContext, "store" | "newId" | "log">;
type Said = Pick<ImportRequest, "who" | "why">;

async function take({ store, newId }: Importing, { name, file }: ImportRequest["files"][number], said: Said): Promise<Imported> {
  const content = contentOf(file);
  const format = isObject(content) ? content["format"] : undefined;
  if (format === JOB_FORMAT) {
    const read = readJob(file);
    const { job } = await createJob(store, { id: newId(), demo: false, file, ...said });
    return { name, became: "job", job, issues: read.ok ? [] : [...read.issues] };
  }
  if (format !== PRICE_BOOK_FORMAT) return { name, became: "nothing", format: "other", issues: [notOurs(file)] };
  const id = isObject(content) ? content["id"] : undefined;
  const before = typeof id === "string" ? await latestPriceBook(store, id) : undefined;
  const saving = await savePriceBook(store, { base: before?.number ?? null, file, ...said });
  if (saving.ok) return { name, became: "price book", book: saving.revision.id, number: saving.revision.number };
  const issues = saving.reason === "has issues" ? [...saving.issues] : [SAVED_MEANWHILE];
  return { name, became: "nothing", format: "price book", issues };
}

/** What the reader of jobs says of a file that says no format of ours. */
function notOurs(file: string): JobIssue {
  const read = readJob(file);
  const issue = read.ok ? undefined : read.issues[0];
  return issue ?? { code: "format", path: "format", found: "", wants: `"${JOB_FORMAT}" or "${PRICE_BOOK_FORMAT}"`, example: `"${JOB_FORMAT}"` };
}

const NOT_SAVED: JobIssue = {
  code: "contradiction",
  path: "",
  found: "not saved",
  wants: "to import it again; the server met an error of its own, which its log tells",
  example: "",
};

/** Another person saved the book between our looking and our saving. */
const SAVED_MEANWHILE: JobIssue = {
  code: "contradiction",
  path: "id",
  found: "",
  wants: "a price book that nobody else saves at this moment; import it again",
  example: "",
};
