import type { Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import { apply } from "../../working/formula.ts";
import { coatVolume, netArea, packsByVolume } from "../formulas.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { areaOf, byKey, practice, rowField } from "./partQuantities.ts";
import { isOutside } from "../coats.ts";

/** Share of liquid lost: sprayed in a shop hall outside, rolled inside. Common practice. */
const LOST = { outside: 0.3, inside: 0.1 } as const;

/** Coatings by row and side: area of all coats together, litres with what is lost, whole packs. */
export function coatingLines(parts: readonly Part[]): readonly TakeoffLine[] {
  const films = byKey(parts, (part) =>
    part.shape.kind === "film" && part.row?.table === "coatings" ? `${part.row.id}/${sideOf(part)}` : undefined,
  );
  return [...films.entries()].map(([key, group]) => {
    const [id = "", side = ""] = key.split("/");
    const row = catalogue.coatings.get(id);
    const lost = side === "outside" ? LOST.outside : LOST.inside;
    const net = apply(netArea, { A: group.map(areaOf) }, { means: `area of all coats of ${row.what}, ${side}` });
    const k_cov = rowField("coatings", row, "spread", row.spread, { unit: "m2/m3", symbol: "k_cov", means: "spreading rate of one coat" });
    const f_lost = practice(lost, "1", "f_lost", `share of liquid lost ${side}`);
    const V_wet = apply(coatVolume, { A_net: net, k_cov, f_lost });
    const holds = rowField("coatings", row, "pack", row.packVolume, { unit: "m3", symbol: "V_each", means: "one pack" });
    return {
      id: `coatings/${key}`,
      group: "coatings",
      what: `${row.what}, ${side}`,
      row: { table: "coatings", id },
      net,
      also: [V_wet],
      buy: {
        count: apply(packsByVolume, { V_wet, V_each: holds }),
        unit: "pack",
        each: `${(row.packVolume * 1000).toFixed(1)} L`,
        holds,
      },
      parts: group.map((part) => part.id),
    };
  });
}

function sideOf(part: Part): "outside" | "inside" {
  return isOutside(part) ? "outside" : "inside";
}
