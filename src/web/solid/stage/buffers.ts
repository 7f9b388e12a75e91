import { BufferAttribute, BufferGeometry } from "three";
import { crossAt } from "../geometry/measure.ts";

/** One geometry of many triangle lists, each triangle flat. */
export function facesOf(lists: readonly Float64Array[]): BufferGeometry {
  const size = sizeOf(lists);
  const positions = new Float32Array(size);
  const normals = new Float32Array(size);
  let to = 0;
  for (const list of lists) {
    positions.set(list, to);
    for (let at = 0; at < list.length; at += 9) {
      const normal = crossAt(list, at);
      const length = Math.hypot(...normal);
      for (let k = 0; k < 9; k += 1) normals[to + at + k] = (normal[k % 3] as number) / length;
    }
    to += list.length;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  geometry.setAttribute("normal", new BufferAttribute(normals, 3));
  return geometry;
}

/** One geometry of many lists of line ends. */
export function linesOf(lists: readonly Float64Array[]): BufferGeometry {
  const positions = new Float32Array(sizeOf(lists));
  let to = 0;
  for (const list of lists) {
    positions.set(list, to);
    to += list.length;
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(positions, 3));
  return geometry;
}

function sizeOf(lists: readonly Float64Array[]): number {
  return lists.reduce((sum, list) => sum + list.length, 0);
}
