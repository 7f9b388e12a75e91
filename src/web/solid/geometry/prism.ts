import type { Polygon, Rect, Span, Surface, Vec2 } from "../../../river/screen.ts";
import { type Corner, type Form, formMaker } from "./form.ts";
import { triangulate } from "./triangulate.ts";

/** Outlines on a surface, with their holes, drawn out over a depth. */
export function prismForm(surface: Surface, outline: readonly Polygon[], depth: Span): Form {
  const maker = formMaker(surface);
  const at = ({ x, y }: Vec2, w: number): Corner => [x, y, w];
  for (const polygon of outline) {
    for (const [a, b, c] of triangulate(polygon)) {
      maker.triangle(at(a, depth.to), at(b, depth.to), at(c, depth.to));
      maker.triangle(at(a, depth.from), at(c, depth.from), at(b, depth.from));
    }
    for (const ring of [polygon.outer, ...polygon.holes]) {
      for (const [index, a] of ring.entries()) {
        const b = ring[(index + 1) % ring.length] as Vec2;
        maker.quad(at(a, depth.from), at(b, depth.from), at(b, depth.to), at(a, depth.to));
        maker.edge(at(a, depth.from), at(b, depth.from));
        maker.edge(at(a, depth.to), at(b, depth.to));
        maker.edge(at(a, depth.from), at(a, depth.to));
      }
    }
  }
  return maker.form();
}

/** A block over a rectangle of a surface. */
export function blockForm(surface: Surface, { u0, u1, v0, v1 }: Rect, depth: Span): Form {
  const outer = [{ x: u0, y: v0 }, { x: u1, y: v0 }, { x: u1, y: v1 }, { x: u0, y: v1 }];
  return prismForm(surface, [{ outer, holes: [] }], depth);
}
