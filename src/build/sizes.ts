import { catalogue } from "../catalogue/catalogue.ts";
import type { BoxRow } from "../catalogue/rows.ts";
import type { FaceId, Job } from "../job/job.ts";
import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import type { Build } from "./build.ts";
import type { Part } from "./part.ts";
import { clearBetween, extent, layersDepth } from "./sizeFormulas.ts";

/** Length, width and height left between the finished faces of the box, partitions left out of account. */
export function clearSizeWorking({ job, box }: Pick<Build, "job" | "box">): readonly Quantity<"m">[] {
  return [
    between(job, box, "length", "blindEnd", "doorEnd"),
    between(job, box, "width", "left", "right"),
    between(job, box, "height", "floor", "roof"),
  ];
}

/** A part's size along, up and inward on its surface. */
export function partSizeWorking({ id, what, rect, depth }: Part): readonly Quantity<"m">[] {
  const size = (axis: string, from: number, to: number): Quantity<"m"> => {
    const edge = (symbol: string, value: number, word: string) =>
      given(value, "m", symbol, `${what}: ${word} ${axis}`, { kind: "part", id, field: `${word} ${axis}` });
    return apply(extent, { x_from: edge("x_from", from, "from"), x_to: edge("x_to", to, "to") }, { means: `${what}, ${axis}` });
  };
  return [size("along", rect.u0, rect.u1), size("up", rect.v0, rect.v1), size("inward", depth.from, depth.to)];
}

function between(job: Job, box: BoxRow, size: "length" | "width" | "height", one: FaceId, other: FaceId): Quantity<"m"> {
  const { outside, insets } = box;
  const row = { kind: "catalogue", row: `boxes/${box.id}` } as const;
  const L_outside = given(outside[size], "m", "L_outside", `outside ${size} of the box`, { ...row, field: `outside.${size}`, source: outside.source });
  const inset = (face: FaceId): Quantity<"m"> =>
    given(insets[face], "m", "d_inset", `from the outside to the inside plane, ${WORDS[face]}`, { ...row, field: `insets.${face}`, source: insets.source });
  const layers = (face: FaceId): Quantity<"m"> =>
    apply(layersDepth, { t_layer: layersOn(job, face) }, { means: `layers on the ${WORDS[face]}, to the finished face` });
  return apply(
    clearBetween,
    { L_outside, d_inset_1: inset(one), d_inset_2: inset(other), d_layers_1: layers(one), d_layers_2: layers(other) },
    { means: `clear ${size} between finished faces` },
  );
}

const WORDS: Readonly<Record<FaceId, string>> = {
  left: "left wall", right: "right wall", blindEnd: "blind end", doorEnd: "door end", roof: "roof", floor: "floor",
};

/** What stands one on another from the inside plane to the finished face; at the door end the leaves' lining comes first. */
function layersOn(job: Job, face: FaceId): readonly Quantity<"m">[] {
  // A symbol for each face, so that a reader can tell whose layers they are.
  const symbol = `t_${face}`;
  if (face === "floor") return job.floor.layers.map(({ row }) => board(row, symbol));
  const names = face === "doorEnd" ? [job.faces.doorEnd.leafLining, job.faces.doorEnd.buildUp] : [job.faces[face].buildUp];
  return names.flatMap((name) => (name === undefined ? [] : layersIn(job, name, symbol)));
}

/** Studs stand beside the foam, on their own distance from the sheet: the foam counts only where there are none. */
function layersIn(job: Job, name: string, symbol: string): readonly Quantity<"m">[] {
  const buildUp = job.buildUps[name];
  if (buildUp === undefined) throw new RangeError(`no build-up named ${name}`);
  const { foam, studs, furring, boards } = buildUp;
  const typed = (value: number, field: string, means: string) => given(value, "m", symbol, means, { kind: "job", path: `buildUps["${name}"].${field}` });
  const carried =
    studs !== undefined
      ? [typed(studs.standOff, "studs.standOff", "studs off the inside plane"), section(studs.row, symbol, "depth of the studs")]
      : foam !== undefined
        ? [typed(foam.thickness, "foam.thickness", "thickness of the foam")]
        : [];
  const onThem = furring === undefined || furring.temporary ? [] : [section(furring.row, symbol, "depth of the furring")];
  return [...carried, ...onThem, ...boards.map(({ row }) => board(row, symbol))];
}

function section(id: string, symbol: string, means: string): Quantity<"m"> {
  const { depth, source } = catalogue.sections.get(id);
  return given(depth, "m", symbol, means, { kind: "catalogue", row: `sections/${id}`, field: "depth", source });
}

function board(id: string, symbol: string): Quantity<"m"> {
  const { thickness, source, what } = catalogue.boards.get(id);
  return given(thickness, "m", symbol, `thickness: ${what}`, { kind: "catalogue", row: `boards/${id}`, field: "thickness", source });
}
