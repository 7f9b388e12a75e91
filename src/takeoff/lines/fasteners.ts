import type { Build } from "../../build/build.ts";
import type { Part, Role } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoardRow, FastenerRow } from "../../catalogue/rows.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { boardScrews, endFasteners, netPieces, packsByPieces, rowOfFasteners } from "../formulas.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { longEnough } from "./gripOf.ts";
import { lengthOf, practice, rowField } from "./partQuantities.ts";
import { supportOf } from "./supportOf.ts";

/** Share of fasteners lost or spoiled: common practice. */
const SPARE = 0.05;

/** Fasteners by pattern: boards by edge and field spacing, framing by bar end, tracks, furring, trim and frames by row. */
export function fastenerLines(build: Build, parts: readonly Part[]): readonly TakeoffLine[] {
  const uses = new Map<string, Use[]>();
  for (const part of parts) {
    const use = boardUse(build, part) ?? barUse(build, part) ?? articleUse(part);
    if (use === undefined) continue;
    const same = uses.get(use.fastener.id);
    if (same === undefined) uses.set(use.fastener.id, [use]);
    else same.push(use);
  }
  return [...uses.values()].map(lineOf);
}

interface Use {
  readonly fastener: FastenerRow;
  readonly count: Quantity<"1">;
  readonly part: string;
  /** False where no fastener of its kind reaches through all layers. */
  readonly reaches: boolean;
}

function lineOf(uses: readonly Use[]): TakeoffLine {
  const [{ fastener } = { fastener: undefined }] = uses;
  if (fastener === undefined) throw new RangeError("a fastener line without uses");
  const net = apply(netPieces, { n: uses.map(({ count }) => count) }, { means: `${fastener.what}, by pattern` });
  const n_each = rowField("fasteners", fastener, "pack", fastener.pack, { unit: "1", symbol: "n_each", means: "pieces in one pack" });
  const f_more = practice(SPARE, "1", "f_more", "spare fasteners");
  const short = uses.filter(({ reaches }) => !reaches).length;
  return {
    id: `fasteners/${fastener.id}`,
    group: "fasteners",
    what: short === 0 ? fastener.what : `${fastener.what}; too short for ${short} pieces in several layers: choose a longer one`,
    row: { table: "fasteners", id: fastener.id },
    net,
    also: [],
    buy: { count: apply(packsByPieces, { n_net: net, f_more, n_each }), unit: "pack", each: `${fastener.pack} pieces` },
    parts: uses.map(({ part }) => part),
  };
}

function boardUse(build: Build, part: Part): Use | undefined {
  if (part.shape.kind !== "panel" || part.row?.table !== "boards") return undefined;
  const row = catalogue.boards.get(part.row.id);
  if (row.fixing === null) return undefined;
  const ofRow = part.role === "floor board" && row.kind === "wood panel" ? WOOD_ON_FLOOR : row.fixing.fastener;
  const { fastener, reaches } = longEnough(build, part, ofRow);
  return { fastener, reaches, part: part.id, count: boardCount(build, part, row, row.fixing) };
}

/** The box's floor under a wood panel is wood, not steel. */
const WOOD_ON_FLOOR = "screw-floor-50";

function boardCount(build: Build, part: Part, row: BoardRow, fixing: NonNullable<BoardRow["fixing"]>): Quantity<"1"> {
  const support = supportOf(build, part, fixing.field);
  const sides = { u: rectWidth(part.rect), v: rectHeight(part.rect) };
  const from = { kind: "part", id: part.id, field: "extent" } as const;
  const b_p = given(support.runs === "v" ? sides.u : sides.v, "m", "b_p", `size of ${part.what} across its supports`, from);
  const h_p = given(support.runs === "v" ? sides.v : sides.u, "m", "h_p", `size of ${part.what} along its supports`, from);
  const s_edge = rowField("boards", row, "edge spacing", fixing.edge, { unit: "m", symbol: "s_edge", means: "spacing at edges" });
  const s_field = rowField("boards", row, "field spacing", fixing.field, { unit: "m", symbol: "s_field", means: "spacing in the field" });
  return apply(boardScrews, { b_p, h_p, s_edge, s_field, s_stud: support.pitch }, { means: `fasteners of ${part.what}` });
}

interface Pattern {
  readonly fastener: string;
  /** Fasteners side by side. */
  readonly abreast: number;
  /** Along the bar, metres; at its ends alone where undefined. */
  readonly spacing?: number;
}

/** Common practice of light steel framing; the code and the engineer in charge may ask for more. */
const PATTERNS: Partial<Readonly<Record<Role, Pattern>>> = {
  stud: { fastener: "screw-wafer-13", abreast: 2 },
  "jamb stud": { fastener: "screw-wafer-13", abreast: 2 },
  "cripple stud": { fastener: "screw-wafer-13", abreast: 2 },
  header: { fastener: "screw-wafer-13", abreast: 2 },
  sill: { fastener: "screw-wafer-13", abreast: 2 },
  blocking: { fastener: "screw-wafer-13", abreast: 2 },
  track: { fastener: "clip-anchor", abreast: 1, spacing: 0.6 },
  "corner angle": { fastener: "screw-wafer-13", abreast: 1, spacing: 0.3 },
  trim: { fastener: "screw-wafer-13", abreast: 1, spacing: 0.2 },
};

function barUse(build: Build, part: Part): Use | undefined {
  if (part.shape.kind !== "bar") return undefined;
  const n = (abreast: number): Quantity<"1"> => practice(abreast, "1", "n_abreast", "fasteners side by side");
  if (part.role === "furring") {
    const fastener = catalogue.fasteners.get("screw-wafer-13");
    const { pitch } = supportOf(build, part, FURRING_SPACING);
    const count = apply(rowOfFasteners, { L: lengthOf(part), s_row: pitch, n_abreast: n(2) }, { means: `fasteners of ${part.what}` });
    return { fastener, count, part: part.id, reaches: true };
  }
  const pattern = PATTERNS[part.role];
  if (pattern === undefined) return undefined;
  const n_abreast = n(pattern.abreast);
  const means = `fasteners of ${part.what}`;
  const count =
    pattern.spacing === undefined
      ? apply(endFasteners, { n_abreast }, { means })
      : apply(rowOfFasteners, { L: lengthOf(part), s_row: practice(pattern.spacing, "m", "s_row", "spacing along the bar"), n_abreast }, { means });
  return { fastener: catalogue.fasteners.get(pattern.fastener), count, part: part.id, reaches: true };
}

/** Spacing of furring clips where no studs carry it. */
const FURRING_SPACING = 0.6;

/** Articles in a steel opening frame: self-drilling screws round the flange. */
const ARTICLE_SPACING = 0.3;

function articleUse(part: Part): Use | undefined {
  if (part.role !== "article" || part.row?.table !== "articles") return undefined;
  const row = catalogue.articles.get(part.row.id);
  if (row.rough === null) return undefined;
  const around = 2 * (row.rough.width + row.rough.height);
  const L = rowField("articles", row, "rough opening", around, { unit: "m", symbol: "L", means: `length round ${row.what}` });
  const s_row = practice(ARTICLE_SPACING, "m", "s_row", "spacing round the frame");
  const n_abreast = practice(1, "1", "n_abreast", "fasteners side by side");
  const count = apply(rowOfFasteners, { L, s_row, n_abreast }, { means: `fasteners of ${part.what}` });
  return { fastener: catalogue.fasteners.get("screw-hex-25"), count, part: part.id, reaches: true };
}
