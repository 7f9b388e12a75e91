import type { Pattern } from "./pattern.ts";

/** The lines of a mesh along one axis: the lines that the section asks for, and those that divide the intervals between. */
export interface Lines {
  readonly at: Float64Array;
  /** Index in `at` of each line that the section asks for. */
  readonly breaks: Int32Array;
}

export interface MeshLines {
  readonly x: Lines;
  readonly y: Lines;
}

/** Each cell of the first mesh is at most about this much wider than its neighbour. */
const GROWTH = 2.5;
/** A cell beside a line through a vertex is at most this part of the window's lesser side. */
const PARTS_OF_WINDOW = 24;

/**
 * Lines of the first mesh: narrow cells beside the lines through vertices, wide ones between. Intervals under a slope are
 * divided evenly, and into the same number as those beside it, so that the slope stays on diagonals.
 */
export function firstLines(pattern: Pattern): MeshLines {
  const most = Math.min(extentOf(pattern.xs), extentOf(pattern.ys)) / PARTS_OF_WINDOW;
  const sizesX = sizesBesideBends(pattern.xs, pattern.bendsX, most);
  const sizesY = sizesBesideBends(pattern.ys, pattern.bendsY, most);
  const even = evenCounts(pattern, sizesX, sizesY);
  return { x: divide(pattern.xs, sizesX, even.x), y: divide(pattern.ys, sizesY, even.y) };
}

/** The same lines with every interval halved. */
export function halved(lines: Lines): Lines {
  const at = new Float64Array(2 * lines.at.length - 1);
  lines.at.forEach((line, index) => {
    at[2 * index] = line;
    if (index > 0) at[2 * index - 1] = ((lines.at[index - 1] as number) + line) / 2;
  });
  return { at, breaks: lines.breaks.map((index) => 2 * index) };
}

/** For each interval under a slope the number of cells that it is divided into; 0 where it may be graded. */
function evenCounts({ xs, ys, diagonal }: Pattern, sizesX: Float64Array, sizesY: Float64Array): { readonly x: Int32Array; readonly y: Int32Array } {
  const columns = xs.length - 1;
  const rows = ys.length - 1;
  const group = Int32Array.from({ length: columns + rows }, (_, at) => at);
  const root = (at: number): number => {
    let top = at;
    while (group[top] !== top) top = group[top] as number;
    return top;
  };
  const most = new Int32Array(columns + rows);
  diagonal.forEach((rises, cell) => {
    if (rises === 0) return;
    const i = cell % columns;
    const j = (cell - i) / columns;
    const wanted = Math.max(cellsIn(xs, sizesX, i), cellsIn(ys, sizesY, j), most[root(i)] as number, most[root(columns + j)] as number);
    group[root(i)] = root(columns + j);
    most[root(i)] = wanted;
  });
  const counts = Int32Array.from(group, (_, at) => most[root(at)] as number);
  return { x: counts.slice(0, columns), y: counts.slice(columns) };
}

function cellsIn(lines: Float64Array, sizes: Float64Array, interval: number): number {
  return gradedParts(widthOf(lines, interval), sizes[interval] as number, sizes[interval + 1] as number).length + 1;
}

function extentOf(lines: Float64Array): number {
  return (lines[lines.length - 1] as number) - (lines[0] as number);
}

function widthOf(lines: Float64Array, interval: number): number {
  return (lines[interval + 1] as number) - (lines[interval] as number);
}

function divide(lines: Float64Array, wanted: Float64Array, even: Int32Array): Lines {
  const sizes = wanted.slice();
  even.forEach((count, interval) => {
    if (count === 0) return;
    for (const line of [interval, interval + 1]) sizes[line] = Math.min(sizes[line] as number, widthOf(lines, interval) / count);
  });
  limitGrowth(lines, sizes);
  const at = [lines[0] as number];
  const breaks = [0];
  even.forEach((count, interval) => {
    const from = lines[interval] as number;
    const length = widthOf(lines, interval);
    const parts = count > 0 ? evenParts(count) : gradedParts(length, sizes[interval] as number, sizes[interval + 1] as number);
    for (const part of parts) at.push(from + part * length);
    at.push(lines[interval + 1] as number);
    breaks.push(at.length - 1);
  });
  return { at: Float64Array.from(at), breaks: Int32Array.from(breaks) };
}

/** The width that cells should have beside each line: the way to the next vertex or less, and no wider than finer cells nearby allow. */
function sizesBesideBends(lines: Float64Array, bends: Uint8Array, most: number): Float64Array {
  const sizes = new Float64Array(lines.length).fill(Number.POSITIVE_INFINITY);
  let last = 0;
  bends.forEach((isBend, line) => {
    if (isBend === 0 || line === 0) return;
    const size = Math.min(most, (lines[line] as number) - (lines[last] as number));
    sizes[last] = Math.min(sizes[last] as number, size);
    sizes[line] = size;
    last = line;
  });
  limitGrowth(lines, sizes);
  return sizes;
}

function limitGrowth(lines: Float64Array, sizes: Float64Array): void {
  const grow = (from: number, to: number): void => {
    const distance = Math.abs((lines[to] as number) - (lines[from] as number));
    sizes[to] = Math.min(sizes[to] as number, (sizes[from] as number) + (GROWTH - 1) * distance);
  };
  for (let line = 1; line < lines.length; line += 1) grow(line - 1, line);
  for (let line = lines.length - 1; line > 0; line -= 1) grow(line, line - 1);
}

function evenParts(count: number): readonly number[] {
  return Array.from({ length: count - 1 }, (_, at) => (at + 1) / count);
}

/** Places between 0 and 1 that divide a length into cells of the widths wanted at its ends, growing toward the middle. */
function gradedParts(length: number, atStart: number, atEnd: number): readonly number[] {
  const fromStart: number[] = [];
  const fromEnd: number[] = [];
  let start = atStart;
  let end = atEnd;
  let sum = 0;
  while (sum < length * (1 - ALIKE)) {
    // Both sides at once where they want the same, so that a mirrored section gets the mirrored mesh.
    const alike = Math.abs(start - end) <= ALIKE * start;
    if (alike && sum + start >= length * (1 - ALIKE)) {
      fromStart.push(start);
      break;
    }
    const takeStart = alike || start < end;
    const takeEnd = alike || end < start;
    if (takeStart) {
      fromStart.push(start);
      sum += start;
      start *= GROWTH;
    }
    if (takeEnd) {
      fromEnd.push(end);
      sum += end;
      end *= GROWTH;
    }
  }
  const widths = [...fromStart, ...fromEnd.reverse()];
  const whole = widths.reduce((total, width) => total + width, 0);
  let reached = 0;
  return widths.slice(0, -1).map((width) => (reached += width) / whole);
}

/** Relative difference of two widths that are the same but for rounding. */
const ALIKE = 1e-9;
