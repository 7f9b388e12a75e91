import type { Given } from "./quantity.ts";
import { sourceText } from "./source.ts";

/** One line of text that says where a given comes from. */
export function givenText(from: Given): string {
  switch (from.kind) {
    case "job":
      return from.typed === undefined ? `job, ${from.path}` : `job, ${from.path}, typed as "${from.typed}"`;
    case "catalogue":
      return `catalogue, ${from.row}, ${from.field}: ${sourceText(from.source)}`;
    case "priceBook":
      return `price book, ${from.path}`;
    case "part":
      return `part ${from.id}, ${from.field}`;
    case "measured":
      return `measured on ${from.on}`;
    case "constant":
      return sourceText(from.source);
    case "solver":
      return `${from.method}; ${from.size}; residual ${from.residual.toExponential(1)}`;
  }
}
