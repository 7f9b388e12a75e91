/**
 * JSON text of plain data with fields in the order in which they were made, two spaces, a line end last.
 * Throws RangeError, with its path, at a number that is not finite: JSON would turn it into null.
 */
export function wholeJson(value: unknown): string {
  refuseBrokenNumbers(value, "");
  return `${JSON.stringify(value, undefined, 2)}\n`;
}

function refuseBrokenNumbers(value: unknown, path: string): void {
  if (typeof value === "number" && !Number.isFinite(value)) throw new RangeError(`${path} is ${value}`);
  if (typeof value !== "object" || value === null) return;
  for (const [key, field] of Object.entries(value)) refuseBrokenNumbers(field, path === "" ? key : `${path}.${key}`);
}
