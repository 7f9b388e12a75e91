import type { Build } from "../build/build.ts";
import { surfaceOf } from "../build/build.ts";
import type { FaceId } from "../job/job.ts";
import type { Drawing, ScheduleTable, View } from "./drawing.ts";
import { lengthText } from "./views/chains.ts";
import { details } from "./views/detail.ts";
import { elevationView } from "./views/elevation.ts";
import { boardsView, framingView, leafViews } from "./views/face.ts";
import { planView } from "./views/plan.ts";
import { SCHEDULE_NOTES, itemSchedule, openingSchedule, roomSchedule } from "./views/schedule.ts";
import { crossSection, longSection, sectionPlaces } from "./views/section.ts";

const DETAILS_A_SHEET = 3;

interface Wanted {
  readonly id: string;
  readonly title: string;
  readonly views?: readonly View[];
  readonly tables?: readonly ScheduleTable[];
  readonly notes?: readonly string[];
}

/**
 * Every drawing of a build, in the order of the set: plan, outside, sections, framing, boards, openings, details. Views
 * are in metres as seen; dimensions are written in the job's units. A drawing with nothing to show is left out.
 */
export function draw(build: Build): readonly Drawing[] {
  const wanted = [plan(build), ...outside(build), ...sections(build), ...framing(build), ...boards(build), openings(build), ...detailSheets(build)];
  return wanted
    .filter(({ views = [], tables = [] }) => views.length > 0 || tables.some(({ rows }) => rows.length > 0))
    .map(({ id, title, views = [], tables = [], notes = [] }, index) => ({
      id, number: String(index + 1).padStart(2, "0"), title, views, tables, notes,
    }));
}

function plan(build: Build): Wanted {
  const { across, along } = sectionPlaces(build);
  const view = planView(build, [{ axis: "x", at: across, name: "A" }, { axis: "y", at: along, name: "B" }]);
  const notes = ["Openings that the cut passes above or below are dashed, and so are items that hang above it.", ...build.job.notes];
  return { id: "plan", title: "Floor plan", views: [view], tables: [roomSchedule(build), itemSchedule(build)], notes };
}

function outside(build: Build): readonly Wanted[] {
  const seen = (...ids: readonly FaceId[]): readonly View[] => ids.map((id) => elevationView(build, surfaceOf(build, id)));
  const notes = [
    "Places are to the edges of the hole in the skin: the outside of the welded frame.",
    "The dashed line is the top of the bare floor. Lines that meet show the hinge side: full where the leaf opens toward the viewer.",
  ];
  return [
    { id: "outside-sides", title: "Outside, left and right wall", views: seen("left", "right"), notes },
    { id: "outside-ends", title: "Outside, ends and roof", views: seen("roof", "blindEnd", "doorEnd"), notes },
  ];
}

function sections(build: Build): readonly Wanted[] {
  const { across, along } = sectionPlaces(build);
  return [
    { id: "section-across", title: "Sections across", views: [crossSection(build, across, "A", "blind"), crossSection(build, across, "A", "door")] },
    { id: "section-along", title: "Sections along", views: [longSection(build, along, "B", "right"), longSection(build, along, "B", "left")] },
  ];
}

function framing(build: Build): readonly Wanted[] {
  const seen = (...ids: readonly string[]): readonly View[] => present(ids.map((id) => framingView(build, surfaceOf(build, id))));
  const partitions = build.surfaces.filter(({ kind }) => kind === "partition").map(({ id }) => id);
  const notes = ["Dashed bars guide the foam and come off again.", "Places of openings are to the clear opening, those of studs to their middles."];
  return [
    { id: "framing-sides", title: "Framing, left and right wall", views: seen("left", "right"), notes },
    { id: "framing-levels", title: "Framing, ceiling and floor", views: seen("roof", "floor"), notes },
    { id: "framing-ends", title: partitions.length === 0 ? "Framing, ends" : "Framing, ends and partitions", views: seen("blindEnd", "doorEnd", ...partitions), notes },
  ];
}

function boards(build: Build): readonly Wanted[] {
  const count = (id: string): number => surfaceOf(build, id).stack.boards.length;
  const most = Math.max(...build.surfaces.filter(({ id }) => id !== "floor").map(({ stack, farStack }) => Math.max(stack.boards.length, (farStack ?? stack).boards.length)));
  const notes = ["Sizes are those of the piece before openings are cut out, width by height as seen. Dashed lines are the framing behind."];
  const walls = Array.from({ length: most }, (_, index): readonly Wanted[] => {
    const layer = index + 1;
    const face = (id: string): View | undefined => boardsView(build, surfaceOf(build, id), layer, "inside");
    const titled = (named: Readonly<Record<string, readonly (View | undefined)[]>>): Pick<Wanted, "title" | "views"> => {
      const shown = Object.entries(named).map(([name, views]) => ({ name, views: present(views) })).filter(({ views }) => views.length > 0);
      return { title: `Boards, layer ${layer}, ${shown.map(({ name }) => name).join(" and ")}`, views: shown.flatMap(({ views }) => views) };
    };
    const partitions = build.surfaces
      .filter(({ kind }) => kind === "partition")
      .flatMap((surface) => [
        layer <= surface.stack.boards.length ? boardsView(build, surface, layer, "door side") : undefined,
        boardsView(build, surface, surface.stack.boards.length + layer, "blind side"),
      ]);
    return [
      { id: `boards-${layer}-sides`, ...titled({ "side walls": ["left", "right"].map(face), ceiling: [face("roof")] }), notes },
      { id: `boards-${layer}-ends`, ...titled({ ends: ["blindEnd", "doorEnd"].map(face), partitions }), notes },
    ];
  });
  const leaves = leafViews(build, surfaceOf(build, "doorEnd"));
  const floor = Array.from({ length: count("floor") }, (_, index) => boardsView(build, surfaceOf(build, "floor"), index + 1, "inside"));
  return [...walls.flat(), { id: "boards-floor", title: present(leaves).length === 0 ? "Floor layers" : "Floor layers and cargo door lining", views: present([...floor, ...leaves]), notes }];
}

function openings(build: Build): Wanted {
  return { id: "openings", title: "Opening schedule", tables: [openingSchedule(build)], notes: SCHEDULE_NOTES };
}

function detailSheets(build: Build): readonly Wanted[] {
  const all = details(build);
  const { units } = build.job;
  const left = build.rooms.map(
    ({ name, y, z }) => `${name}: ${lengthText(y.to - y.from, units)} wide and ${lengthText(z.to - z.from, units)} high are left clear.`,
  );
  const notes = ["Skin, or the side toward the door end of a partition, is at the top and the room at the foot; floors lie as built.", ...left];
  return Array.from({ length: Math.ceil(all.length / DETAILS_A_SHEET) }, (_, index): Wanted => {
    const some = all.slice(index * DETAILS_A_SHEET, (index + 1) * DETAILS_A_SHEET);
    return { id: `details-${index + 1}`, title: "Build-ups", views: some.map(({ view }) => view), tables: some.map(({ table }) => table), notes };
  });
}

function present<T>(all: readonly (T | undefined)[]): readonly T[] {
  return all.filter((each): each is T => each !== undefined);
}
