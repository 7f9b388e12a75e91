import { intervalsOverlap, type Interval, subtractIntervals } from "../../geometry/interval.ts";
import type { Rect } from "../../geometry/rect.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";

/** Pieces shorter than this are not worth a cut; the track behind carries the board there. */
const SHORTEST_CRIPPLE = 0.03;
/** A stud that stands this near to a place of the pitch takes that place; a bay then exceeds the pitch by twice this at most. */
const PITCH_SLACK = 0.00635;
/** Least bearing of a board edge on each side of a seam. */
const SEAM_BEARING = 0.0095;

/** What the studs of one surface are laid out in. Studs run along v, between tracks that run along u. */
export interface StudField {
  /** Between the backs of the two tracks, and between the neighbours' stud planes. */
  readonly rect: Rect;
  readonly pitch: number;
  readonly studWidth: number;
  /** Height of the track's legs, which hold the stud ends and carry board edges. */
  readonly trackLeg: number;
  /** Clear distance from rect.u0 and rect.u1 to the first and last stud. */
  readonly pull: { readonly start: number; readonly end: number };
  /** Boards start here and studs are centred at whole pitches from here, in the direction of `from`. */
  readonly boards: Interval;
  readonly from: "start" | "end";
  /** Holes that studs frame. */
  readonly openings: readonly FramedHole[];
}

export interface FramedHole {
  readonly id: string;
  readonly hole: Rect;
  /** True for doors, which stand on the floor and cut the track there. */
  readonly toFloor: boolean;
}

export interface StudPiece {
  readonly role: "stud" | "jamb stud" | "cripple stud";
  readonly rect: Rect;
  readonly of: string | undefined;
}

export interface TrackPiece {
  readonly role: "track" | "header" | "sill";
  readonly rect: Rect;
  readonly of: string | undefined;
}

export interface StudLayout {
  readonly studs: readonly StudPiece[];
  readonly tracks: readonly TrackPiece[];
  /** Lines in u on which a seam is carried over the whole height. */
  readonly seamLines: readonly number[];
  readonly jambsLeftOut: readonly string[];
  /** Openings without a header or without a sill. */
  readonly headersLeftOut: readonly string[];
}

interface Line {
  readonly u: Interval;
  readonly role: "stud" | "jamb stud";
  readonly of: string | undefined;
  readonly segments: readonly Interval[];
}

/**
 * Lays out studs by pitch from the stated end, doubled at both sides of every opening, with header, sill and cripples.
 * Jamb studs come first, then end studs, then the pitch; where a stud of the pitch meets another it is left out, or set
 * against that stud if the bay would otherwise grow beyond the pitch. Throws RangeError where the field has no room.
 */
export function layoutStuds(field: StudField): StudLayout {
  const { rect, studWidth } = field;
  if (!(rect.u1 - rect.u0 > 2 * studWidth) || !(rect.v1 - rect.v0 > 2 * field.trackLeg)) {
    throw new RangeError("the field has no room for two studs between two tracks");
  }
  const lines: Line[] = [];
  const jambsLeftOut = new Set<string>();
  for (const { id, at, must } of jambPlaces(field)) {
    const added = addLine(lines, field, at, "jamb stud", id);
    if (!added && must) jambsLeftOut.add(id);
  }
  addLine(lines, field, rect.u0 + field.pull.start + studWidth / 2, "stud", undefined);
  addLine(lines, field, rect.u1 - field.pull.end - studWidth / 2, "stud", undefined);
  for (const centre of pitchCentres(field)) addPitchStud(lines, field, centre);

  const { tracks, headersLeftOut } = layoutTracks(field);
  const studs = lines
    .flatMap((line) => line.segments.map((segment) => pieceOf(field, line, segment)))
    .sort((a, b) => (a.rect.u0 === b.rect.u0 ? a.rect.v0 - b.rect.v0 : a.rect.u0 - b.rect.u0));
  return {
    studs,
    tracks,
    seamLines: seamLinesOf(field, lines, studs, tracks),
    jambsLeftOut: [...jambsLeftOut],
    headersLeftOut,
  };
}

/** Centres of the doubled studs, the inner ones of all openings before the outer ones. */
function jambPlaces(field: StudField): readonly { id: string; at: number; must: boolean }[] {
  const b = field.studWidth;
  const at = (offset: number, must: boolean) =>
    field.openings.flatMap(({ id, hole }) => [
      { id, at: hole.u0 - offset, must },
      { id, at: hole.u1 + offset, must },
    ]);
  return [...at(b / 2, true), ...at(1.5 * b, false)];
}

function pitchCentres(field: StudField): readonly number[] {
  const { boards, pitch, from, rect, pull, studWidth } = field;
  const least = rect.u0 + pull.start + studWidth / 2;
  const greatest = rect.u1 - pull.end - studWidth / 2;
  const centres: number[] = [];
  const count = Math.ceil((boards.to - boards.from) / pitch);
  for (let k = 1; k <= count; k += 1) {
    const centre = from === "start" ? boards.from + k * pitch : boards.to - k * pitch;
    if (centre > least && centre < greatest) centres.push(centre);
  }
  return centres;
}

/** Adds a stud where it meets no other and lies in the field; says whether any of it stands. */
function addLine(lines: Line[], field: StudField, centre: number, role: Line["role"], of: string | undefined): boolean {
  const u = { from: centre - field.studWidth / 2, to: centre + field.studWidth / 2 };
  if (u.from < field.rect.u0 - SAME_LENGTH || u.to > field.rect.u1 + SAME_LENGTH) return false;
  const meeting = lines.filter((line) => intervalsOverlap(line.u, u));
  const segments = freeHeights(field, u).filter(
    (segment) => !meeting.some((line) => line.segments.some((other) => intervalsOverlap(other, segment))),
  );
  if (segments.length === 0) return false;
  lines.push({ u, role, of, segments });
  return true;
}

