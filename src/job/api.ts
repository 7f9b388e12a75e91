import { z } from "zod";
import type { JsonValue } from "./file.ts";
import { ISSUE_CODES } from "./issue.ts";
import type { JobIssue } from "./issue.ts";
import type { Change, Conflict } from "./merge.ts";

/** Every route of the server, by name. `:word` is a parameter. */
export const ROUTES = {
  jobs: "/api/jobs",
  job: "/api/jobs/:job",
  file: "/api/jobs/:job/file",
  revisions: "/api/jobs/:job/revisions",
  revision: "/api/jobs/:job/revisions/:number",
  makePack: "/api/jobs/:job/revisions/:number/pack",
  pack: "/api/packs/:pack",
  packFile: "/api/packs/:pack/file",
  import: "/api/import",
  priceBooks: "/api/price-books",
  priceBook: "/api/price-books/:book",
  live: "/api/live",
  backup: "/api/backup",
  backupFile: "/api/backups/:name",
} as const;

/** The address of a route with its parameters filled in. Throws RangeError where one is missing. */
export function addressOf(route: (typeof ROUTES)[keyof typeof ROUTES], given: Readonly<Record<string, string | number>> = {}): string {
  return route.replace(/:(\w+)/g, (_, name: string) => {
    const value = given[name];
    if (value === undefined) throw new RangeError(`the address ${route} needs ${name}`);
    return encodeURIComponent(value);
  });
}

/** Most characters that a job file or price book may have. */
export const FILE_LIMIT = 2_000_000;

/** Half a character pair, and the zero character, which a database cannot hold as they stand. */
const NOT_STORABLE = /\p{Surrogate}|\u0000/u;
const NOT_ON_A_LINE = /\p{Cc}|\p{Surrogate}/u;
const line = (most: number) => z.string().trim().max(most).refine((text) => !NOT_ON_A_LINE.test(text), "one line of text");

/** Who saves: a name as typed, for there are no accounts yet. */
const who = line(80).min(1);
const why = line(500);
const file = z.string().max(FILE_LIMIT).refine((text) => !NOT_STORABLE.test(text), "text without a zero character or half a pair");
const json: z.ZodType<JsonValue> = z.json();

// What is asked.

/** POST `jobs`: a new job from the text of a job file. */
export const newJobRequest = z.strictObject({ file, who, why });
export type NewJobRequest = z.input<typeof newJobRequest>;

/** POST `revisions`: the file as it stands now, and the number of the revision that it was made from. */
export const saveRequest = z.strictObject({ base: z.int().min(1), file, who, why });
export type SaveRequest = z.input<typeof saveRequest>;

/** POST `import`: job files and price books, told apart by their `format`. */
export const importRequest = z.strictObject({ files: z.array(z.strictObject({ name: line(255), file })).min(1).max(50), who, why });
export type ImportRequest = z.input<typeof importRequest>;

// What is answered.

const revisionHeadFields = {
  number: z.int().min(1),
  /** The revision that it was made from; null for the first. */
  parent: z.int().min(1).nullable(),
  who: z.string(),
  why: z.string(),
  /** Moment of the save, as ISO 8601 in UTC. */
  when: z.string(),
};

const jobRevisionHead = z.strictObject({
  job: z.string(),
  ...revisionHeadFields,
  /** The title as the file has it; null where it has none. */
  title: z.string().nullable(),
  /** Whether the file could be read as a job when it was saved; a draft that could not is kept all the same. */
  readable: z.boolean(),
});
/** A revision of a job without its file. */
export type JobRevisionHead = z.output<typeof jobRevisionHead>;

const jobRevision = z.strictObject({ ...jobRevisionHead.shape, file: z.string() });
/** A revision of a job: the text of the file as typed. */
export type JobRevision = z.output<typeof jobRevision>;

const jobRow = z.strictObject({ id: z.string(), demo: z.boolean(), latest: jobRevisionHead });
/** A job in the list of jobs. */
export type JobRow = z.output<typeof jobRow>;

const priceBookRow = z.strictObject({ id: z.string(), ...revisionHeadFields });
/** The latest revision of a price book without its text. */
export type PriceBookRow = z.output<typeof priceBookRow>;

const priceBookRevision = z.strictObject({ ...priceBookRow.shape, file: z.string() });
export type PriceBookRevision = z.output<typeof priceBookRevision>;

const issue: z.ZodType<JobIssue> = z
  .object({
    code: z.enum(ISSUE_CODES),
    path: z.string(),
    found: z.string(),
    wants: z.string(),
    example: z.string(),
    line: z.int().exactOptional(),
    column: z.int().exactOptional(),
  });

