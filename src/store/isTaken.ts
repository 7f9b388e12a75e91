/** Whether a database refused a row because its key is taken. */
export function isTaken(error: unknown): boolean {
  return error instanceof Error && "code" in error && typeof error.code === "string" && CODES.includes(error.code);
}

/** PostgreSQL's unique_violation, and SQLite's two. */
const CODES = ["23505", "SQLITE_CONSTRAINT_PRIMARYKEY", "SQLITE_CONSTRAINT_UNIQUE"];
