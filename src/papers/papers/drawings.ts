import { viewDxf } from "../../drawings/dxf.ts";
import { type Sheet, sheets } from "../../drawings/sheet.ts";
import type { Paper } from "../paper.ts";

/** The list of drawings and every sheet at its own size; beside them each sheet as SVG and each drawing as DXF. */
export const drawings: Paper = {
  id: "drawings",
  title: "Drawings",
  make: ({ build, job, drawings: drawn }) => {
    const all = sheets(build, drawn);
    return {
      section: {
        template: TEMPLATE,
        data: all.map((sheet) => ({
          number: sheet.number, title: sheet.title, scale: sheet.scale, paper: sheet.paper, file: svgOf(sheet), widthMm: sheet.width * 1000, heightMm: sheet.height * 1000,
        })),
        files: Object.fromEntries(all.map((sheet) => [svgOf(sheet), sheet.svg])),
      },
      files: [
        ...all.map((sheet) => ({ path: `drawings/${svgOf(sheet)}`, text: sheet.svg })),
        ...drawn
          .filter(({ views }) => views.length > 0)
          .map((drawing) => ({ path: `drawings/${fileName(drawing.number)}.dxf`, text: viewDxf(drawing, job) })),
      ],
    };
  },
};

function svgOf({ number }: Sheet): string {
  return `${fileName(number)}.svg`;
}

/** Letters, digits, dots and hyphens only, so that every system can store it. */
function fileName(number: string): string {
  return number.replace(/[^A-Za-z0-9.-]+/g, "-");
}

const TEMPLATE = String.raw`
#import "style.typ": *

#let body(sheets) = {
  [Each sheet stands at its own size on the pages that follow, and in the pack's folder _drawings_ as SVG and, at full size, as DXF.
  Print at 100 % to scale from paper; written dimensions stand before scaled ones.]
  let on(s) = label("sheet-" + s.number)
  listing((auto, 1fr, auto, auto, auto), (left, left, left, right, right), ("Sheet", "Title", "Scale", "Paper", "Page"),
    sheets.map(s => (s.number, link(on(s), s.title), s.scale, s.paper, context counter(page).at(on(s)).first())))
  for s in sheets {
    page(width: s.widthMm * 1mm, height: s.heightMm * 1mm, margin: 0pt, header: none, footer: none, {
      place(hide[#heading(level: 2, [#s.number #s.title]) #on(s)])
      image(s.file, width: 100%, height: 100%, alt: s.number + " " + s.title)
    })
  }
}
`;
