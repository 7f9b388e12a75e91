import { type Build, surfaceOf } from "../../build/build.ts";
import type { Part } from "../../build/part.ts";
import { SAME_LENGTH } from "../../geometry/tolerance.ts";
import type { BuildUp } from "../../job/job.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import { practice } from "./partQuantities.ts";

/** What a board is fastened to: the way that its supports run on the surface, and how far apart they stand. */
export interface Support {
  readonly runs: "u" | "v";
  readonly pitch: Quantity<"m">;
}

/**
 * Supports under a part: furring that stays, which runs along u; else studs, which run along v; else none, and `otherwise`
 * (metres) is taken as their spacing, as on a deck. A furring bar's own supports are the studs.
 */
export function supportOf(build: Build, part: Part, otherwise: number): Support {
  const onStuds = standsOnFraming(build, part) ? surfaceBuildUp(build, part.surface) : undefined;
  const furring = onStuds?.buildUp.furring;
  if (onStuds !== undefined && furring !== undefined && !furring.temporary && part.role !== "furring") {
    return { runs: "u", pitch: pitchOf(onStuds.path, "furring", furring.pitch) };
  }
  const studs = onStuds?.buildUp.studs;
  if (onStuds !== undefined && studs !== undefined) return { runs: "v", pitch: pitchOf(onStuds.path, "studs", studs.pitch) };
  return { runs: "v", pitch: practice(otherwise, "m", "s_stud", "spacing where no studs stand behind") };
}

/** False for floor boards, and for boards on a cargo door's leaf, which lie behind the face's own framing. */
function standsOnFraming(build: Build, part: Part): boolean {
  if (part.role === "furring") return true;
  if (part.surface === "floor" || part.role === "floor board") return false;
  const { kind, stack } = surfaceOf(build, part.surface);
  return kind === "partition" || part.depth.from >= stack.boardPlane - SAME_LENGTH;
}

/** The build-up on a surface, with its path in the job; undefined where the face is bare. */
function surfaceBuildUp(build: Build, surface: string): { readonly path: string; readonly buildUp: BuildUp } | undefined {
  const { faces, partitions, buildUps } = build.job;
  const named =
    surface === "left" || surface === "right" || surface === "blindEnd" || surface === "doorEnd" || surface === "roof"
      ? faces[surface].buildUp
      : partitions.find(({ id }) => id === surface)?.buildUp;
  const buildUp = named === undefined ? undefined : buildUps[named];
  return named === undefined || buildUp === undefined ? undefined : { path: `buildUps.${named}`, buildUp };
}

function pitchOf(path: string, of: "studs" | "furring", pitch: number): Quantity<"m"> {
  return given(pitch, "m", "s_stud", `spacing of ${of}`, { kind: "job", path: `${path}.${of}.pitch` });
}
