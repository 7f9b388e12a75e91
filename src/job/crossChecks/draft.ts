import type { z } from "zod";
import { catalogue } from "../../catalogue/catalogue.ts";
import type { BoxRow } from "../../catalogue/rows.ts";
import { isList, isObject, valueAt } from "../file.ts";
import type { JsonObject, JsonValue } from "../file.ts";
import { foundText } from "../issue.ts";
import type { IssueCode, JobIssue } from "../issue.ts";
import { pathText } from "../path.ts";
import { buildUp, floorLayers } from "../schema/buildUp.ts";
import { opening, partition } from "../schema/opening.ts";
import type { BuildUp, FloorLayers, Opening, Partition } from "../job.ts";

type Step = string | number;

/** A piece of the file: as it stands there, and as read where it can be read by itself. */
export interface Piece<T> {
  readonly steps: readonly Step[];
  readonly raw: JsonValue;
  readonly read: T | undefined;
}

/** A job file taken piece by piece, so that its fields can be held against each other though some are still wrong. */
export interface Draft {
  readonly raw: JsonObject;
  readonly box: BoxRow | undefined;
  readonly buildUps: ReadonlyMap<string, Piece<BuildUp>>;
  readonly partitions: readonly Piece<Partition>[];
  readonly openings: readonly Piece<Opening>[];
  readonly floor: FloorLayers | undefined;
}

/** Holds fields of a job file against each other. */
export type CrossCheck = (draft: Draft) => readonly JobIssue[];

export function draftOf(raw: JsonObject): Draft {
  const boxRow = textAt(raw, ["box", "row"]);
  const buildUps = valueAt(raw, ["buildUps"]);
  return {
    raw,
    box: boxRow !== undefined && catalogue.boxes.has(boxRow) ? catalogue.boxes.get(boxRow) : undefined,
    buildUps: new Map(
      isObject(buildUps)
        ? Object.entries(buildUps).map(([name, value]) => [name, piece(buildUp, ["buildUps", name], value)])
        : [],
    ),
    partitions: listAt(raw, ["partitions"]).map((value, index) => piece(partition, ["partitions", index], value)),
    openings: listAt(raw, ["openings"]).map((value, index) => piece(opening, ["openings", index], value)),
    floor: floorLayers.safeParse(valueAt(raw, ["floor"])).data,
  };
}

/** The text at a place; undefined where there is none or something else. */
export function textAt(raw: JsonValue, steps: readonly Step[]): string | undefined {
  const value = valueAt(raw, steps);
  return typeof value === "string" ? value : undefined;
}

/** The list at a place; empty where there is none or something else, which is an issue of its own. */
export function listAt(raw: JsonValue, steps: readonly Step[]): readonly JsonValue[] {
  const value = valueAt(raw, steps);
  return isList(value) ? value : [];
}

/** An issue about the field at a place of the draft. */
export function issueAt(draft: Draft, steps: readonly Step[], code: IssueCode, wants: string, example: JsonValue | undefined): JobIssue {
  const found = foundText(valueAt(draft.raw, steps));
  return { code, path: pathText(steps), found, wants, example: example === undefined ? "" : JSON.stringify(example) };
}

function piece<T>(schema: z.ZodType<T>, steps: readonly Step[], raw: JsonValue): Piece<T> {
  return { steps, raw, read: schema.safeParse(raw).data };
}
