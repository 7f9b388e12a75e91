import type { Build } from "../build/build.ts";
import type { Part, Role } from "../build/part.ts";
import type { FaceId } from "../job/job.ts";

const FACE_LETTER: Readonly<Record<FaceId, string>> = {
  left: "L",
  right: "R",
  blindEnd: "B",
  doorEnd: "D",
  roof: "C",
  floor: "F",
};

const ROLE_LETTER: Partial<Readonly<Record<Role, string>>> = {
  "opening frame": "W",
  stud: "S",
  "jamb stud": "J",
  "cripple stud": "E",
  track: "T",
  header: "H",
  sill: "U",
  blocking: "K",
  "corner angle": "A",
  furring: "G",
  board: "B",
  "floor board": "B",
  trim: "M",
};

/**
 * Labels of the pieces to be cut, by part id: "L-S03" is the third stud of the left wall. C is the ceiling, P1 the first
 * partition. Numbers follow the order of the parts, so that a label stays while the parts before it stay. Parts that are
 * not cut from stock have none.
 */
export function pieceLabels(build: Build): ReadonlyMap<string, string> {
  const partitions = build.surfaces.filter(({ kind }) => kind === "partition").map(({ id }) => id);
  const counts = new Map<string, number>();
  const labels = new Map<string, string>();
  for (const part of build.parts) {
    const role = ROLE_LETTER[part.role];
    if (role === undefined) continue;
    const prefix = `${faceLetter(part, partitions)}-${role}`;
    const before = counts.get(prefix);
    const number = before === undefined ? 1 : before + 1;
    counts.set(prefix, number);
    labels.set(part.id, `${prefix}${String(number).padStart(2, "0")}`);
  }
  return labels;
}

function faceLetter(part: Part, partitions: readonly string[]): string {
  const at = partitions.indexOf(part.surface);
  if (at >= 0) return `P${at + 1}`;
  return isFace(part.surface) ? FACE_LETTER[part.surface] : part.surface;
}

function isFace(surface: string): surface is FaceId {
  return Object.hasOwn(FACE_LETTER, surface);
}
