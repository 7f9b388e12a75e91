import { catalogue } from "../../catalogue/catalogue.ts";
import type { Build, PlacedOpening } from "../../build/build.ts";
import { rectHeight, rectWidth } from "../../geometry/rect.ts";
import { formatQuantity } from "../../units/format.ts";
import type { ScheduleTable } from "../drawing.ts";
import { lengthText, sizeText } from "./chains.ts";
import { datumsOf } from "./faceNames.ts";

const NONE = "–";

/** Every opening: what it is, how large, where from both origins, what stands in it. */
export function openingSchedule(build: Build): ScheduleTable {
  return {
    title: "Openings",
    columns: [
      "Id", "Kind", "Face", "Clear width × height", "Hole width × height", "Along", "To other post", "Up", "Below top rail",
      "Frame", "Article, fittings and hardware", "Swing", "Fire", "Mass",
    ],
    rows: build.openings.map((placed) => row(build, placed)),
  };
}

/** What the columns of places are measured from, for the notes. */
export const SCHEDULE_NOTES: readonly string[] = [
  "Along: from the inner edge of the face's left-hand corner post, seen from outside, to the near side of the clear opening. To other post: from the far side of the clear opening to the inner edge of the other post.",
  "Up: from the top of the bare floor to the foot of the clear opening. Below top rail: from the underside of the top rail to the head of the clear opening.",
  "Roof and floor: along from the blind end's inside plane, up stands for across from the left wall's inside plane; the other two are to the outside of the box on the roof, to the inside planes on the floor. Partitions: between the finished walls, below the finished ceiling.",
  "The hole is the outside of the welded frame, or the clear opening where there is no frame.",
  "Swing: hinge side as seen from outside (from the door end for a partition).",
];

function row(build: Build, placed: PlacedOpening): readonly string[] {
  const { opening, surface, clear, hole } = placed;
  const { units } = build.job;
  const { u, v } = datumsOf(surface, surface.id === "roof" ? "outside" : "inside");
  const parts = build.parts.filter((part) => part.of === opening.id && part.surface === surface.id);
  const added = parts.filter(({ role }) => role === "opening frame" || role === "article" || role === "trim");
  const articles = [...(opening.article === undefined ? [] : [opening.article]), ...opening.fittings];
  const stands = [...articles.map((id) => catalogue.articles.get(id).what), ...opening.hardware];
  return [
    opening.id,
    opening.what ?? opening.kind,
    surface.name,
    sizeText([rectWidth(clear), rectHeight(clear)], units),
    sizeText([rectWidth(hole), rectHeight(hole)], units),
    lengthText(clear.u0 - u[0].at, units),
    lengthText(u[1].at - clear.u1, units),
    lengthText(clear.v0 - v[0].at, units),
    lengthText(v[1].at - clear.v1, units),
    opening.frame === undefined ? NONE : catalogue.sections.get(opening.frame.row).what,
    stands.length === 0 ? NONE : stands.join("; "),
    opening.swing === undefined ? NONE : `hinge ${opening.swing.hinge}, opens ${opening.swing.opens}, ${formatQuantity("angle", opening.swing.angle, units)}`,
    opening.fireRating === undefined ? NONE : formatQuantity("duration", opening.fireRating, units, { unit: "min" }),
    added.length === 0 ? NONE : formatQuantity("mass", added.reduce((sum, { mass }) => sum + mass, 0), units),
  ];
}

/** Rooms with their clear sizes. */
export function roomSchedule(build: Build): ScheduleTable {
  const { units } = build.job;
  return {
    title: "Rooms, between finished faces",
    columns: ["Room", "Length × width × height", "Floor area"],
    rows: build.rooms.map(({ name, x, y, z }) => {
      const lengths = [x.to - x.from, y.to - y.from, z.to - z.from] as const;
      return [name, sizeText(lengths, units), formatQuantity("area", lengths[0] * lengths[1], units, { digits: 3 })];
    }),
  };
}

/** Items with size, mass and the space that is kept clear. */
export function itemSchedule(build: Build): ScheduleTable {
  const { units } = build.job;
  return {
    title: "Items",
    columns: ["Id", "Item", "Length × width × height", "Mass", "Clear in front", "Clear at sides"],
    rows: build.job.items.map(({ id, what, size, mass, clear }) => [
      id, what, sizeText([size.length, size.width, size.height], units), formatQuantity("mass", mass, units),
      lengthText(clear.front, units), lengthText(clear.sides, units),
    ]),
  };
}
