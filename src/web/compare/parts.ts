import type { Part } from "../../river/screen.ts";

/** What became of a part from one build to the other. */
export type PartDifference =
  | { readonly kind: "added" | "removed"; readonly part: Part }
  | { readonly kind: "moved" | "changed"; readonly part: Part; readonly before: Part };

/**
 * What differs between the parts of two builds. Parts of the same make at the same place are the same, whatever number
 * they carry; of the others those of one id belong together, moved where only their place differs; the rest came or went.
 */
export function compareParts(before: readonly Part[], after: readonly Part[]): readonly PartDifference[] {
  const waiting = new Map<string, Part[]>();
  for (const part of before) {
    const key = placeKey(part);
    waiting.set(key, [...(waiting.get(key) ?? []), part]);
  }
  const unmatched = after.filter((part) => waiting.get(placeKey(part))?.shift() === undefined);
  const left = [...waiting.values()].flat();
  const leftById = new Map(left.map((part) => [part.id, part]));
  const differences = unmatched.map((part): PartDifference => {
    const same = leftById.get(part.id);
    if (same === undefined || same.role !== part.role) return { kind: "added", part };
    leftById.delete(part.id);
    return { kind: makeKey(same) === makeKey(part) ? "moved" : "changed", part, before: same };
  });
  const removed = left.filter((part) => leftById.has(part.id)).map((part): PartDifference => ({ kind: "removed", part }));
  return [...differences, ...removed];
}

export interface RoleSummary {
  readonly role: string;
  readonly added: number;
  readonly removed: number;
  readonly moved: number;
  readonly changed: number;
  /** Mass that came less mass that went, kg. */
  readonly mass: number;
}

/** The differences counted by what parts do, most first. */
export function partSummary(differences: readonly PartDifference[]): readonly RoleSummary[] {
  const roles = [...new Set(differences.map(({ part }) => part.role))];
  return roles
    .map((role) => {
      const ofRole = differences.filter(({ part }) => part.role === role);
      const count = (kind: PartDifference["kind"]): number => ofRole.filter((one) => one.kind === kind).length;
      const mass = ofRole.reduce((sum, one) => sum + massOf(one), 0);
      return { role, added: count("added"), removed: count("removed"), moved: count("moved"), changed: count("changed"), mass, all: ofRole.length };
    })
    .toSorted((a, b) => b.all - a.all)
    .map(({ role, added, removed, moved, changed, mass }) => ({ role, added, removed, moved, changed, mass }));
}

function massOf(difference: PartDifference): number {
  switch (difference.kind) {
    case "added":
      return difference.part.mass;
    case "removed":
      return -difference.part.mass;
    case "moved":
    case "changed":
      return difference.part.mass - difference.before.mass;
  }
}

/** What a part is made as: its form, stock, size and mass, not its place. */
function makeKey({ role, what, material, shape, rect, depth, mass }: Part): string {
  const sizes = [rect.u1 - rect.u0, rect.v1 - rect.v0, depth.to - depth.from, mass].map(rounded);
  return [role, what, material, shape.kind, ...sizes].join("|");
}

/** Where a part is, with its outline: a board whose hole moved is not the same board. */
function placeKey(part: Part): string {
  const { surface, rect, depth, of, layer, shape } = part;
  const outline = JSON.stringify(shape, (_, value: unknown) => (typeof value === "number" ? rounded(value) : value));
  return [makeKey(part), surface, of, layer, ...[rect.u0, rect.v0, depth.from].map(rounded), outline].join("|");
}

/** A hundredth of a millimetre tells no two places apart, and a hundredth of a gram no two masses. */
function rounded(value: number): number {
  return Math.round(value * 1e5);
}
