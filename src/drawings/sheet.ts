import type { Build } from "../build/build.ts";
import type { Rect } from "../geometry/rect.ts";
import { rectWidth } from "../geometry/rect.ts";
import type { Job } from "../job/job.ts";
import type { Drawing } from "./drawing.ts";
import type { LaidSheet } from "./sheet/laidSheet.ts";
import { LAST_RATIOS, papersFor, ratiosFor, scaleText } from "./sheet/paper.ts";
import type { Paper } from "./sheet/paper.ts";
import { column, fits, levelled, shelve } from "./sheet/shelves.ts";
import type { Block, PlacedBlock } from "./sheet/shelves.ts";
import { tablesOnPaper } from "./sheet/table.ts";
import { titleBlock } from "./sheet/titleBlock.ts";
import { moved, viewOnPaper } from "./sheet/viewOnPaper.ts";
import { sheetSvg } from "./svg.ts";

/** A finished sheet; width and height in metres on paper. */
export interface Sheet {
  readonly number: string;
  readonly title: string;
  /** Name of the paper: "A3", "11 × 17 in". */
  readonly paper: string;
  readonly width: number;
  readonly height: number;
  /** "1:50"; "none" on a sheet of tables. */
  readonly scale: string;
  readonly svg: string;
}

/** How far further sheets weigh against a larger scale: twice the scale is worth a second sheet. */
const MORE_SHEETS = 0.9;
/** A view at 1 : this is read without strain: a still larger scale is worth no further sheet. */
const LEGIBLE = 25;

/** Widths that a column of tables and notes may take at the right of a sheet, metres; the widest that leaves room is taken. */
const COLUMNS: readonly number[] = [0.15, 0.13, 0.11, 0.09, 0.07, 0.055];

/** Every drawing on paper, as SVG, in order. */
export function sheets(build: Build, drawings: readonly Drawing[]): readonly Sheet[] {
  return layOut(build.job, drawings).map((laid) => {
    const { number, title, paper, width, height, ratio } = laid;
    const scale = ratio === undefined ? "none" : scaleText(ratio, build.job.units);
    return { number, title, paper, width, height, scale, svg: sheetSvg(laid) };
  });
}

/**
 * Lays drawings out on paper at the largest usual scale at which all of their views, dimensions and tables fit; over
 * further sheets where that lets the scale be twice as large.
 * A drawing that fits no usual sheet has a larger one. Throws RangeError where even the largest is too small.
 */
export function layOut(job: Job, drawings: readonly Drawing[]): readonly LaidSheet[] {
  const pages = drawings.flatMap((drawing) => {
    const { ratio, paper, pages } = arrange(drawing, job);
    return pages.map((blocks, page) => ({ drawing, ratio, paper, blocks, page, of: pages.length }));
  });
  return pages.map(({ drawing, ratio, paper, blocks, page, of }, index) => {
    const facts = { ratio, sheet: index + 1, sheets: pages.length };
    const number = of === 1 ? drawing.number : `${drawing.number}.${page + 1}`;
    const { width, height, frame } = paper;
    const drawn = blocks.flatMap(({ block, by }) => block.shapes.map((shape) => moved(shape, by)));
    const shapes = [...drawn, ...titleBlock(job, { ...drawing, number }, paper, facts)];
    return { number, title: drawing.title, paper: paper.name, width, height, frame, ratio, shapes };
  });
}

/** The scale 1 : ratio that a drawing is laid out at on its paper; undefined where it has no views. */
export function ratioOf(drawing: Drawing, job: Job): number | undefined {
  return arrange(drawing, job).ratio;
}

interface Arrangement {
  readonly paper: Paper;
  readonly ratio: number | undefined;
  readonly pages: readonly (readonly PlacedBlock[])[];
}

