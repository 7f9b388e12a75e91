import { z } from "zod";
import { BACKUP_TABLES } from "./rows.ts";

export const BACKUP_FORMAT = "cornerpost-backup";
export const BACKUP_VERSION = 1;

/** First line of a backup: the step that its tables are at. */
export const headerLine = z.strictObject({ format: z.literal(BACKUP_FORMAT), version: z.literal(BACKUP_VERSION), step: z.int().min(1) });
export type Header = z.output<typeof headerLine>;

export const rowLine = z.strictObject({
  table: z.enum(BACKUP_TABLES),
  row: z.record(z.string(), z.union([z.string(), z.number(), z.null()])),
});

/** Last line of a backup: how many rows stand above it, and the SHA-256 of their lines. */
export const footerLine = z.strictObject({ rows: z.int().min(0), sha256: z.string() });
export type Footer = z.output<typeof footerLine>;
