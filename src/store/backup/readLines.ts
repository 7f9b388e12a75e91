import { createReadStream } from "node:fs";

/** The lines of a text file, one at a time. Only a line feed ends a line: other marks that some readers take may stand in a text. */
export async function* readLines(path: string): AsyncGenerator<string, undefined> {
  let rest = "";
  for await (const part of createReadStream(path, "utf8") as AsyncIterable<string>) {
    const lines = (rest + part).split("\n");
    rest = lines.pop() ?? "";
    yield* lines;
  }
  if (rest !== "") yield rest;
  return undefined;
}
