import type { Build } from "../../build/build.ts";
import type { Stack, Surface } from "../../build/surface.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { Job } from "../../job/job.ts";
import { pathText } from "../../job/path.ts";
import { layerResistance } from "../../physics/plainLayers.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";

/**
 * Resistances of the plain layers of a face, from outside in: sheet, foam from the inside plane at its least (over the
 * inner flats of the sheet), batts, boards; under the floor foam, bare floor, floor layers. Air between the layers is left
 * out, which errs low.
 */
export function layersOf(build: Build, surface: Surface): readonly Quantity<"m2K/W">[] {
  const { job, box } = build;
  if (surface.id === "floor") {
    const from = fromRow(`boxes/${box.id}`, "floor.thickness", box.floor.source);
    const { foam } = job.floor;
    return [
      ...(foam === undefined ? [] : [sprayed(foam.row, foam.thickness, "under the bare floor", "floor.foam.thickness")]),
      layer(given(box.floor.thickness, "m", "d", "thickness of the bare floor", from), box.floor.material),
      ...job.floor.layers.map(({ row }) => board(row)),
    ];
  }
  const face = job.faces[surface.id as keyof Job["faces"]];
  const leaf = "leafLining" in face ? face.leafLining : undefined;
  return [
    ...sheet(surface),
    ...stackLayers(build, leaf, surface.leafStack, surface.id),
    ...stackLayers(build, face.buildUp, surface.stack, surface.id),
  ];
}

/** Least thickness of the foam on a face: of its own build-up, of the cargo doors' lining, or under the floor. */
export function leastFoam({ job }: Build, { id, stack, leafStack }: Surface): number | undefined {
  if (id === "floor") return job.floor.foam?.thickness;
  const span = stack.foam ?? leafStack?.foam;
  return span === undefined ? undefined : span.to - span.from;
}

/** Thickness of the batts on a face. */
export function battThickness({ stack: { batts } }: Surface): number | undefined {
  return batts === undefined ? undefined : batts.to - batts.from;
}

function sheet({ profile }: Surface): readonly Quantity<"m2K/W">[] {
  if (profile === undefined) return [];
  const from = fromRow(`profiles/${profile.id}`, "thickness", profile.source);
  return [layer(given(profile.thickness, "m", "d", `thickness of ${profile.what}`, from), profile.material)];
}

function stackLayers({ job }: Build, name: string | undefined, stack: Stack | undefined, surface: string): readonly Quantity<"m2K/W">[] {
  if (name === undefined || stack === undefined) return [];
  const buildUp = job.buildUps[name];
  if (buildUp === undefined) return [];
  const { foam, batts } = buildUp;
  const filled =
    foam === undefined || stack.foam === undefined
      ? []
      : [
          sprayed(
            foam.row,
            stack.foam.to - stack.foam.from,
            `over the inner flats, ${surface}`,
            pathText(["buildUps", name, "foam", "thickness"]),
          ),
        ];
  const stuffed = batts === undefined ? [] : [wool(batts.row)];
  return [...filled, ...stuffed, ...buildUp.boards.map(({ row }) => board(row))];
}

function sprayed(row: string, thickness: number, where: string, path: string): Quantity<"m2K/W"> {
  const d = given(thickness, "m", "d", `least thickness of foam, ${where}`, { kind: "job", path });
  return layer(d, catalogue.foams.get(row).material);
}

function wool(id: string): Quantity<"m2K/W"> {
  const row = catalogue.batts.get(id);
  return layer(given(row.thickness, "m", "d", `thickness of ${row.what}`, fromRow(`batts/${id}`, "thickness", row.source)), row.material);
}

function board(id: string): Quantity<"m2K/W"> {
  const row = catalogue.boards.get(id);
  return layer(given(row.thickness, "m", "d", `thickness of ${row.what}`, fromRow(`boards/${id}`, "thickness", row.source)), row.material);
}

function layer(d: Quantity<"m">, material: string): Quantity<"m2K/W"> {
  const row = catalogue.materials.get(material);
  const lambda = given(
    row.conductivity,
    "W/(m K)",
    "lambda",
    `conductivity of ${row.what}`,
    fromRow(`materials/${material}`, "conductivity", row.source),
  );
  return apply(layerResistance, { d, lambda }, { means: `thermal resistance of ${row.what}` });
}
