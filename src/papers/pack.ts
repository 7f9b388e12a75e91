import { bind } from "./bind.ts";
import type { PackFile } from "./paper.ts";
import { PAPERS } from "./papers.ts";
import type { Results, TypedJob } from "./results.ts";

/**
 * Every file of a pack: `pack.pdf` with all that is printed, then the files of each paper. Pure: a PDF is given as what it
 * is set from. Throws RangeError where a result holds a number that is not finite.
 */
export function packFiles(results: Results, typed: TypedJob): readonly PackFile[] {
  const made = PAPERS.map(({ id, title, make }) => ({ id, title, ...make(results, typed) }));
  const sections = made.flatMap(({ id, title, section }) => (section === undefined ? [] : [{ id, title, section }]));
  return [{ path: "pack.pdf", typst: bind(results, sections) }, ...made.flatMap(({ files }) => files ?? [])];
}
