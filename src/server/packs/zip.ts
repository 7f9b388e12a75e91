import { zipSync } from "fflate";

/** A zip with the files in one folder. Same files, same bytes: every file bears the first day that a zip can name. */
export function zipOf(folder: string, files: readonly { readonly path: string; readonly content: string | Uint8Array }[]): Uint8Array<ArrayBuffer> {
  const entries = files.map(({ path, content }) => [`${folder}/${path}`, typeof content === "string" ? Buffer.from(content, "utf8") : content] as const);
  return zipSync(Object.fromEntries(entries), { mtime: new Date(1980, 0, 1), level: 6 });
}
