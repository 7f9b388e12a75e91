import type { HeatPicture } from "../checks/heatShown.ts";

/** How a material is filled in pictures of sections: a tint, and a hatch where it has one. Tints differ in black and white too. */
export interface MaterialLook {
  /** In the key: "closed-cell sprayed foam". */
  readonly name: string;
  readonly fill: string;
  readonly hatch: "strokes" | "dots" | "none";
}

/** Insulation conducts less than the first, wood less than the second, metal more than the third, W/(m K). */
const INSULATION = 0.06;
const WOOD = 0.2;
const METAL = 5;

const STILL_AIR: MaterialLook = { name: "still air", fill: "#ffffff", hatch: "dots" };
const INSULATIONS: readonly string[] = ["#f6eecf", "#ece0e6"];
const METALS: readonly string[] = ["#4a4a4a"];
const WOODS: readonly string[] = ["#c9a877", "#a3835a", "#e3cfc4", "#a9b79a", "#c7bdd6", "#8d9a80"];
const OTHERS: readonly string[] = ["#d9d9d9", "#9fb0bd", "#8a7f78", "#c3cfd8", "#b5a9a2", "#6f7f8c"];

/** A look for every material of a paper's pictures, by the names that sections have for it; the same material, the same look. */
export function materialLooks(pictures: readonly HeatPicture[]): ReadonlyMap<string, MaterialLook> {
  const byName = new Map<string, MaterialLook>();
  const looks = new Map<string, MaterialLook>();
  for (const [what, conductivity] of pictures.flatMap(({ conductivities }) => Object.entries(conductivities))) {
    const name = keyName(what);
    const tints = tintsOf(conductivity);
    const known = name === STILL_AIR.name ? STILL_AIR : byName.get(name);
    const taken = [...byName.values()].filter(({ fill }) => tints.includes(fill)).length;
    const look = known ?? { name, fill: tints[taken % tints.length] as string, hatch: tints === INSULATIONS ? "strokes" : "none" };
    byName.set(name, look);
    looks.set(what, look);
  }
  return looks;
}

function tintsOf(conductivity: number): readonly string[] {
  if (conductivity < INSULATION) return INSULATIONS;
  if (conductivity < WOOD) return WOODS;
  return conductivity > METAL ? METALS : OTHERS;
}

/** What a material is called whatever face it lies on; enclosed air is one material. */
function keyName(what: string): string {
  return what.startsWith("air ") ? STILL_AIR.name : what.replace(/ on the [^,]*$/, "");
}
