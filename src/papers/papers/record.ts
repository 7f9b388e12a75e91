import type { Build } from "../../build/build.ts";
import { CHECKS, type Finding } from "../../checks/checks.ts";
import type { Comparison } from "../../working/comparison.ts";
import { workingJson } from "../../working/json.ts";
import type { Quantity } from "../../working/quantity.ts";
import { sourceText } from "../../working/source.ts";
import type { Paper } from "../paper.ts";
import type { Results, TypedJob } from "../results.ts";
import { wholeJson } from "../wholeJson.ts";

/** Everything as JSON, unrounded and in SI, and the job file as it was typed. */
export const record: Paper = {
  id: "record",
  title: "Record",
  make: (results, typed) => ({
    files: [
      { path: "pack.json", text: wholeJson(recordOf(results, typed)) },
      { path: "job.json", text: typed.text },
    ],
  }),
};

/** Grows by one when a field changes its meaning or goes. */
const RECORD_VERSION = 1;

function recordOf(results: Results, typed: TypedJob): object {
  const { headline, build, findings, takeoff, quote, plan } = results;
  return {
    format: "cornerpost-pack",
    version: RECORD_VERSION,
    units: "SI: m, kg, s, W, Pa, N; degC for temperatures; cents for money; h for working time",
    headline,
    build: buildRecord(build),
    checks: CHECKS.map(({ id, asks, needs, leavesOut, decides }) => ({ id, asks, needs, leavesOut, decides })),
    findings: findings.map(findingRecord),
    takeoff: {
      lines: takeoff.lines.map(({ net, also, buy, ...line }) => ({
        ...line,
        net: plain(net),
        also: also.map(plain),
        buy: { ...buy, count: plain(buy.count), ...(buy.holds === undefined ? {} : { holds: plain(buy.holds) }) },
        working: workingJson([net, ...also, buy.count]),
      })),
      cutList: takeoff.cutList,
    },
    quote: figures(quote),
    plan: figures(plan),
    job: typed.file,
  };
}

function buildRecord(build: Build): object {
  const { box, surfaces, openings, rooms, framings, parts, snags } = build;
  return {
    box: box.id,
    surfaces,
    openings: openings.map(({ opening, surface, ...placed }) => ({ opening: opening.id, surface: surface.id, ...placed })),
    rooms: rooms.map(({ room, ...placed }) => ({ room: room?.id, ...placed })),
    framings,
    parts,
    snags,
  };
}

function findingRecord(finding: Finding): object {
  const { working, comparison, sources, ...said } = finding;
  const comparisons: readonly Comparison[] = comparison === undefined ? [] : [comparison];
  return { ...said, sources: sources.map(sourceText), working: workingJson(working, comparisons) };
}

/** A result with every quantity in it as plain figures. */
function figures(value: unknown): unknown {
  if (isQuantity(value)) return plain(value);
  if (Array.isArray(value)) return value.map(figures);
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, field]) => [key, figures(field)]));
}

function plain({ symbol, means, value, unit }: Quantity): object {
  return { symbol, means, value, unit };
}

function isQuantity(value: unknown): value is Quantity {
  return typeof value === "object" && value !== null && "origin" in value && "symbol" in value;
}
