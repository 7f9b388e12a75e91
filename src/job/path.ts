/** A job path as text: `openings[2].at.up`, `buildUps["long wall"].foam.thickness`; "" for the file itself. */
export function pathText(steps: readonly PropertyKey[]): string {
  return steps.reduce<string>((path, step) => {
    if (typeof step === "number") return `${path}[${step}]`;
    const key = String(step);
    if (!PLAIN.test(key)) return `${path}[${JSON.stringify(key)}]`;
    return path === "" ? key : `${path}.${key}`;
  }, "");
}

/** The steps of a path that pathText writes; undefined where the text is no path. */
export function stepsOf(path: string): readonly (string | number)[] | undefined {
  const steps: (string | number)[] = [];
  let at = 0;
  while (at < path.length) {
    STEP.lastIndex = at;
    const found = STEP.exec(path);
    if (found === null || (at === 0 && found[0].startsWith("."))) return undefined;
    const [whole, key, index, quoted] = found;
    if (quoted !== undefined) steps.push(JSON.parse(quoted) as string);
    else if (index !== undefined) steps.push(Number(index));
    else if (key !== undefined) steps.push(key);
    at += whole.length;
  }
  return steps;
}

const PLAIN = /^[A-Za-z_$][\w$]*$/;
const STEP = /(?:\.|(?<![^]))([A-Za-z_$][\w$]*)|\[(\d+)\]|\[("(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*")\]/uy;