/** What became of one imported file. A job file with issues is kept as a draft; a price book with issues is not. */
const imported = z.discriminatedUnion("became", [
  z.strictObject({ name: z.string(), became: z.literal("job"), job: z.string(), issues: z.array(issue) }),
  z.strictObject({ name: z.string(), became: z.literal("price book"), book: z.string(), number: z.int() }),
  /** `format` is what it says that it is. */
  z.strictObject({ name: z.string(), became: z.literal("nothing"), format: z.enum(["price book", "other"]), issues: z.array(issue) }),
]);
export type Imported = z.output<typeof imported>;

const packState = z.strictObject({
  id: z.string(),
  job: z.string(),
  number: z.int(),
  state: z.enum(["waiting", "working", "done", "failed", "cancelled"]),
  /** Share of the work that is done, 0 to 1. */
  progress: z.number().min(0).max(1),
  /** What is being done, in plain words; where it failed, why. */
  step: z.string(),
});
export type PackState = z.output<typeof packState>;

const change: z.ZodType<Change> = z.strictObject({ path: z.string(), before: json.optional(), after: json.optional() });
const conflict: z.ZodType<Conflict> = z.strictObject({ path: z.string(), base: json.optional(), mine: json.optional(), theirs: json.optional() });

/** The answer's body for each question, to be read with `parse`. */
export const ANSWERS = {
  /** GET `jobs`, by title. */
  jobs: z.strictObject({ jobs: z.array(jobRow) }),
  /** GET `job`, GET `revision`, and 201 of POST `jobs`. */
  revision: jobRevision,
  /** POST `revisions`: 201 where it was saved; 200 where someone saved since the base, and nothing was written. */
  saved: z.discriminatedUnion("saved", [
    z.strictObject({ saved: z.literal(true), revision: jobRevision }),
    z.strictObject({
      saved: z.literal(false),
      latest: jobRevision,
      /** What the others changed, from the base to the latest. */
      changes: z.array(change),
      /** Where the others and this save changed the same place differently. */
      conflicts: z.array(conflict),
    }),
  ]),
  /** GET `revisions`, newest first. */
  revisions: z.strictObject({ revisions: z.array(jobRevisionHead) }),
  /** POST `import`, in the order of the files. */
  import: z.strictObject({ imported: z.array(imported) }),
  /** GET `priceBooks`, by id. */
  priceBooks: z.strictObject({ books: z.array(priceBookRow) }),
  /** GET `priceBook`. */
  priceBook: priceBookRevision,
  /** 202 of POST `makePack`, GET `pack`, and DELETE `pack`, which cancels. */
  pack: packState,
  /** 201 of POST `backup`: the file's path on the server, and its name, by which `backupFile` hands it over. */
  backup: z.strictObject({ path: z.string(), name: z.string(), bytes: z.int() }),
} as const;

export type Backup = z.output<typeof ANSWERS.backup>;

/** What became of a save of a job. */
export type Saved = z.output<typeof ANSWERS.saved>;

/** Every error that the server answers with, and its HTTP status. */
export const ERROR_STATUS = {
  bad_request: 400,
  wrong_host: 403,
  wrong_origin: 403,
  not_found: 404,
  wrong_method: 405,
  not_ready: 409,
  too_large: 413,
  not_json: 415,
  has_issues: 422,
  no_price_book: 422,
  busy: 503,
  failed: 500,
} as const;
export type ErrorCode = keyof typeof ERROR_STATUS;

/** The body of every error. `path` is the field of what was asked, "" for all of it; `facts` depend on the code. */
export const apiError = z.strictObject({
  code: z.enum(Object.keys(ERROR_STATUS) as [ErrorCode, ...ErrorCode[]]),
  path: z.string(),
  facts: z.record(z.string(), json),
});
export type ApiError = z.output<typeof apiError>;

/**
 * What GET `live` sends, one JSON a message. After `refresh`, and after each new connection, something may have been
 * missed: ask again for what is shown.
 */
export const liveEvent = z.discriminatedUnion("kind", [
  z.strictObject({ kind: z.literal("saved"), job: z.string(), revision: z.int(), who: z.string() }),
  z.strictObject({ kind: z.literal("price book"), book: z.string(), revision: z.int(), who: z.string() }),
  z.strictObject({ kind: z.literal("refresh") }),
]);
export type LiveEvent = z.output<typeof liveEvent>;
