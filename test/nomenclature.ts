/** A row of docs/nomenclature.md. */
export interface NomenclatureRow {
  readonly name: string;
  readonly symbol: string;
  readonly unit: string;
  readonly meaning: string;
  readonly sign: string;
}

/**
 * The rows of the tables `| name | symbol | unit | meaning | sign |`; symbols stand in backticks.
 * Throws Error at a row with a symbol that has no unit or no meaning.
 */
export function readNomenclature(markdown: string): readonly NomenclatureRow[] {
  return markdown.split("\n").flatMap((line) => {
    const cells = line.trim().split("|").slice(1, -1).map((cell) => cell.trim());
    const [name, symbolCell, unitCell, meaning, sign] = cells;
    const symbol = /^`([^`]+)`$/.exec(symbolCell ?? "")?.[1];
    if (symbol === undefined) return [];
    const unit = unitCell?.replaceAll("`", "");
    if (name === undefined || unit === undefined || unit === "" || meaning === undefined || meaning === "") {
      throw new Error(`docs/nomenclature.md: the row of \`${symbol}\` has no unit or no meaning: ${line}`);
    }
    return [{ name, symbol, unit, meaning, sign: sign ?? "" }];
  });
}
