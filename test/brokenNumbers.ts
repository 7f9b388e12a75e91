/** Paths to every number in plain data that is not finite, each object looked at once. */
export function brokenNumbers(value: unknown): readonly string[] {
  const met = new Set<object>();
  const broken: string[] = [];
  const look = (at: unknown, path: string): void => {
    if (typeof at === "number" && !Number.isFinite(at)) broken.push(`${path} is ${at}`);
    if (typeof at !== "object" || at === null || met.has(at)) return;
    met.add(at);
    for (const [key, field] of Object.entries(at)) look(field, `${path}.${key}`);
  };
  look(value, "");
  return broken;
}
