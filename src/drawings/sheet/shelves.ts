import type { Rect } from "../../geometry/rect.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import type { DrawnShape } from "../drawing.ts";

/** Something that is laid on a sheet as a whole: a view or a table, around its own origin. */
export interface Block {
  readonly shapes: readonly DrawnShape[];
  readonly bounds: Rect;
}

/** A block and how far it is moved. */
export interface PlacedBlock {
  readonly block: Block;
  readonly by: { readonly x: number; readonly y: number };
}

const MM = 0.001;
const GAP = 5 * MM;
/** Blocks are spread over what is left of the sheet, but not further apart than this. */
const WIDEST_GAP = 22 * MM;

interface Shelf {
  readonly blocks: Block[];
  width: number;
  height: number;
}

/** Lays blocks in their order on shelves from the top, and on further pages where one is full; gives the pages. The lot is centred. */
export function shelve(blocks: readonly Block[], area: Rect): readonly (readonly PlacedBlock[])[] {
  const pages: Shelf[][] = [];
  let left = Number.NEGATIVE_INFINITY;
  let shelf: Shelf | undefined;
  for (const block of blocks) {
    const [width, height] = [rectWidth(block.bounds), rectHeight(block.bounds)];
    const grown = shelf === undefined ? height : Math.max(shelf.height, height);
    if (shelf !== undefined && shelf.width + GAP + width <= rectWidth(area) && left - (grown - shelf.height) >= 0) {
      left -= grown - shelf.height;
      shelf.blocks.push(block);
      shelf.width += GAP + width;
      shelf.height = grown;
      continue;
    }
    if (left - GAP - height < 0) {
      pages.push([]);
      left = rectHeight(area) + GAP;
    }
    shelf = { blocks: [block], width, height };
    left -= GAP + height;
    pages.at(-1)?.push(shelf);
  }
  return pages.map((page) => placed(page, area));
}

/** Stacks blocks in a column at the right of the area; undefined where the column is higher than the area. */
export function column(blocks: readonly Block[], area: Rect): { readonly places: readonly PlacedBlock[]; readonly rest: Rect } | undefined {
  const width = Math.max(...blocks.map(({ bounds }) => rectWidth(bounds)));
  const height = blocks.reduce((sum, { bounds }) => sum + rectHeight(bounds) + GAP, -GAP);
  const rest = { ...area, u1: area.u1 - width - GAP };
  if (height > rectHeight(area) || rest.u1 <= rest.u0) return undefined;
  let top = area.v1;
  const places = blocks.map((block) => {
    const by = { x: area.u1 - width - block.bounds.u0, y: top - block.bounds.v1 };
    top -= rectHeight(block.bounds) + GAP;
    return { block, by };
  });
  return { places, rest };
}

/**
 * Lowers the blocks of a column, in their order, toward the level at which each should start, as far as those below leave
 * room above `foot`; a block without a level stays as high as it can.
 */
export function levelled(places: readonly PlacedBlock[], levels: readonly (number | undefined)[], foot: number): readonly PlacedBlock[] {
  const [first] = places;
  let ceiling = first === undefined ? foot : first.block.bounds.v1 + first.by.y;
  return places.map(({ block, by }, index) => {
    const below = places.slice(index).reduce((sum, { block: { bounds } }) => sum + rectHeight(bounds) + GAP, -GAP);
    const top = Math.min(ceiling, Math.max(foot + below, levels[index] ?? ceiling));
    ceiling = top - rectHeight(block.bounds) - GAP;
    return { block, by: { ...by, y: top - block.bounds.v1 } };
  });
}

/** True where the block alone fits the area. */
export function fits(block: Block, area: Rect): boolean {
  return rectWidth(block.bounds) <= rectWidth(area) && rectHeight(block.bounds) <= rectHeight(area);
}

function placed(shelves: readonly Shelf[], area: Rect): readonly PlacedBlock[] {
  const spare = Math.max(0, rectHeight(area) - shelves.reduce((sum, shelf) => sum + shelf.height, 0));
  const down = Math.min(WIDEST_GAP, spare / Math.max(1, shelves.length - 1));
  const places: PlacedBlock[] = [];
  let top = area.v1 - (spare - down * (shelves.length - 1)) / 2;
  for (const shelf of shelves) {
    const widths = shelf.blocks.reduce((sum, block) => sum + rectWidth(block.bounds), 0);
    const across = Math.min(WIDEST_GAP, (rectWidth(area) - widths) / Math.max(1, shelf.blocks.length - 1));
    let x = area.u0 + (rectWidth(area) - widths - across * (shelf.blocks.length - 1)) / 2;
    for (const block of shelf.blocks) {
      places.push({ block, by: { x: x - block.bounds.u0, y: top - block.bounds.v1 } });
      x += rectWidth(block.bounds) + across;
    }
    top -= shelf.height + down;
  }
  return places;
}
