import type { Screen } from "../../river/screen.ts";

/** What a search looks through. */
export const SEARCH_KINDS = ["finding", "opening", "item", "partition", "part", "quote line", "plan item"] as const;
export type SearchKind = (typeof SEARCH_KINDS)[number];

export const SEARCH_NAMES: Readonly<Record<SearchKind, string>> = {
  finding: "Findings",
  opening: "Openings",
  item: "Items",
  partition: "Partitions",
  part: "Parts",
  "quote line": "Quote lines",
  "plan item": "Plan items",
};

/** Something that can be found. `id` is its own among its kind. */
export interface Entry {
  readonly kind: SearchKind;
  readonly id: string;
  readonly what: string;
  /** All that is searched, in small letters without accents. */
  readonly text: string;
}

export interface SearchGroup {
  readonly kind: SearchKind;
  /** How many were found, of which `entries` are the first. */
  readonly count: number;
  readonly entries: readonly Entry[];
}

/** Everything on a screen that can be searched for, kind by kind. */
export function entriesOf({ findings, build, quote, plan }: Screen): readonly Entry[] {
  const entry = (kind: SearchKind, id: string, what: string, ...more: readonly (string | undefined)[]): Entry => ({
    kind,
    id,
    what,
    text: plainText([id, what, ...more].filter((text) => text !== undefined).join(" ")),
  });
  return [
    ...findings.map(({ id, says, verdict, check, about, code }) => entry("finding", id, says, verdict, check, code, ...about)),
    ...build.openings.map(({ opening }) => entry("opening", opening.id, opening.what ?? opening.kind, opening.kind, opening.article, opening.face)),
    ...build.job.items.map(({ id, what, article }) => entry("item", id, what, article)),
    ...build.job.partitions.map(({ id, what, buildUp }) => entry("partition", id, what ?? "partition", buildUp)),
    ...build.parts.map(({ id, what, role, material, of }) => entry("part", id, what, role, material, of)),
    ...quote.map(({ id, what, group }) => entry("quote line", id, what, group)),
    ...plan.map(({ id, what, kind, crew }) => entry("plan item", id, what, kind, crew)),
  ];
}

/** Entries that hold every word asked for, by kind; those that start with it come first. Nothing for an empty question. */
export function search(entries: readonly Entry[], asked: string, most = 8): readonly SearchGroup[] {
  const words = plainText(asked).split(" ").filter((word) => word !== "");
  const [first] = words;
  if (first === undefined) return [];
  const found = entries.filter(({ text }) => words.every((word) => text.includes(word)));
  return SEARCH_KINDS.flatMap((kind) => {
    const ofKind = found.filter((one) => one.kind === kind);
    if (ofKind.length === 0) return [];
    const startsSo = ofKind.filter(({ text }) => text.startsWith(first));
    const others = ofKind.filter(({ text }) => !text.startsWith(first));
    return [{ kind, count: ofKind.length, entries: [...startsSo, ...others].slice(0, most) }];
  });
}

/** Small letters, without accents, one space between words. */
function plainText(text: string): string {
  return text.normalize("NFKD").replace(/\p{M}/gu, "").toLowerCase().replace(/\s+/g, " ").trim();
}
