import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoardRow, SectionShape } from "../../catalogue/rows.ts";
import { formatQuantity } from "../../units/format.ts";
import type { BuildUp } from "../job.ts";
import type { JobIssue } from "../issue.ts";
import { issueAt, textAt } from "./draft.ts";
import type { CrossCheck, Draft } from "./draft.ts";

/** Build-ups whose parts cannot belong together, and build-ups used where they have no meaning. */
export const buildUpIssues: CrossCheck = (draft) => [
  ...[...draft.buildUps.values()].flatMap(({ steps, read }) => (read === undefined ? [] : inside(draft, steps, read))),
  ...leafLining(draft),
];

type Steps = readonly (string | number)[];

/** A track's web may be this much deeper than its stud: two thicknesses of its sheet and play. */
const TRACK_PLAY = 0.005;

function inside(draft: Draft, steps: Steps, { studs, batts, furring, boards }: BuildUp): readonly JobIssue[] {
  const issues: JobIssue[] = [];
  if (furring !== undefined) {
    issues.push(...wrongShape(draft, [...steps, "furring", "row"], furring.row, ["hat", "flat", "channel", "angle"], "hat-7-8-18mil"));
    const where = "studs that carry the furring";
    if (studs === undefined) issues.push(issueAt(draft, [...steps, "studs"], "build-up", where, undefined));
  }
  if (studs === undefined) {
    if (batts === undefined) return issues;
    return [...issues, issueAt(draft, [...steps, "studs"], "build-up", "studs that hold the batts", undefined)];
  }
  const notStud = wrongShape(draft, [...steps, "studs", "row"], studs.row, ["stud"], "stud-2-1-2-18mil");
  const notTrack = wrongShape(draft, [...steps, "studs", "track"], studs.track, ["track"], "track-2-1-2-18mil");
  issues.push(...notStud, ...notTrack);
  const stud = catalogue.sections.get(studs.row);
  const track = catalogue.sections.get(studs.track);
  if (notStud.length === 0 && notTrack.length === 0) {
    const deeper = track.depth - stud.depth;
    if (deeper < 0 || deeper > TRACK_PLAY) {
      const wants = `a track that holds a stud ${length(stud.depth)} deep; this one is ${length(track.depth)} deep`;
      issues.push(issueAt(draft, [...steps, "studs", "track"], "build-up", wants, trackFor(stud.depth)));
    }
  }
  const pitch = [...steps, "studs", "pitch"];
  if (notStud.length === 0 && studs.pitch <= stud.width) {
    issues.push(issueAt(draft, pitch, "build-up", `more than a stud's flange of ${length(stud.width)}`, "16 in"));
  }
  for (const { row, lay } of boards) {
    const reach = boardReach(catalogue.boards.get(row), lay);
    if (studs.pitch <= reach) continue;
    issues.push(issueAt(draft, pitch, "build-up", `at most ${length(reach)}, so that ${row} laid ${lay} reaches from stud to stud`, "16 in"));
  }
  if (batts !== undefined) {
    const { width } = catalogue.batts.get(batts.row);
    if (studs.pitch > width) {
      issues.push(issueAt(draft, pitch, "build-up", `at most ${length(width)}, so that ${batts.row} reaches from stud to stud`, "16 in"));
    }
  }
  return issues;
}

/** How far a board spans from stud to stud: its width when its long side runs along them. */
function boardReach({ stock }: BoardRow, lay: BuildUp["boards"][number]["lay"]): number {
  return Math.max(...stock.map(({ width, length: long }) => (lay === "along studs" ? width : long)));
}

function wrongShape(draft: Draft, steps: Steps, row: string, shapes: readonly SectionShape[], example: string): readonly JobIssue[] {
  const { shape } = catalogue.sections.get(row);
  if (shapes.includes(shape)) return [];
  return [issueAt(draft, steps, "build-up", `a section of the shape ${shapes.join(" or ")}; this one is a ${shape}`, example)];
}

function trackFor(depth: number): string | undefined {
  return catalogue.sections.rows.find(
    (row) => row.shape === "track" && row.depth >= depth && row.depth - depth <= TRACK_PLAY,
  )?.id;
}

/** A leaf carries foam and boards in a few centimetres; it has no tracks for studs to stand in. */
function leafLining(draft: Draft): readonly JobIssue[] {
  const steps = ["faces", "doorEnd", "leafLining"];
  const name = textAt(draft.raw, steps);
  const read = name === undefined ? undefined : draft.buildUps.get(name)?.read;
  if (read === undefined || (read.studs === undefined && read.batts === undefined && read.furring === undefined)) return [];
  return [issueAt(draft, steps, "build-up", "a build-up of foam, boards and paint only: a leaf holds no studs, batts or furring", undefined)];
}

function length(value: number): string {
  return formatQuantity("length", value, "metric");
}
