import type { BoardRow } from "../../catalogue/rows.ts";

/**
 * The stock size that a face is lined with: along the studs the shortest board that reaches over the whole height, else
 * the longest on offer; across the studs the longest. Of equal lengths the widest.
 */
export function chooseStock(board: BoardRow, lay: "along studs" | "across studs", height: number): BoardRow["stock"][number] {
  const byLength = [...board.stock].sort((a, b) => (a.length === b.length ? b.width - a.width : a.length - b.length));
  const longest = byLength.find(({ length }) => length === byLength.at(-1)?.length);
  const reaching = lay === "along studs" ? byLength.find(({ length }) => length >= height) : undefined;
  const chosen = reaching ?? longest;
  if (chosen === undefined) throw new RangeError(`board ${board.id} has no stock size`);
  return chosen;
}
