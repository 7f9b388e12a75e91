import { polygonArea, polygonCentre } from "../geometry/polygon.ts";
import type { Vec3 } from "../geometry/vector.ts";
import { massOn } from "./mass.ts";
import type { MassBasis, Part, Role } from "./part.ts";
import { type Surface, toWorld } from "./surface.ts";

type Wanted = Pick<Part, "role" | "what" | "rect" | "depth" | "shape"> & {
  readonly row?: Part["row"];
  readonly material?: string;
  readonly basis: Exclude<MassBasis, { by: "given" }> | { readonly by: "given"; readonly mass: number };
  readonly of?: string | undefined;
  readonly layer?: number;
  readonly temporary?: boolean;
};

export interface PartMaker {
  readonly make: (wanted: Wanted) => Part;
}

/**
 * Makes parts on one surface, numbering each role from 1 in the order in which they are made. `group` goes into the ids
 * where a surface has several makers: the opening, the item, the leaf.
 */
export function partMaker(surface: Surface, group?: string): PartMaker {
  const place = group === undefined ? surface.id : `${surface.id}/${group}`;
  const counts = new Map<Role, number>();
  return {
    make: (wanted) => {
      const before = counts.get(wanted.role);
      const number = before === undefined ? 1 : before + 1;
      counts.set(wanted.role, number);
      const basis = wanted.basis;
      return {
        id: `${place}/${wanted.role.replaceAll(" ", "-")}/${number}`,
        role: wanted.role,
        what: wanted.what,
        surface: surface.id,
        rect: wanted.rect,
        depth: wanted.depth,
        shape: wanted.shape,
        row: wanted.row,
        material: wanted.material,
        mass: basis.by === "given" ? basis.mass : massOn(basis),
        massBasis: basis.by === "given" ? { by: "given" } : basis,
        centre: centreOf(surface, wanted),
        temporary: wanted.temporary ?? false,
        of: wanted.of,
        layer: wanted.layer,
      };
    },
  };
}

/** Centre of mass: of the true outline where there is one, else of the extent. */
function centreOf(surface: Surface, wanted: Wanted): Vec3 {
  const { rect, depth, shape } = wanted;
  const w = (depth.from + depth.to) / 2;
  if ("outline" in shape && shape.outline.length > 0) {
    let area = 0;
    let u = 0;
    let v = 0;
    for (const polygon of shape.outline) {
      const share = polygonArea(polygon);
      const centre = polygonCentre(polygon);
      area += share;
      u += share * centre.x;
      v += share * centre.y;
    }
    return toWorld(surface, u / area, v / area, w);
  }
  return toWorld(surface, (rect.u0 + rect.u1) / 2, (rect.v0 + rect.v1) / 2, w);
}
