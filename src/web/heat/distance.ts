import type { Vec2 } from "../../river/screen.ts";

/** From a point to a piece of line, after both are stretched along x and y. */
export function distanceToPiece(a: Vec2, b: Vec2, at: Vec2, stretchX = 1, stretchY = 1): number {
  const [dx, dy] = [(b.x - a.x) * stretchX, (b.y - a.y) * stretchY];
  const [px, py] = [(at.x - a.x) * stretchX, (at.y - a.y) * stretchY];
  const square = dx * dx + dy * dy;
  const along = square === 0 ? 0 : Math.min(1, Math.max(0, (px * dx + py * dy) / square));
  return Math.hypot(px - along * dx, py - along * dy);
}
