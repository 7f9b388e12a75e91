import type { Build } from "../src/build/build.ts";
import { type HandPart, handBuild, type JobFile } from "./handBuilt.ts";

/** A length as a job file holds it. */
export const mm = (metres: number): string => `${(metres * 1000).toFixed(6)} mm`;

/** An item 600 x 600 x 900 mm. */
export const item = (id: string, along: number, across: number, more: JobFile = {}): JobFile => ({
  id,
  what: `Item ${id}`,
  size: { length: "600 mm", width: "600 mm", height: "900 mm" },
  mass: "50 kg",
  at: { along: mm(along), across: mm(across) },
  ...more,
});

/** The sample job with these items, other fields and parts. */
export const withItems = (items: readonly JobFile[], more: JobFile = {}, parts: readonly HandPart[] = []): Build =>
  handBuild((file) => void Object.assign(file, { items, ...more }), parts);