function addPitchStud(lines: Line[], field: StudField, centre: number): void {
  if (addLine(lines, field, centre, "stud", undefined)) return;
  const b = field.studWidth;
  const met = lines.filter((line) => intervalsOverlap(line.u, { from: centre - b / 2, to: centre + b / 2 }));
  const nearest = met
    .map((line) => (line.u.from + line.u.to) / 2)
    .sort((x, y) => Math.abs(x - centre) - Math.abs(y - centre))[0];
  if (nearest === undefined || Math.abs(nearest - centre) <= PITCH_SLACK) return;
  addLine(lines, field, nearest > centre ? nearest - b : nearest + b, "stud", undefined);
}

/** The heights over which a stud at `u` can stand: the whole field less the openings with their headers and sills. */
function freeHeights(field: StudField, u: Interval): readonly Interval[] {
  const taken = field.openings
    .filter(({ hole }) => intervalsOverlap({ from: hole.u0, to: hole.u1 }, u))
    .map(({ hole }) => ({ from: hole.v0, to: hole.v1 }));
  return subtractIntervals({ from: field.rect.v0, to: field.rect.v1 }, taken).filter(
    ({ from, to }) => to - from >= SHORTEST_CRIPPLE,
  );
}

function pieceOf(field: StudField, line: Line, segment: Interval): StudPiece {
  const whole =
    segment.from - field.rect.v0 < SAME_LENGTH && field.rect.v1 - segment.to < SAME_LENGTH;
  return {
    role: whole || line.role === "jamb stud" ? line.role : "cripple stud",
    rect: { u0: line.u.from, u1: line.u.to, v0: segment.from, v1: segment.to },
    of: line.of,
  };
}

/** The two long tracks, cut out where an opening reaches them, and a header and a sill for each opening. */
function layoutTracks(field: StudField): { tracks: readonly TrackPiece[]; headersLeftOut: readonly string[] } {
  const { rect, trackLeg, openings } = field;
  const along = (v0: number, v1: number): TrackPiece[] => {
    const taken = openings
      .filter(({ hole }) => intervalsOverlap({ from: hole.v0, to: hole.v1 }, { from: v0, to: v1 }))
      .map(({ hole }) => ({ from: hole.u0, to: hole.u1 }));
    return subtractIntervals({ from: rect.u0, to: rect.u1 }, taken).map(({ from, to }) => ({
      role: "track" as const,
      rect: { u0: from, u1: to, v0, v1 },
      of: undefined,
    }));
  };
  const tracks = [...along(rect.v0, rect.v0 + trackLeg), ...along(rect.v1 - trackLeg, rect.v1)];
  const headersLeftOut: string[] = [];
  for (const { id, hole, toFloor } of openings) {
    const u = { u0: Math.max(hole.u0, rect.u0), u1: Math.min(hole.u1, rect.u1) };
    if (u.u1 - u.u0 < SAME_LENGTH) continue;
    const header: Rect = { ...u, v0: hole.v1, v1: hole.v1 + trackLeg };
    const sill: Rect = { ...u, v0: hole.v0 - trackLeg, v1: hole.v0 };
    const free = (piece: Rect): boolean => openings.every((other) => other.id === id || !meets(other.hole, piece));
    // Where the long track lies closer than a leg, it is header or sill itself, as long as the opening does not cut it.
    if (header.v1 <= rect.v1 - trackLeg + SAME_LENGTH && free(header)) tracks.push({ role: "header", rect: header, of: id });
    else if (hole.v1 > rect.v1 - trackLeg + SAME_LENGTH || !free(header)) headersLeftOut.push(id);
    if (toFloor) continue;
    if (sill.v0 >= rect.v0 + trackLeg - SAME_LENGTH && free(sill)) tracks.push({ role: "sill", rect: sill, of: id });
    else if (hole.v0 < rect.v0 + trackLeg - SAME_LENGTH || !free(sill)) headersLeftOut.push(id);
  }
  return { tracks, headersLeftOut: [...new Set(headersLeftOut)] };
}

function meets(a: Rect, b: Rect): boolean {
  return (
    intervalsOverlap({ from: a.u0, to: a.u1 }, { from: b.u0, to: b.u1 }) &&
    intervalsOverlap({ from: a.v0, to: a.v1 }, { from: b.v0, to: b.v1 })
  );
}

/** Stud centres at which stud, track or opening stands behind the seam over the whole height. */
function seamLinesOf(
  field: StudField,
  lines: readonly Line[],
  studs: readonly StudPiece[],
  tracks: readonly TrackPiece[],
): readonly number[] {
  const height = { from: field.rect.v0, to: field.rect.v1 };
  const centres = [...new Set(lines.map((line) => (line.u.from + line.u.to) / 2))].sort((a, b) => a - b);
  return centres.filter((centre) => {
    const behind = [...studs, ...tracks]
      .filter(({ rect }) => rect.u0 <= centre - SEAM_BEARING && rect.u1 >= centre + SEAM_BEARING)
      .map(({ rect }) => ({ from: rect.v0, to: rect.v1 }));
    const open = field.openings
      .filter(({ hole }) => hole.u0 <= centre && hole.u1 >= centre)
      .map(({ hole }) => ({ from: hole.v0, to: hole.v1 }));
    return subtractIntervals(height, [...behind, ...open]).every(({ from, to }) => to - from < SHORTEST_CRIPPLE);
  });
}
