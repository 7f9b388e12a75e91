import { floorBoards } from "./boards/floor.ts";
import { liningBoards } from "./boards/lining.ts";
import { plateBoards } from "./boards/plate.ts";
import type { BoardRow } from "./rows.ts";

/** Boards, plates, panels and rolls that cover a face. */
export const boardRows: readonly BoardRow[] = [...liningBoards, ...plateBoards, ...floorBoards];
