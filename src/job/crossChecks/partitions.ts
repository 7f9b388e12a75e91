import { isList } from "../file.ts";
import type { JobIssue } from "../issue.ts";
import { issueAt } from "./draft.ts";
import type { CrossCheck, Draft, Piece } from "./draft.ts";
import type { Partition } from "../job.ts";

/** Partitions with a build-up that cannot stand by itself, out of the box or out of order; and a room between each two. */
export const partitionIssues: CrossCheck = (draft) => [
  ...draft.partitions.flatMap((partition) => [...standing(draft, partition), ...farSide(draft, partition), ...outOfBox(draft, partition)]),
  ...outOfOrder(draft),
  ...roomCount(draft),
];

function standing(draft: Draft, { steps, read }: Piece<Partition>): readonly JobIssue[] {
  const buildUp = read === undefined ? undefined : draft.buildUps.get(read.buildUp)?.read;
  if (buildUp === undefined) return [];
  const at = [...steps, "buildUp"];
  if (buildUp.studs === undefined) {
    return [issueAt(draft, at, "build-up", "a build-up with studs: a partition stands on nothing else", undefined)];
  }
  if (buildUp.studs.standOff === 0 && buildUp.foam === undefined && buildUp.furring === undefined) return [];
  const wants = "a build-up of studs, batts, boards and paint only: a partition has no skin for foam, stand-off or furring";
  return [issueAt(draft, at, "build-up", wants, undefined)];
}

function farSide(draft: Draft, { steps, read }: Piece<Partition>): readonly JobIssue[] {
  const buildUp = read?.blindSide === undefined ? undefined : draft.buildUps.get(read.blindSide)?.read;
  if (buildUp === undefined) return [];
  if (buildUp.studs === undefined && buildUp.foam === undefined && buildUp.batts === undefined && buildUp.furring === undefined) return [];
  const wants = "a build-up of boards and paint only: the partition's own build-up gives studs and batts";
  return [issueAt(draft, [...steps, "blindSide"], "build-up", wants, undefined)];
}

function outOfBox(draft: Draft, { steps, read }: Piece<Partition>): readonly JobIssue[] {
  if (read === undefined || draft.box === undefined) return [];
  const long = draft.box.inside.length;
  if (read.at > 0 && read.at < long) return [];
  return [issueAt(draft, [...steps, "at"], "partition", `a place inside the box, which is ${Math.floor(long * 1000)} mm long inside`, "2 m")];
}

function outOfOrder(draft: Draft): readonly JobIssue[] {
  return draft.partitions.flatMap((partition, index) => {
    const before = draft.partitions[index - 1]?.read;
    if (before === undefined || partition.read === undefined || partition.read.at > before.at) return [];
    const wants = `a place beyond that of partition ${before.id}: partitions are listed from the blind end`;
    return [issueAt(draft, [...partition.steps, "at"], "partition", wants, undefined)];
  });
}

function roomCount(draft: Draft): readonly JobIssue[] {
  const rooms = draft.raw["rooms"];
  const partitions = draft.raw["partitions"];
  if (!isList(rooms) || (partitions !== undefined && !isList(partitions))) return [];
  const wanted = draft.partitions.length + 1;
  if (rooms.length === wanted) return [];
  const wants = `${wanted} ${wanted === 1 ? "room" : "rooms"}, named from the blind end: one more than the partitions; ${rooms.length} given`;
  return [issueAt(draft, ["rooms"], "rooms", wants, undefined)];
}
