import type { PriceBookRow } from "../../job/api.ts";
import type { OptionGroup } from "../controls/Choose.tsx";

/** The price books to choose from; before them the one that the job names where it is not among them. Undefined: not listed yet. */
export function bookGroups(books: readonly PriceBookRow[] | undefined, chosen: string | undefined): readonly OptionGroup[] {
  const kept = (books ?? []).map(({ id, number, when }) => ({ id, name: id, more: `revision ${number}, ${when.slice(0, 10)}` }));
  const isStrange = chosen !== undefined && !kept.some(({ id }) => id === chosen);
  const strange = isStrange ? [{ name: books === undefined ? "In the job" : "Not kept here", options: [{ id: chosen, name: chosen }] }] : [];
  return [...strange, { name: "", options: kept }].filter(({ options }) => options.length > 0);
}
