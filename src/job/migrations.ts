import type { JobFile, JsonObject } from "./file.ts";
import { foundText } from "./issue.ts";
import type { JobIssue } from "./issue.ts";
import { JOB_FORMAT, JOB_VERSION } from "./job.ts";

/** One step between two versions of the file: `up` from `from` to the next, `down` back again. */
export interface Migration {
  readonly from: number;
  up(file: JsonObject): JsonObject;
  down(file: JsonObject): JsonObject;
}

/** Every step from version 1 to the newest, in order. Each old version keeps a stored file in `test/job-files/`. */
export const MIGRATIONS: readonly Migration[] = [];

export type Migrated = { readonly ok: true; readonly file: JobFile } | { readonly ok: false; readonly issue: JobIssue };

/**
 * Brings a file to the newest version. Refuses another format and a version that this program does not know; a file
 * without a format or version goes on to the schema, which asks for them.
 */
export function migrate(raw: JsonObject, steps: readonly Migration[] = MIGRATIONS, newest: number = JOB_VERSION): Migrated {
  const { format, version } = { format: raw["format"], version: raw["version"] };
  if (format !== undefined && format !== JOB_FORMAT) {
    const wants = "a job file of this program";
    return { ok: false, issue: { code: "format", path: "format", found: foundText(format), wants, example: JSON.stringify(JOB_FORMAT) } };
  }
  if (version !== undefined && !isVersion(version, newest)) {
    const wants = newest === 1 ? "version 1, the only one that this program reads" : `a version from 1 to ${newest}, which this program reads`;
    return { ok: false, issue: { code: "version", path: "version", found: foundText(version), wants, example: String(newest) } };
  }
  if (typeof version !== "number") return { ok: true, file: raw };
  return { ok: true, file: steps.filter(({ from }) => from >= version).reduce((file, step) => step.up(file), raw) };
}

function isVersion(version: unknown, newest: number): boolean {
  return typeof version === "number" && Number.isInteger(version) && version >= 1 && version <= newest;
}
