import { rectAt } from "../../geometry/rect.ts";
import type { Job } from "../../job/job.ts";
import { partMaker } from "../makePart.ts";
import type { Part } from "../part.ts";
import type { Surface } from "../surface.ts";

/** The job's items as blocks on the finished floor. */
export function itemParts(job: Job, floor: Surface): readonly Part[] {
  return job.items.map((item) => {
    const up = floor.stack.finished + item.at.up;
    return partMaker(floor, item.id).make({
      role: "item",
      what: item.what,
      rect: rectAt(item.at.along, item.at.across, item.size.length, item.size.width),
      depth: { from: up, to: up + item.size.height },
      shape: { kind: "block" },
      ...(item.article === undefined ? {} : { row: { table: "articles" as const, id: item.article } }),
      basis: { by: "given", mass: item.mass },
      of: item.id,
    });
  });
}
