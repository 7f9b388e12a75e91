import type { z } from "zod";
import type { JobFile } from "../../job/file.ts";
import type { jobSchema } from "../../job/job.ts";

/** A job file by its fields, every quantity still text. Recipes of edits change one. */
export type JobFileDraft = z.input<typeof jobSchema>;

export type OpeningDraft = NonNullable<JobFileDraft["openings"]>[number];
export type ItemDraft = NonNullable<JobFileDraft["items"]>[number];

/** The same, to be read only. */
export type TypedFile = DeepReadonly<JobFileDraft>;

/** Sees a job file by its fields. Nothing is checked here: the file of an open job has been read at least once. */
export function typedFile(file: JobFile): TypedFile {
  return file as unknown as TypedFile;
}

type DeepReadonly<T> = T extends readonly (infer U)[]
  ? readonly DeepReadonly<U>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;
