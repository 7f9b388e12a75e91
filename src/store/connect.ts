import { mkdirSync } from "node:fs";
import { join } from "node:path";
import type { Kysely } from "kysely";
import type { Pool } from "pg";
import { openPostgresql } from "./engines/postgresql.ts";
import { openSqlite } from "./engines/sqlite.ts";
import type { Tables } from "./schema/tables.ts";

/** Where the data is: a folder of this machine, or a PostgreSQL database by its address. */
export type Place = { readonly folder: string } | { readonly url: string };

export type Connection =
  | { readonly engine: "sqlite"; readonly db: Kysely<Tables>; readonly file: string }
  | { readonly engine: "postgresql"; readonly db: Kysely<Tables>; readonly pool: Pool };

/** Connects to the database of a place as it stands. A folder is made where it is missing. */
export function connect(place: Place): Connection {
  if ("url" in place) return { engine: "postgresql", ...openPostgresql(place.url) };
  mkdirSync(place.folder, { recursive: true, mode: 0o700 });
  const file = join(place.folder, "cornerpost.sqlite");
  return { engine: "sqlite", file, db: openSqlite(file) };
}
