import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";

/** Every file under a folder, by its path in it. */
export function filesIn(folder: string): readonly (readonly [string, Buffer])[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => {
      const path = join(entry.parentPath, entry.name);
      return [path.slice(folder.length + 1), readFileSync(path)] as const;
    });
}
