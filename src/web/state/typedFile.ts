import type { z } from "zod";
import { isObject, type JobFile } from "../../job/file.ts";
import type { JobIssue } from "../../job/issue.ts";
import type { jobSchema } from "../../job/job.ts";
import { contentOf } from "../../job/merge.ts";
import { readJob } from "../../job/read.ts";

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

/** The file that a text holds; undefined where it is no job file at all, or writes a field twice. */
export function fileIn(text: string): JobFile | undefined {
  const content = contentOf(text.replace(/^\uFEFF/, ""));
  return isObject(content) ? content : undefined;
}

/** A text that holds no file, as typed, with why. */
export interface UnreadText {
  readonly text: string;
  readonly issues: readonly JobIssue[];
}

/** Says why a text holds no file. */
export function unreadText(text: string): UnreadText {
  const read = readJob(text);
  return { text, issues: read.ok ? [] : read.issues };
}

type DeepReadonly<T> = T extends readonly (infer U)[]
  ? readonly DeepReadonly<U>[]
  : T extends object
    ? { readonly [K in keyof T]: DeepReadonly<T[K]> }
    : T;
