import type { Build } from "../../river/screen.ts";
import { formatLength, type System } from "../../units/format.ts";

/** What is left between finished faces, over all rooms, m. */
export interface ClearSize {
  readonly length: number;
  readonly width: number;
  readonly height: number;
}

/** The clear size of the box's inside as built; undefined for a build without rooms. */
export function clearSizeOf({ rooms }: Pick<Build, "rooms">): ClearSize | undefined {
  const [first] = rooms;
  if (first === undefined) return undefined;
  return {
    length: Math.max(...rooms.map(({ x }) => x.to)) - Math.min(...rooms.map(({ x }) => x.from)),
    width: Math.min(...rooms.map(({ y }) => y.to - y.from)),
    height: Math.min(...rooms.map(({ z }) => z.to - z.from)),
  };
}

/** "5765 mm long, 2140 mm wide, 2586 mm high". */
export function clearSizeText({ length, width, height }: ClearSize, system: System): string {
  const text = (size: number): string => formatLength(size, system);
  return `${text(length)} long, ${text(width)} wide, ${text(height)} high`;
}
