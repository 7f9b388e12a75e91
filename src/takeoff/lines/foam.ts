import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { boardFeet, foamPasses, foamSets, netVolume } from "../formulas.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { byKey, practice, rowField } from "./partQuantities.ts";

/** Share of foam lost to overspray, trimming and drums that are never quite empty: common practice. */
const FOAM_MORE = 0.1;

/** Sprayed foam by row: volume in place with the profile's troughs, board feet, passes of the thickest face, sets of drums. */
export function foamLines(parts: readonly Part[]): readonly TakeoffLine[] {
  const foams = byKey(parts, (part) => (part.shape.kind === "fill" && part.row?.table === "foams" ? part.row.id : undefined));
  return [...foams.entries()].map(([id, group]) => {
    const row = catalogue.foams.get(id);
    const net = apply(netVolume, { V: group.map(volumeOf) }, { means: `volume of ${row.what} in place` });
    const f_more = practice(FOAM_MORE, "1", "f_more", "more foam for overspray, trimming and what stays in the drums");
    const holds = rowField("foams", row, "set yield", row.setYield, { unit: "m3", symbol: "V_each", means: "yield of one set" });
    const passes = group.map(passesOf).reduce((most, one) => (one.value > most.value ? one : most));
    return {
      id: `foams/${id}`,
      group: "foam",
      what: row.what,
      row: { table: "foams", id },
      net,
      also: [apply(boardFeet, { V_net: net }), passes],
      buy: { count: apply(foamSets, { V_net: net, f_more, V_each: holds }), unit: "set", each: "set of two drums", holds },
      parts: group.map((part) => part.id),
    };
  });
}

/** Passes of one face: foam at its deepest, in the troughs where it fills them, over the greatest pass of the foam's row. */
export function passesOf(part: Part): Quantity<"1"> {
  if (part.shape.kind !== "fill" || part.row === undefined) throw new RangeError(`part ${part.id} is no foam`);
  const { troughs, volume, area } = part.shape;
  const row = catalogue.foams.get(part.row.id);
  const deepest = troughs > 0 ? part.depth.to - part.depth.from : volume / area;
  const d = given(deepest, "m", "d", `greatest depth of ${part.what}`, { kind: "part", id: part.id, field: "depth" });
  const d_pass = rowField("foams", row, "greatest pass", row.passThickness.greatest, { unit: "m", symbol: "d_pass", means: "thickest pass" });
  return apply(foamPasses, { d, d_pass }, { means: `passes of foam on ${part.surface}` });
}

function volumeOf(part: Part): Quantity<"m3"> {
  if (part.shape.kind !== "fill") throw new RangeError(`part ${part.id} is no filling`);
  return given(part.shape.volume, "m3", "V", `volume of ${part.what}`, { kind: "part", id: part.id, field: "volume" });
}
