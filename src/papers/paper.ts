import type { JsonValue } from "../job/file.ts";
import type { Results, TypedJob } from "./results.ts";

/** What the printed pack is set from: Typst sources and data by file name, with `main.typ` among them. */
export interface TypstSource {
  readonly files: Readonly<Record<string, string>>;
  /** Calendar day that the document carries as its date. */
  readonly day: string;
}

/** A file of the pack by its path in the pack's folder, as text or as what a PDF is set from. */
export type PackFile =
  | { readonly path: string; readonly text: string }
  | { readonly path: string; readonly typst: TypstSource };

/** What a paper puts into the printed pack. */
export interface Section {
  /** Typst source that defines `body(data)`. It may import `style.typ` and read its own files. */
  readonly template: string;
  /** What `body` is given. Texts are shown as they stand, never read as markup. */
  readonly data: JsonValue;
  /** Further files that the template reads, by name. */
  readonly files?: Readonly<Record<string, string>>;
}

/** What a paper comes to: a part of the printed pack, files beside it, or both. */
export interface MadePaper {
  readonly section?: Section;
  readonly files?: readonly PackFile[];
}

/** One paper of the pack. It composes what the stages computed, and computes nothing. */
export interface Paper {
  readonly id: string;
  readonly title: string;
  readonly make: (results: Results, typed: TypedJob) => MadePaper;
}
