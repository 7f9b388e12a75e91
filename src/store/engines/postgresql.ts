import { Kysely, PostgresDialect } from "kysely";
import { Pool, types } from "pg";
import type { PoolClient } from "pg";
import type { Tables } from "../schema/tables.ts";

/** Opens a pool of connections to the database of an address such as `postgres://user@host/name`. */
export function openPostgresql(url: string): { readonly db: Kysely<Tables>; readonly pool: Pool } {
  const pool = new Pool({
    connectionString: url,
    max: 8,
    connectionTimeoutMillis: 5000,
    statement_timeout: 60_000,
    application_name: "cornerpost",
    types: { getTypeParser },
  });
  // A connection that breaks while nobody uses it is replaced at the next question.
  pool.on("error", () => undefined);
  return { db: new Kysely<Tables>({ dialect: new PostgresDialect({ pool }) }), pool };
}

/**
 * Listens to a channel on a connection of its own, and again after that broke. `onGap` is called when messages may have
 * been missed. Gives the function that ends it.
 */
export async function listenTo(pool: Pool, channel: string, onMessage: (text: string) => void, onGap: () => void): Promise<() => Promise<void>> {
  const state: { client?: PoolClient | undefined; retry?: NodeJS.Timeout; ended: boolean } = { ended: false };
  const connect = async (): Promise<void> => {
    const client = await pool.connect();
    state.client = client;
    client.on("notification", ({ payload }) => {
      if (payload !== undefined) onMessage(payload);
    });
    client.on("error", () => {
      if (state.client !== client) return;
      state.client = undefined;
      client.release(true);
      again();
    });
    await client.query(`listen ${channel}`);
  };
  const again = (): void => {
    if (state.ended) return;
    state.retry = setTimeout(() => void connect().then(onGap, again), RETRY_MS);
  };
  await connect();
  return () => {
    state.ended = true;
    clearTimeout(state.retry);
    state.client?.release(true);
    return Promise.resolve();
  };
}

const RETRY_MS = 500;

/** How a column is read: a count as a number, as the embedded database gives it, and everything else as the driver does. */
function getTypeParser(type: Parameters<typeof types.getTypeParser>[0]): (text: string) => unknown {
  return type === types.builtins.INT8 ? wholeNumber : (types.getTypeParser(type) as (text: string) => unknown);
}

/** Counts come as text, because they could be larger than a number holds exactly. Throws RangeError where one is. */
function wholeNumber(text: string): number {
  const value = Number(text);
  if (!Number.isSafeInteger(value)) throw new RangeError(`the count ${text} is too large`);
  return value;
}
