import type { Build } from "../../../build/build.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { closureOf } from "../cuts/openings.ts";
import type { Planned } from "../sections/planned.ts";
import { plannedOf, type SectionRow } from "./rows.ts";

/**
 * The sections that decide, in the order of the rows: of each face the one with the coldest surface; of the edges between
 * walls, at the roof and at the floor the coldest each; of partitions the coldest; and of all openings with the same article
 * the coldest edge. Sections that show no heated room are left out.
 */
export function decidingSections(build: Build, study: EnvelopeStudy, rows: readonly SectionRow[]): readonly Planned[] {
  const coldest = new Map<string, SectionRow>();
  for (const row of rows) {
    const group = groupOf(build, row);
    const known = coldest.get(group);
    if (row.coldest !== undefined && (known?.coldest === undefined || row.coldest.factor < known.coldest.factor - ALIKE)) coldest.set(group, row);
  }
  const chosen = new Set(coldest.values());
  return rows.flatMap((row) => (chosen.has(row) ? (plannedOf(study, row.id) ?? []) : []));
}

/** Factors that differ by less differ by rounding alone: the first of them stands. */
const ALIKE = 1e-9;

function groupOf(build: Build, { kind, about }: SectionRow): string {
  const [first] = about as readonly [string, ...string[]];
  switch (kind) {
    case "face":
      return first;
    case "junction":
      return about.includes("roof") ? "edges at the roof" : about.includes("floor") ? "edges at the floor" : "edges of walls";
    case "partition":
      return "partitions";
    case "opening": {
      const placed = build.openings.find(({ opening }) => opening.id === first);
      return placed === undefined ? first : `openings with ${closureOf(build, placed).article ?? first}`;
    }
  }
}
