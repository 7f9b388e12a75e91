import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import { NodeCompiler } from "@myriaddreamin/typst-ts-node-compiler";
import type { TypstSource } from "./paper.ts";

/**
 * Sets a document as PDF. Same source, same bytes: the document's day stands for the moment of making. Nothing is read
 * but the source's own files and the fonts that ship with the code.
 * Throws Error with the compiler's messages where the source does not compile.
 */
export function compilePdf(source: TypstSource): Uint8Array {
  const compiler = NodeCompiler.create({ workspace: WORKSPACE, fontArgs: [{ fontBlobs: fonts() }] });
  for (const [name, text] of Object.entries(source.files)) compiler.mapShadow(join(WORKSPACE, name), Buffer.from(text, "utf8"));
  const result = compiler.compile({ mainFilePath: join(WORKSPACE, "main.typ") });
  if (result.result === null) throw new Error(`the PDF could not be set: ${messages(result.takeDiagnostics()?.shortDiagnostics)}`);
  const creationTimestamp = Date.parse(`${source.day}T00:00:00Z`) / 1000;
  const bytes = compiler.pdf(result.result, { creationTimestamp });
  // A compiler is made for each document; what it remembers would otherwise stay for the life of the process.
  compiler.evictCache(0);
  return bytes;
}

/** A folder that need not exist: every file of a source is given in memory. */
const WORKSPACE = "/cornerpost-pack";

/** The text face, under the SIL Open Font Licence. */
function fonts(): Buffer[] {
  const require = createRequire(import.meta.url);
  return [
    require.resolve("@expo-google-fonts/source-sans-3/400Regular/SourceSans3_400Regular.ttf"),
    require.resolve("@expo-google-fonts/source-sans-3/400Regular_Italic/SourceSans3_400Regular_Italic.ttf"),
    require.resolve("@expo-google-fonts/source-sans-3/600SemiBold/SourceSans3_600SemiBold.ttf"),
  ].map((path) => readFileSync(path));
}

function messages(diagnostics: unknown): string {
  return JSON.stringify(diagnostics);
}
