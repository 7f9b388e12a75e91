import type { JsonValue } from "../file.ts";
import { valueAt } from "../file.ts";
import { FACES } from "../job.ts";
import { nearest } from "../reading/nearest.ts";
import { issueAt, listAt, textAt } from "./draft.ts";
import type { CrossCheck, Draft } from "./draft.ts";

/** Every name that should be a build-up, a face or a partition of this job and is none. */
export const nameIssues: CrossCheck = (draft) => [...unknownBuildUps(draft), ...unknownFaces(draft)];

const WALLS = ["left", "right", "blindEnd", "doorEnd", "roof"];

const unknownBuildUps: CrossCheck = (draft) => {
  const partitions = draft.partitions.map(({ steps }) => steps);
  const places = [
    ...WALLS.map((face) => ["faces", face, "buildUp"]),
    ["faces", "doorEnd", "leafLining"],
    ...partitions.flatMap((steps) => [[...steps, "buildUp"], [...steps, "blindSide"]]),
  ];
  const known = [...draft.buildUps.keys()];
  return unknown(draft, places, known, "the name of a build-up of this job");
};

const unknownFaces: CrossCheck = (draft) => {
  const rated = listAt(draft.raw, ["fire", "rated"]).map((_, index) => ["fire", "rated", index, "face"]);
  const places = [...draft.openings.map(({ steps }) => [...steps, "face"]), ...rated];
  return unknown(draft, places, [...FACES, ...partitionIds(draft)], "a face of the box, or the id of a partition");
};

function unknown(draft: Draft, places: readonly (readonly (string | number)[])[], known: readonly string[], what: string) {
  return places.flatMap((steps) => {
    const name = textAt(draft.raw, steps);
    if (name === undefined || known.includes(name)) return [];
    const choice = known.length === 0 ? `${what}, which has none yet` : `${what}: ${known.join(", ")}`;
    return [issueAt(draft, steps, "unknown name", choice, nearest(name, known))];
  });
}

function partitionIds({ partitions }: Draft): readonly string[] {
  return partitions.map(({ raw }): JsonValue | undefined => valueAt(raw, ["id"])).filter((id) => typeof id === "string");
}
