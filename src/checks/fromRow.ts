import type { Given } from "../working/quantity.ts";
import type { Source } from "../working/source.ts";

/** Where a figure of the catalogue stands: table and row as "boxes/20-standard", the field, and its source. */
export function fromRow(row: string, field: string, source: Source): Given {
  return { kind: "catalogue", row, field, source };
}
