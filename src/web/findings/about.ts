import type { Build } from "../../river/screen.ts";
import type { Selection } from "../state/session.ts";

/** What an id in a finding stands for, so that it can be selected; undefined where the build holds nothing of that id. */
export function selectionOf(build: Build, id: string): Selection | undefined {
  if (build.openings.some(({ opening }) => opening.id === id)) return { kind: "opening", id };
  if (build.job.items.some((item) => item.id === id)) return { kind: "item", id };
  const surface = build.surfaces.find((one) => one.id === id);
  if (surface !== undefined) return { kind: surface.kind, id };
  return build.parts.some((part) => part.id === id) ? { kind: "part", id } : undefined;
}

/** The name that a finding's id is shown by: a face in words, anything else by its own id. */
export function nameOf(build: Build, id: string): string {
  return build.surfaces.find((surface) => surface.id === id)?.name ?? id;
}

/** The ids that findings light up: what they are about, and the parts that belong to it. */
export function litBy(build: Build, about: readonly string[]): readonly string[] {
  const asked = new Set(about);
  const parts = build.parts.filter(({ of }) => of !== undefined && asked.has(of)).map(({ id }) => id);
  return [...asked, ...parts];
}
