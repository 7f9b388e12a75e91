import type { Rect, Screen, ScreenFinding, SurfaceId, Verdict } from "../../river/screen.ts";
import type { Thing } from "./things.ts";

/** Where a problem shows: a thing or part on a face, with all that is found about it. */
export interface Mark {
  /** Id of the thing, part or face that it stands at. */
  readonly at: string;
  readonly surface: SurfaceId;
  readonly rect: Rect;
  /** The worst of them. */
  readonly verdict: Extract<Verdict, "stop" | "watch">;
  /** Worst first. */
  readonly findings: readonly ScreenFinding[];
}

/** The stops and watches of a job by the first place on a face that each is about; findings about no place have no mark. */
export function marksOf({ build, findings }: Screen, things: readonly Thing[]): readonly Mark[] {
  const marks = new Map<string, Mark>();
  const problems = [...findings.filter(({ verdict }) => verdict === "stop"), ...findings.filter(({ verdict }) => verdict === "watch")];
  for (const finding of problems) {
    const place = finding.about.map((id) => placeOf(id)).find((one) => one !== undefined);
    if (place === undefined) continue;
    const before = marks.get(place.at);
    const verdict = finding.verdict === "stop" ? "stop" : "watch";
    marks.set(place.at, before === undefined ? { ...place, verdict, findings: [finding] } : { ...before, findings: [...before.findings, finding] });
  }
  return [...marks.values()];

  function placeOf(id: string): Pick<Mark, "at" | "surface" | "rect"> | undefined {
    const thing = things.find((one) => one.id === id);
    if (thing !== undefined) return { at: id, surface: thing.surface, rect: thing.rect };
    const part = build.parts.find((one) => one.id === id);
    if (part !== undefined) return { at: id, surface: part.surface, rect: part.rect };
    const face = build.surfaces.find((one) => one.id === id);
    if (face !== undefined) return { at: id, surface: face.id, rect: face.lined };
    const room = build.rooms.find((one) => one.room?.id === id);
    const floor = build.surfaces.find((one) => one.id === "floor");
    if (room === undefined || floor === undefined) return undefined;
    const rect = {
      u0: room.x.from - floor.origin.x, u1: room.x.to - floor.origin.x, v0: room.y.from - floor.origin.y, v1: room.y.to - floor.origin.y,
    };
    return { at: id, surface: "floor", rect };
  }
}
