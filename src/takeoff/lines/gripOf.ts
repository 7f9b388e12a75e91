import type { Build } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { FastenerRow } from "../../catalogue/rows.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";

/**
 * The shortest fastener of the row's kind whose grip takes the board and the layers under it. The row's own fastener is for
 * a single layer. Where none is long enough the longest is taken, and `reaches` is false.
 */
export function longEnough(build: Build, part: Part, id: string): { readonly fastener: FastenerRow; readonly reaches: boolean } {
  const own = catalogue.fasteners.get(id);
  const kind = id.replace(/-\d+$/, "");
  const through = depthThrough(build, part);
  const kin = catalogue.fasteners.rows
    .filter((row) => row.id.replace(/-\d+$/, "") === kind && row.length >= own.length)
    .sort((a, b) => a.length - b.length);
  const fitting = kin.find(({ grip }) => through <= grip.greatest + SAME_LENGTH);
  return { fastener: fitting ?? kin.at(-1) ?? own, reaches: fitting !== undefined };
}

/** From the board's face to the plane that carries the boards; a board alone where the surface tells no plane. */
function depthThrough(build: Build, part: Part): number {
  const thickness = part.depth.to - part.depth.from;
  const surface = build.surfaces.find(({ id }) => id === part.surface);
  if (surface === undefined || part.role !== "board") return thickness;
  if (surface.kind === "partition") {
    const studs = surface.stack.studs;
    if (studs === undefined) return thickness;
    return part.depth.from >= studs.to - SAME_LENGTH ? part.depth.to - studs.to : studs.from - part.depth.from;
  }
  const { stack, leafStack } = surface;
  const onFraming = part.depth.from >= stack.boardPlane - SAME_LENGTH;
  return part.depth.to - (onFraming || leafStack === undefined ? stack : leafStack).boardPlane;
}
