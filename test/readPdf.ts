import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";

/** A page as another library reads it: its text on one line, and its size in points. */
export interface ReadPage {
  readonly text: string;
  readonly width: number;
  readonly height: number;
}

/** Reads a PDF's pages. Spaces are put together; letters that only look different (NFKC) are the same. */
export async function readPdf(bytes: Uint8Array): Promise<{ readonly title: string; readonly pages: readonly ReadPage[] }> {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0, useSystemFonts: false });
  const document = await task.promise;
  const { info } = await document.getMetadata();
  const pages: ReadPage[] = [];
  for (let number = 1; number <= document.numPages; number += 1) {
    const page = await document.getPage(number);
    const { items } = await page.getTextContent();
    const { width, height } = page.getViewport({ scale: 1 });
    const text = items.map((item) => ("str" in item ? `${item.str}${item.hasEOL ? "\n" : ""}` : "")).join("");
    pages.push({ text: text.normalize("NFKC").replace(/\s+/g, " "), width, height });
  }
  await task.destroy();
  return { title: String((info as Readonly<Record<string, unknown>>)["Title"]), pages };
}
