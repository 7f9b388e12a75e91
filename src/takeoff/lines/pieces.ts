import { type Build, tareOf } from "../../build/build.ts";
import { isBoxPart, type Part } from "../../build/part.ts";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { Job } from "../../job/job.ts";
import { given, type Given } from "../../working/quantity.ts";
import type { TakeoffLine } from "../takeoff.ts";
import { byKey, firstOf, piecesOf } from "./partQuantities.ts";

/** The box as bought: one line for all of its parts. */
export function boxLine(build: Build): TakeoffLine {
  const { id, mass } = build.box;
  const from: Given =
    build.job.box.tare === undefined
      ? { kind: "catalogue", row: `boxes ${id}`, field: "tare", source: mass.source }
      : { kind: "job", path: "box.tare" };
  const net = given(tareOf(build), "kg", "m", "tare of the box", from);
  const count = given(1, "1", "n_buy", "boxes", { kind: "job", path: "box" });
  return {
    id: `boxes/${id}`,
    group: "box",
    what: `${build.box.what}, ${build.job.box.condition}`,
    row: { table: "boxes", id },
    net,
    also: [],
    buy: { count, unit: "box", each: "one" },
    parts: build.parts.filter(isBoxPart).map((part) => part.id),
  };
}

/** Bought articles by row. */
export function articleLines(parts: readonly Part[]): readonly TakeoffLine[] {
  const articles = byKey(parts, (part) => (part.row?.table === "articles" ? part.row.id : undefined));
  return [...articles].map(([id, group]) => {
    const row = catalogue.articles.get(id);
    const count = piecesOf(group, `pieces of ${row.what}`);
    return {
      id: `articles/${id}`,
      group: group.every((part) => part.role === "item") ? "items" : "openings",
      what: row.what,
      row: { table: "articles", id },
      net: count,
      also: [],
      buy: { count, unit: "piece", each: "one" },
      parts: group.map((part) => part.id),
    };
  });
}

/** Articles that go along with the box and are placed on site. */
export function suppliedLines({ supplied }: Job): readonly TakeoffLine[] {
  return supplied.map(({ article, count }, index) => {
    const row = catalogue.articles.get(article);
    const pieces = given(count, "1", "n_buy", `pieces of ${row.what}`, { kind: "job", path: `supplied[${index}].count` });
    return {
      id: `supplied/${index + 1}/${article}`,
      group: "items",
      what: `${row.what}, supplied loose`,
      row: { table: "articles", id: article },
      net: pieces,
      also: [],
      buy: { count: pieces, unit: "piece", each: "one" },
      parts: [],
    };
  });
}

/** Fit-out items that the job alone describes, by their words. */
export function itemLines(parts: readonly Part[]): readonly TakeoffLine[] {
  const items = byKey(parts, (part) => (part.role === "item" && part.row === undefined ? part.what : undefined));
  return [...items].map(([what, group]) => {
    const count = piecesOf(group, `pieces of ${what}`);
    return {
      id: `items/${firstOf(group).of ?? what}`,
      group: "items",
      what,
      row: undefined,
      net: count,
      also: [],
      buy: { count, unit: "piece", each: "one" },
      parts: group.map((part) => part.id),
    };
  });
}
