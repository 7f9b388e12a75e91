import { catalogue } from "../catalogue/catalogue.ts";
import type { Job } from "../job/job.ts";
import type { Build } from "./build.ts";
import { itemParts } from "./fitout/itemParts.ts";
import { openingParts } from "./fitout/openingParts.ts";
import { floorLayerParts } from "./floorLayers.ts";
import { foamParts } from "./foam.ts";
import { cornerAngles } from "./framing/cornerAngles.ts";
import { leafLinings, linings } from "./linings.ts";
import { placeOpenings } from "./openings.ts";
import { placeRooms } from "./rooms.ts";
import { outsideCoats } from "./shell/coatings.ts";
import { boxFrame } from "./shell/boxFrame.ts";
import { shellParts } from "./shell/shell.ts";
import { findSurface } from "./surface.ts";
import { surfacesOf } from "./surfaces.ts";

/**
 * Assembles the build of a job: the box with its openings cut, frames, foam, studs, boards, floor, trim, coats and
 * items, every part placed and weighed. What cannot be built as asked is still built as far as it goes and told as a
 * snag, or left for the checks to find. Throws RangeError for a job that was not read by `readJob`.
 */
export function assemble(job: Job): Build {
  const box = catalogue.boxes.get(job.box.row);
  const surfaces = surfacesOf(job, box);
  const openings = placeOpenings(job, surfaces);
  const rooms = placeRooms(job, surfaces);

  const frame = boxFrame(box, surfaces);
  const lined = [...linings(job, surfaces, openings, frame), ...leafLinings(job, box, findSurface(surfaces, "doorEnd"), openings)];
  const filled = openings.flatMap(openingParts);
  const floorLayers = floorLayerParts(job, surfaces, rooms, openings, [...frame, ...filled]);
  return {
    job,
    box,
    surfaces,
    openings,
    rooms,
    framings: lined.flatMap(({ framing }) => framing ?? []),
    parts: [
      ...shellParts(box, job.box.tare ?? box.mass.tare, surfaces, openings, frame),
      ...outsideCoats(job, box, surfaces, openings),
      ...filled,
      ...foamParts(job, surfaces, openings, box),
      ...lined.flatMap(({ parts }) => parts),
      ...cornerAngles(job, surfaces, frame),
      ...floorLayers.parts,
      ...itemParts(job, findSurface(surfaces, "floor")),
    ],
    snags: [...lined.flatMap(({ snags }) => snags), ...floorLayers.snags],
  };
}