/** On the first paper of the shop's that takes the drawing. */
function arrange(drawing: Drawing, job: Job): Arrangement {
  const papers = papersFor(job.units, job.codes.basis);
  for (const paper of papers) {
    const arrangement = arrangeOn(paper, drawing, ratiosFor(job.units));
    if (arrangement !== undefined) return arrangement;
  }
  const last = papers.slice(-1).flatMap((paper) => arrangeOn(paper, drawing, LAST_RATIOS) ?? [])[0];
  if (last !== undefined) return last;
  throw new RangeError(`drawing ${drawing.number} fits no paper`);
}

function arrangeOn(paper: Paper, drawing: Drawing, ratios: readonly number[]): Arrangement | undefined {
  const tables = wideTables(drawing, paper.area);
  if (!tables.every((table) => fits(table, paper.area))) return undefined;
  if (drawing.views.length === 0) return { paper, ratio: undefined, pages: shelve(tables, paper.area) };
  let best: { readonly worth: number; readonly arrangement: Arrangement } | undefined;
  for (const ratio of ratios) {
    const views = drawing.views.map((view) => viewOnPaper(view, ratio));
    if (!views.every((view) => fits(view, paper.area))) continue;
    const pages = fewest([shelve([...views, ...tables], paper.area), ...besideTables(views, drawing, paper.area)]);
    const worth = Math.max(ratio, LEGIBLE) * pages.length ** MORE_SHEETS;
    if (best === undefined || worth < best.worth) best = { worth, arrangement: { paper, ratio, pages } };
    if (pages.length === 1) break;
  }
  return best?.arrangement;
}

/**
 * Pages with the tables in a column at the right of the first one, for each width of column that leaves room for the views.
 * Where each view has its table, the two start at one level.
 */
function besideTables(views: readonly Block[], drawing: Drawing, area: Rect): readonly Arrangement["pages"][] {
  return COLUMNS.flatMap((width) => {
    const tables = tableBlocks(drawing, area, width, false);
    const stack = tables.length === 0 || tables.some(({ bounds }) => rectWidth(bounds) > width) ? undefined : column(tables, area);
    if (stack === undefined || !views.every((view) => fits(view, stack.rest))) return [];
    const [page = [], ...more] = shelve(views, stack.rest);
    const paired = drawing.tables.length === views.length && more.length === 0;
    const levels = paired ? page.map(({ block, by }) => block.bounds.v1 + by.y) : [];
    return [[[...page, ...levelled(stack.places, levels, area.v0)], ...more]];
  });
}

/** Of the arrangements with the fewest pages, the first with its tables in a column, or else the one with them underneath. */
function fewest(all: readonly Arrangement["pages"][]): Arrangement["pages"] {
  const least = Math.min(...all.map((pages) => pages.length));
  const [first] = all.slice(1).filter((pages) => pages.length === least);
  const chosen = first ?? all[0];
  if (chosen === undefined) throw new RangeError("nothing to arrange");
  return chosen;
}

/** Tables and notes as wide as the sheet allows; words are broken only where the sheet is too narrow for them. */
function wideTables(drawing: Drawing, area: Rect): readonly Block[] {
  const whole = tableBlocks(drawing, area, rectWidth(area), false);
  return whole.every((table) => fits(table, area)) ? whole : tableBlocks(drawing, area, rectWidth(area), true);
}

/** Tables and notes, no wider than `width` where their words allow it. */
function tableBlocks(drawing: Drawing, area: Rect, width: number, broken: boolean): readonly Block[] {
  const notes = { title: "Notes", columns: ["No.", "Note"], rows: drawing.notes.map((note, index) => [String(index + 1), note]) };
  return [...drawing.tables, ...(drawing.notes.length === 0 ? [] : [notes])]
    .filter((table) => table.rows.length > 0)
    .flatMap((table) => tablesOnPaper(table, width, area.v1 - area.v0, broken))
    .map((table) => ({ shapes: table.shapes, bounds: { u0: 0, u1: table.width, v0: -table.height, v1: 0 } }));
}
