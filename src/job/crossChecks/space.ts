import { catalogue } from "../../catalogue/catalogue.ts";
import { formatQuantity } from "../../units/format.ts";
import type { JobIssue } from "../issue.ts";
import type { Partition } from "../job.ts";
import { boardsThickness, buildUpThickness } from "../thickness.ts";
import { issueAt, textAt } from "./draft.ts";
import type { CrossCheck, Draft } from "./draft.ts";

/** Linings, floor and partitions that leave no space between them: no build can be made of that. */
export const spaceIssues: CrossCheck = (draft) => {
  if (draft.box === undefined) return [];
  const { width, height, length } = draft.box.inside;
  const [left, right, roof] = [faceThickness(draft, "left"), faceThickness(draft, "right"), faceThickness(draft, "roof")];
  const floor = draft.floor === undefined ? undefined : boardsThickness(draft.floor.layers);
  const ends = [faceThickness(draft, "blindEnd"), faceThickness(draft, "doorEnd"), namedThickness(draft, LEAF_LINING)];
  return [
    ...squeezed(draft, ["faces", "right"], "width", width, [left, right]),
    ...squeezed(draft, ["faces", "roof"], "height", height, [roof, floor]),
    ...squeezed(draft, ["faces", "doorEnd"], "length", length, ends),
    ...betweenPartitions(draft, length),
  ];
};

const LEAF_LINING = ["faces", "doorEnd", "leafLining"];
/** A box that is left less inside than this, in any direction, is no building; two studs and their tracks need most of it. */
const LEAST_INSIDE = 0.3;
/** Less than this between a partition and the next finished face is no space, m. */
const LEAST_SPACE = 0.05;

function squeezed(draft: Draft, steps: readonly string[], what: string, inside: number, taken: readonly (number | undefined)[]) {
  const known = taken.filter((thickness) => thickness !== undefined);
  const sum = known.reduce((total, thickness) => total + thickness, 0);
  if (known.length < taken.length) return [];
  if (inside - sum >= LEAST_INSIDE) return [];
  return [issueAt(draft, steps, "no room", `linings that leave at least ${text(LEAST_INSIDE)} of the inside ${what} of ${text(inside)}; they take ${text(sum)}`, undefined)];
}

/** Walks from the blind end to the door end and measures each space between finished faces. */
function betweenPartitions(draft: Draft, length: number): readonly JobIssue[] {
  const blindEnd = faceThickness(draft, "blindEnd");
  const doorEnd = faceThickness(draft, "doorEnd");
  const leaves = namedThickness(draft, LEAF_LINING);
  if (draft.partitions.length === 0) return [];
  if (blindEnd === undefined || doorEnd === undefined || leaves === undefined) return [];
  const issues: JobIssue[] = [];
  let from = blindEnd;
  for (const { read, steps } of draft.partitions) {
    const sides = read === undefined ? undefined : partitionSides(draft, read);
    if (read === undefined || sides === undefined || read.at <= 0 || read.at >= length) return issues;
    const space = read.at - sides.towardBlindEnd - from;
    if (space < LEAST_SPACE) issues.push(issueAt(draft, [...steps, "at"], "no room", tooClose(space), undefined));
    from = read.at + sides.towardDoorEnd;
  }
  const space = length - doorEnd - leaves - from;
  if (space < LEAST_SPACE) issues.push(issueAt(draft, ["faces", "doorEnd"], "no room", tooClose(space), undefined));
  return issues;
}

function tooClose(space: number): string {
  const found = space < 0 ? `they overlap by ${text(-space)}` : `there is ${text(space)}`;
  return `at least ${text(LEAST_SPACE)} to the finished face before it, counted from the blind end; ${found}`;
}

function partitionSides(draft: Draft, partition: Partition) {
  const near = draft.buildUps.get(partition.buildUp)?.read;
  const far = draft.buildUps.get(partition.blindSide ?? partition.buildUp)?.read;
  if (near?.studs === undefined || far === undefined) return undefined;
  const half = catalogue.sections.get(near.studs.row).depth / 2;
  return { towardBlindEnd: half + boardsThickness(far.boards), towardDoorEnd: half + boardsThickness(near.boards) };
}

function faceThickness(draft: Draft, face: string): number | undefined {
  return namedThickness(draft, ["faces", face, "buildUp"]);
}

/** Nothing where no build-up is named; undefined where the named one cannot be read. */
function namedThickness(draft: Draft, steps: readonly string[]): number | undefined {
  const name = textAt(draft.raw, steps);
  if (name === undefined) return 0;
  const read = draft.buildUps.get(name)?.read;
  return read === undefined ? undefined : buildUpThickness(read);
}

function text(value: number): string {
  return formatQuantity("length", value, "metric");
}
