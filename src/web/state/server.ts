import type { z } from "zod";
import {
  addressOf, ANSWERS, apiError, ROUTES,
  type ApiError, type Backup, type Imported, type ImportRequest, type JobRevision, type JobRevisionHead, type JobRow, type NewJobRequest, type PackState,
  type PriceBookRevision, type PriceBookRow, type Saved, type SaveRequest,
} from "../../job/api.ts";

/** The server answered with an error of its own; `told` says which. */
export class ServerError extends Error {
  override readonly name = "ServerError";
  readonly told: ApiError;
  constructor(told: ApiError) {
    super(`${told.code}${told.path === "" ? "" : ` at ${told.path}`}`);
    this.told = told;
  }
}

/** The server's questions. Each rejects with ServerError, or with what fetch throws where the server cannot be reached. */
export const server = {
  jobs: async (): Promise<readonly JobRow[]> => (await ask(ANSWERS.jobs, ROUTES.jobs)).jobs,
  job: (job: string): Promise<JobRevision> => ask(ANSWERS.revision, addressOf(ROUTES.job, { job })),
  revisions: async (job: string): Promise<readonly JobRevisionHead[]> =>
    (await ask(ANSWERS.revisions, addressOf(ROUTES.revisions, { job }))).revisions,
  revision: (job: string, number: number): Promise<JobRevision> => ask(ANSWERS.revision, addressOf(ROUTES.revision, { job, number })),
  newJob: (body: NewJobRequest): Promise<JobRevision> => ask(ANSWERS.revision, ROUTES.jobs, post(body)),
  /** Saves, or answers who saved first. */
  save: (job: string, body: SaveRequest): Promise<Saved> => ask(ANSWERS.saved, addressOf(ROUTES.revisions, { job }), post(body)),
  importFiles: async (body: ImportRequest): Promise<readonly Imported[]> => (await ask(ANSWERS.import, ROUTES.import, post(body))).imported,
  priceBooks: async (): Promise<readonly PriceBookRow[]> => (await ask(ANSWERS.priceBooks, ROUTES.priceBooks)).books,
  priceBook: (book: string): Promise<PriceBookRevision> => ask(ANSWERS.priceBook, addressOf(ROUTES.priceBook, { book })),
  makePack: (job: string, number: number): Promise<PackState> =>
    ask(ANSWERS.pack, addressOf(ROUTES.makePack, { job, number }), { method: "POST" }),
  pack: (pack: string): Promise<PackState> => ask(ANSWERS.pack, addressOf(ROUTES.pack, { pack })),
  backUp: (): Promise<Backup> => ask(ANSWERS.backup, ROUTES.backup, { method: "POST" }),
  cancelPack: (pack: string): Promise<PackState> => ask(ANSWERS.pack, addressOf(ROUTES.pack, { pack }), { method: "DELETE" }),
};

/** Where the browser downloads a job's file as it was last saved, a pack that is done, and a backup that was made. */
export const downloads = {
  jobFile: (job: string): string => addressOf(ROUTES.file, { job }),
  pack: (pack: string): string => addressOf(ROUTES.packFile, { pack }),
  backup: (name: string): string => addressOf(ROUTES.backupFile, { name }),
};

async function ask<T>(answer: z.ZodType<T>, address: string, init: RequestInit = {}): Promise<T> {
  const response = await fetch(address, init);
  const json: unknown = await response.json();
  if (!response.ok) throw new ServerError(apiError.parse(json));
  return answer.parse(json);
}

function post(body: object): RequestInit {
  return { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(body) };
}
