import type { z } from "zod";
import { pathText } from "../job/path.ts";
import { Problem } from "./problem.ts";

/** Most bytes of a question that holds one file. */
const BODY_LIMIT = 2 * 1024 * 1024;
/** Most bytes of one that holds many. */
export const IMPORT_LIMIT = 10 * 1024 * 1024;

/**
 * Reads the body of a question as JSON of a schema. Stops reading where it is longer than `most` bytes.
 * Throws Problem where it is too large, not JSON in UTF-8, or not what the schema asks for.
 */
export async function readBody<T>(request: Request, schema: z.ZodType<T>, most: number = BODY_LIMIT): Promise<T> {
  const type = request.headers.get("content-type") ?? "";
  if (!/^application\/json\s*(;|$)/i.test(type)) throw new Problem("not_json", "", { wants: "content-type: application/json" });
  const read = schema.safeParse(jsonOf(await bytesOf(request, most)));
  if (read.success) return read.data;
  const [first] = read.error.issues;
  throw new Problem("bad_request", pathText(first?.path ?? []), { wants: first?.message ?? "" });
}

async function bytesOf(request: Request, most: number): Promise<Uint8Array> {
  const tooLarge = new Problem("too_large", "", { mostBytes: most });
  if (Number(request.headers.get("content-length") ?? "1") > most) throw tooLarge;
  const parts: Uint8Array[] = [];
  let size = 0;
  if (request.body !== null) {
    for await (const part of request.body as AsyncIterable<Uint8Array>) {
      size += part.byteLength;
      if (size > most) throw tooLarge;
      parts.push(part);
    }
  }
  return Buffer.concat(parts);
}

function jsonOf(bytes: Uint8Array): unknown {
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    throw new Problem("not_json", "", { wants: "JSON in UTF-8" });
  }
}
