import { mkdirSync, readdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { basename, dirname, join } from "node:path";
import type { JobIssue } from "../job/issue.ts";
import { readPriceBook } from "../job/readPriceBook.ts";
import { readJob } from "../job/read.ts";
import { packFiles } from "../papers/pack.ts";
import { compilePdf } from "../papers/pdf.ts";
import type { Headline } from "../papers/results.ts";
import { makeRiver } from "./river.ts";
import { inStage, type StageName } from "./stageError.ts";

/** What became of a pack. */
export type PackWriting =
  | {
      readonly ok: true;
      readonly headline: Headline;
      /** Id of the price book that it was priced from. */
      readonly book: string;
      /** Paths in the folder, in the order written. */
      readonly written: readonly string[];
      /** Drawings in the folder that are not of this pack, such as those of an earlier revision. */
      readonly strangers: readonly string[];
    }
  | { readonly ok: false; readonly jobIssues: readonly JobIssue[]; readonly bookIssues: readonly JobIssue[] };

/** A pack in memory, or what is wrong with the files that it is made from. */
export type PackMaking =
  | {
      readonly ok: true;
      readonly headline: Headline;
      /** Id of the price book that it was priced from. */
      readonly book: string;
      /** By their paths in the pack's folder. */
      readonly files: readonly { readonly path: string; readonly content: string | Uint8Array }[];
    }
  | { readonly ok: false; readonly jobIssues: readonly JobIssue[]; readonly bookIssues: readonly JobIssue[] };

/**
 * Reads a job file and a price book, runs the river and makes every file of the pack. `onProgress` is told of each step in
 * plain words, with the share of the work that is done, 0 to 1.
 * Throws StageError where a stage could not compute.
 */
export function makePack(
  jobText: string,
  bookText: string,
  onProgress: (step: string, share: number) => void = () => undefined,
): PackMaking {
  const job = readJob(jobText);
  const book = readPriceBook(bookText);
  if (!job.ok || !book.ok) {
    return { ok: false, jobIssues: job.ok ? [] : job.issues, bookIssues: book.ok ? [] : book.issues };
  }
  const onStage = (stage: StageName): void => onProgress(`computing the ${stage}`, (COMPUTED * COMPUTING.indexOf(stage)) / COMPUTING.length);
  const river = makeRiver(onStage)(job.job, book.book);
  const files = inStage("papers", () => {
    onProgress("composing the papers", COMPUTED);
    const papers = packFiles(river, { text: jobText, file: job.file });
    return papers.map((file, at) => {
      if ("text" in file) return { path: file.path, content: file.text };
      onProgress(`setting ${file.path}`, COMPOSED + ((1 - COMPOSED) * at) / papers.length);
      return { path: file.path, content: compilePdf(file.typst) };
    });
  });
  return { ok: true, headline: river.headline, book: book.book.id, files };
}

/** The stages before the papers, in the order in which they run. */
const COMPUTING: readonly StageName[] = ["build", "findings", "takeoff", "price", "plan", "heat", "drawings"];
/** About the shares of the time that are over when all is computed, and when the papers are composed. */
const COMPUTED = 0.2;
const COMPOSED = 0.6;

/**
 * Makes a pack and writes it into a folder, which is made where it is missing. Everything is computed before the first file
 * is written; each file appears whole or not at all; files that are not of the pack are left alone. `onProgress` is told of
 * each step in plain words.
 * Throws StageError where a stage could not compute, and the system's error where a file could not be written.
 */
export function writePack(
  jobText: string,
  bookText: string,
  folder: string,
  onProgress: (step: string) => void = () => undefined,
): PackWriting {
  const told = new Set<string>();
  const made = makePack(jobText, bookText, (step) => {
    if (!told.has(step)) onProgress(step);
    told.add(step);
  });
  if (!made.ok) return made;
  const { headline, book, files } = made;
  onProgress(`writing ${files.length} files`);
  for (const { path, content } of files) writeWhole(join(folder, path), content);
  const written = files.map(({ path }) => path);
  return { ok: true, headline, book, written, strangers: strangersIn(folder, written) };
}

/** Writes beside the file and renames, so that a reader never meets half of it. */
function writeWhole(path: string, content: string | Uint8Array): void {
  mkdirSync(dirname(path), { recursive: true });
  const part = join(dirname(path), `.${basename(path)}.${process.pid}.part`);
  try {
    writeFileSync(part, content);
    renameSync(part, path);
  } catch (error) {
    rmSync(part, { force: true });
    throw error;
  }
}

const DRAWINGS = "drawings";

function strangersIn(folder: string, written: readonly string[]): readonly string[] {
  const mine = new Set(written);
  return readdirSync(join(folder, DRAWINGS))
    .map((name) => `${DRAWINGS}/${name}`)
    .filter((path) => !mine.has(path))
    .sort();
}
