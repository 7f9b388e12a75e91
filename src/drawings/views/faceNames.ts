import type { Build, PlacedOpening } from "../../build/build.ts";
import type { Surface } from "../../build/surface.ts";

/** Lines on a surface that places are measured from: the job's own origin first, the other one second. */
export interface Datums {
  readonly u: readonly [Datum, Datum];
  readonly v: readonly [Datum, Datum];
}

export interface Datum {
  readonly at: number;
  readonly from: string;
}

/**
 * Both origins of a surface as the welder or the carpenter finds them on the box. On roof and floor the other origin is
 * the inside plane, or the outside of the box where one works from outside.
 */
export function datumsOf(surface: Surface, work: "inside" | "outside" = "inside"): Datums {
  const { panel, inside, outside } = surface;
  const walls = (start: string, end: string): Datums["u"] => [
    { at: 0, from: `from post, ${start}` },
    { at: surface.id === "doorEnd" ? outside.u0 + outside.u1 : panel.u1, from: `from post, ${end}` },
  ];
  const up: Datums["v"] = [
    { at: 0, from: "up from bare floor" },
    { at: panel.v1, from: "down from top rail" },
  ];
  switch (surface.id) {
    case "left":
      return { u: walls("blind end", "door end"), v: up };
    case "right":
      return { u: walls("door end", "blind end"), v: up };
    case "blindEnd":
      return { u: walls("right wall", "left wall"), v: up };
    case "doorEnd":
      return { u: walls("left wall", "right wall"), v: up };
    case "roof":
    case "floor":
      return {
        u: [{ at: 0, from: "from inside, blind end" }, { at: { inside, outside }[work].u1, from: `from ${work}, door end` }],
        v: [{ at: 0, from: "from inside, left wall" }, { at: { inside, outside }[work].v1, from: `from ${work}, right wall` }],
      };
    default:
      return {
        u: [{ at: inside.u0, from: "from finished left wall" }, { at: inside.u1, from: "from finished right wall" }],
        v: [{ at: 0, from: "up from bare floor" }, { at: inside.v1, from: "down from finished ceiling" }],
      };
  }
}

export function openingsOn(build: Build, surface: Surface): readonly PlacedOpening[] {
  return build.openings.filter((placed) => placed.surface.id === surface.id);
}

/** "Left wall" of "left wall". */
export function capital(name: string): string {
  return name.slice(0, 1).toUpperCase() + name.slice(1);
}
