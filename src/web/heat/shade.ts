import type { Vec2 } from "../../river/screen.ts";
import type { PictureGrid } from "../../river/sections.ts";
import { toMetres, type Frame } from "./frame.ts";
import { cellTemperature, shareIn, stripAt } from "./gridPoint.ts";

/** Red, green and blue, 0 to 255. */
export type Colour = readonly [number, number, number];

/**
 * The pixels of a picture, so many for each pixel of the frame, row by row from the top: red, green, blue and opacity; nothing
 * where no solid lies.
 */
export function shade(grid: PictureGrid, frame: Frame, width: number, height: number, { levels, colours }: Bands): Uint8ClampedArray<ArrayBuffer> {
  const pixels = new Uint8ClampedArray(width * height * 4);
  const at = (column: number, row: number): Vec2 => toMetres(frame, { x: ((column + 0.5) / width) * frame.width, y: ((row + 0.5) / height) * frame.height });
  const { isTurned } = frame;
  // A column or row of pixels lies in one strip of the grid from end to end.
  const columns = Array.from({ length: width }, (_, column) => (isTurned ? placeIn(grid.ys, at(column, 0).y) : placeIn(grid.xs, at(column, 0).x)));
  for (let row = 0; row < height; row += 1) {
    const across = isTurned ? placeIn(grid.xs, at(0, row).x) : placeIn(grid.ys, at(0, row).y);
    if (across === undefined) continue;
    columns.forEach((along, column) => {
      if (along === undefined) return;
      const [x, y] = isTurned ? [across, along] : [along, across];
      const temperature = cellTemperature(grid, x.strip, y.strip, x.share, y.share);
      if (temperature === undefined) return;
      const colour = colours[bandOf(levels, temperature)] as Colour;
      const pixel = (row * width + column) * 4;
      pixels[pixel] = colour[0];
      pixels[pixel + 1] = colour[1];
      pixels[pixel + 2] = colour[2];
      pixels[pixel + 3] = 255;
    });
  }
  return pixels;
}

/** Temperatures that part the bands, rising, and the colour of each band: one more than there are levels. */
export interface Bands {
  readonly levels: readonly number[];
  readonly colours: readonly Colour[];
}

/** The bands between levels, their colours spread over a scale of colours from cold to warm. */
export function bandsOf(levels: readonly number[], scale: readonly Colour[]): Bands {
  const rising = levels.toSorted((a, b) => a - b);
  return { levels: rising, colours: Array.from({ length: rising.length + 1 }, (_, band) => colourAt(scale, rising.length === 0 ? 0.5 : band / rising.length)) };
}

/** The band that a temperature lies in: 0 below the first level. */
export function bandOf(levels: readonly number[], temperature: number): number {
  const above = levels.findIndex((level) => temperature < level);
  return above < 0 ? levels.length : above;
}

function placeIn(lines: Float64Array, at: number): { readonly strip: number; readonly share: number } | undefined {
  const strip = stripAt(lines, at);
  return strip === undefined ? undefined : { strip, share: shareIn(lines, strip, at) };
}

/** A colour of a scale, 0 its first and 1 its last. */
function colourAt(scale: readonly Colour[], part: number): Colour {
  const place = part * (scale.length - 1);
  const low = Math.min(scale.length - 2, Math.floor(place));
  const [from, to] = [scale[low], scale[low + 1]];
  if (from === undefined || to === undefined) throw new RangeError(`scale: ${scale.length} colours, and there have to be two or more`);
  const mixed = (channel: 0 | 1 | 2): number => Math.round(from[channel] + (place - low) * (to[channel] - from[channel]));
  return [mixed(0), mixed(1), mixed(2)];
}
