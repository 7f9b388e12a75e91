import { choiceOf } from "../../job/choices.ts";
import { isList, isObject, type JsonValue } from "../../job/file.ts";
import { parseQuantity } from "../../units/parse.ts";
import type { Steps } from "./edits.ts";

/** A layer of a build-up as it is drawn; depths in m inward from the inside plane of the sheet. */
export interface Layer {
  readonly kind: "foam" | "batts" | "studs" | "furring" | "board" | "paint";
  /** Where its fields stand, below the build-up. */
  readonly steps: Steps;
  readonly what: string;
  /** Undefined where a text cannot be read, or a layer below it cannot. Paint takes no room. */
  readonly from: number | undefined;
  readonly to: number | undefined;
  /** From one bar to the next, and the bar's size along the face; for studs and furring alone. */
  readonly pitch?: number | undefined;
  readonly barWidth?: number | undefined;
  /** True where it comes off again and takes no room. */
  readonly temporary?: boolean;
}

/** A build-up as typed, laid out from the sheet inward. */
export interface LayerStack {
  readonly layers: readonly Layer[];
  /** From the inside plane to the finished face, m; undefined where a text on the way cannot be read. */
  readonly total: number | undefined;
}

/**
 * Lays out the layers of a build-up as it is typed, as far as it can be read: studs on their stand-off with batts between them, furring that stays
 * on the studs, boards on the last of them, or on the foam where there are neither.
 */
export function layerStackOf(buildUp: JsonValue | undefined): LayerStack {
  const fields = isObject(buildUp) ? buildUp : {};
  const foam = foamLayer(fields["foam"]);
  const studs = studLayer(fields["studs"]);
  const batts = battLayer(fields["batts"], studs);
  const carrying = studs !== undefined ? studs.to : foam !== undefined ? foam.to : PLANE;
  const furring = furringLayer(fields["furring"], carrying);
  const boardPlane = furring === undefined || furring.temporary === true ? carrying : furring.to;
  const boards = boardLayers(fields["boards"], boardPlane);
  const last = boards.at(-1);
  const total = last === undefined ? boardPlane : last.to;
  const paints = listOf(fields["paint"]).map((one, index): Layer => {
    const coats = isObject(one) && typeof one["coats"] === "number" ? `${one["coats"]} × ` : "";
    return { kind: "paint", steps: ["paint", index], what: `${coats}${rowWords("coatings", one)}`, from: total, to: total };
  });
  return { layers: [foam, batts, studs, furring, ...boards, ...paints].filter((layer) => layer !== undefined), total };
}

/** Boards laid on each other from a plane. */
function boardLayers(boards: JsonValue | undefined, from: number | undefined): readonly Layer[] {
  const layers: Layer[] = [];
  for (const [index, one] of listOf(boards).entries()) {
    const before = layers.at(-1);
    const start = before === undefined ? from : before.to;
    const to = sum(start, depthOf("boards", one));
    layers.push({ kind: "board", steps: ["boards", index], what: rowWords("boards", one), from: start, to });
  }
  return layers;
}

/** The inside plane of the sheet, from which depths count. */
const PLANE = 0;

function foamLayer(foam: JsonValue | undefined): Layer | undefined {
  if (!isObject(foam)) return undefined;
  return { kind: "foam", steps: ["foam"], what: rowWords("foams", foam), from: PLANE, to: lengthOf(foam["thickness"]) };
}

function studLayer(studs: JsonValue | undefined): Layer | undefined {
  if (!isObject(studs)) return undefined;
  const from = studs["standOff"] === undefined ? PLANE : lengthOf(studs["standOff"]);
  return {
    kind: "studs",
    steps: ["studs"],
    what: rowWords("sections", studs),
    from,
    to: sum(from, depthOf("sections", studs)),
    pitch: lengthOf(studs["pitch"]),
    barWidth: widthOf(studs),
  };
}

/** Flush with the inner surface of the studs. */
function battLayer(batts: JsonValue | undefined, studs: Layer | undefined): Layer | undefined {
  if (!isObject(batts)) return undefined;
  const depth = depthOf("batts", batts);
  const from = studs?.to === undefined || depth === undefined ? undefined : studs.to - depth;
  return { kind: "batts", steps: ["batts"], what: rowWords("batts", batts), from, to: from === undefined ? undefined : studs?.to };
}

function furringLayer(furring: JsonValue | undefined, from: number | undefined): Layer | undefined {
  if (!isObject(furring)) return undefined;
  const temporary = furring["temporary"] === true;
  const what = `${rowWords("sections", furring)}${temporary ? ", comes off again" : ""}`;
  const to = sum(from, depthOf("sections", furring));
  return { kind: "furring", steps: ["furring"], what, from, to, pitch: lengthOf(furring["pitch"]), barWidth: widthOf(furring), temporary };
}

function lengthOf(text: JsonValue | undefined): number | undefined {
  const read = typeof text === "string" ? parseQuantity("length", text) : undefined;
  return read?.ok === true ? read.value : undefined;
}

type Table = "boards" | "sections" | "foams" | "batts" | "coatings";

function rowOf(table: Table, layer: JsonValue) {
  const id = isObject(layer) ? layer["row"] : undefined;
  return typeof id === "string" ? choiceOf(table, id) : undefined;
}

function depthOf(table: "boards" | "sections" | "batts", layer: JsonValue): number | undefined {
  return rowOf(table, layer)?.depth;
}

function widthOf(layer: JsonValue): number | undefined {
  return rowOf("sections", layer)?.width;
}

function rowWords(table: Table, layer: JsonValue): string {
  const row = rowOf(table, layer);
  return row === undefined ? "not in the catalogue" : row.what;
}

function sum(a: number | undefined, b: number | undefined): number | undefined {
  return a === undefined || b === undefined ? undefined : a + b;
}

function listOf(value: JsonValue | undefined): readonly JsonValue[] {
  return isList(value) ? value : [];
}
