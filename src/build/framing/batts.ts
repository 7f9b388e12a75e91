import { catalogue } from "../../catalogue/catalogue.ts";
import { cutRects, polygonArea, polygonBounds } from "../../geometry/polygon.ts";
import { type Rect, rectHeight, rectWidth } from "../../geometry/rect.ts";
import type { PartMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Span } from "../surface.ts";

/** Gaps narrower than this are stuffed with offcuts. */
const NARROWEST = 0.02;

/**
 * Batts of one surface, one part a bay: the frame's field less what stands or opens in it. Measured between flanges; what
 * reaches into the open side of a stud or track is not counted.
 */
export function battParts(id: string, depth: Span, field: Rect, taken: readonly Rect[], maker: PartMaker): readonly Part[] {
  const row = catalogue.batts.get(id);
  return cutRects(field, taken).flatMap((outline) => {
    const rect = polygonBounds(outline);
    if (Math.min(rectWidth(rect), rectHeight(rect)) < NARROWEST) return [];
    const area = polygonArea(outline);
    return [
      maker.make({
        role: "batt",
        what: row.what,
        rect,
        depth,
        shape: { kind: "panel", outline: [outline], area, blank: rect },
        row: { table: "batts", id: row.id },
        material: row.material,
        basis: { by: "area", area, massPerArea: row.massPerArea },
      }),
    ];
  });
}
