import { catalogue } from "../../catalogue/catalogue.ts";
import type { Surface } from "../../build/surface.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { Job } from "../../job/job.ts";
import { compare, type Comparison } from "../../working/comparison.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { fromRow } from "../fromRow.ts";
import type { Finding } from "../check.ts";
import { tightest } from "../finding.ts";
import { buildUpOn } from "./buildUpOn.ts";
import { distance, line, type Rule } from "./context.ts";

/** Batts find the room for their thickness between the foam, or the inside plane, and the inner surface of the studs. */
export const battsInStack: Rule = ({ build, make }) => {
  const out: Finding[] = [];
  const fits: { id: string; surface: string; comparison: Comparison<"m"> }[] = [];
  for (const surface of build.surfaces) {
    const row = battsOn(build.job, surface);
    const room = roomFor(surface);
    if (row === undefined || room === undefined) continue;
    const comparison = compare(thicknessOf(row), "<=", room, SAME_LENGTH);
    fits.push({ id: surface.id, surface: surface.name, comparison });
    if (comparison.holds) continue;
    const facts = { surface: surface.name, batts: comparison.left.value, room: room.value, over: -comparison.margin };
    out.push(make("batts too thick", facts, { verdict: "stop", at: `batts-in-stack/${surface.id}`, about: [surface.id], comparison }));
  }
  const least = tightest(fits);
  if (out.length > 0 || least === undefined) return out;
  const facts = { count: fits.length, surface: least.surface, spare: least.comparison.margin };
  return [
    make("batts fit", facts, { verdict: "pass", at: "batts-in-stack", about: fits.map(({ id }) => id), comparison: least.comparison }),
  ];
};

/** The row of the batts on a face, or in a partition. */
function battsOn(job: Job, surface: Surface): string | undefined {
  const partition = job.partitions.find(({ id }) => id === surface.id);
  const buildUp = partition === undefined ? buildUpOn(job, surface)?.buildUp : job.buildUps[partition.buildUp];
  return buildUp?.batts?.row;
}

function thicknessOf(id: string): Quantity<"m"> {
  const row = catalogue.batts.get(id);
  return given(row.thickness, "m", "d", `thickness of ${row.what}`, fromRow(`batts/${id}`, "thickness", row.source));
}

/** From the foam, the inside plane or the lining of the leaves to the inner surface of the studs; a partition's from side to side. */
function roomFor({ id, kind, stack, leafStack }: Surface): Quantity<"m"> | undefined {
  const { studs, foam } = stack;
  if (studs === undefined) return undefined;
  const to = line(studs.to, id, "inner surface of the studs");
  if (kind === "partition") return distance(line(studs.from, id, "outer surface of the studs"), to, "depth of the studs");
  const from =
    foam === undefined
      ? line(leafStack === undefined ? INSIDE_PLANE : leafStack.finished, id, "back of the build-up")
      : line(foam.to, id, "front of foam");
  return distance(from, to, "room behind the inner surface of the studs");
}

/** Depths count from it. */
const INSIDE_PLANE = 0;
