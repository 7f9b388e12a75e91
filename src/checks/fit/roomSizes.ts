import type { PlacedRoom } from "../../build/build.ts";
import { LEAST_HEADROOM } from "../limits.ts";
import type { Axis } from "../places.ts";
import { atLeast, distance, line, type Rule } from "./context.ts";
import { TOWARD } from "./sides.ts";

/** Clear sizes between finished faces, room by room. */
export const roomSizes: Rule = ({ build, make }) =>
  build.rooms.map((room) => {
    const [length, width, height] = [sizeOf(room, "x"), sizeOf(room, "y"), sizeOf(room, "z")];
    const comparison = atLeast(height, LEAST_HEADROOM);
    const facts = { room: room.name, length: length.value, width: width.value, height: height.value };
    const body = {
      at: `room-sizes/${room.room?.id ?? room.name}`,
      about: [room.room?.id ?? room.name],
      working: [length, width, height],
      comparison,
    };
    return comparison.holds
      ? make("room size", facts, { ...body, verdict: "pass" })
      : make("room too low", { ...facts, least: LEAST_HEADROOM.value }, { ...body, verdict: "watch" });
  });

function sizeOf(room: PlacedRoom, axis: Axis) {
  const words = { x: "length", y: "width", z: "height" }[axis];
  return distance(
    line(room[axis].from, room.name, `finished face ${TOWARD[axis].from}`),
    line(room[axis].to, room.name, `finished face ${TOWARD[axis].to}`),
    `clear ${words} of ${room.name}`,
  );
}
