// Times the sections of a whole box: cut and solved cold, and again after one face changed and after one opening moved.
import { assemble } from "../src/build/assemble.ts";
import { type CheckContext, makeContext } from "../src/checks/context.ts";
import { studyEnvelope } from "../src/checks/envelope.ts";
import { envelope } from "../src/checks/envelope/envelope.ts";
import type { Job } from "../src/job/job.ts";
import { solveSection } from "../src/physics/conduction.ts";

/** Lines of text; `median` runs a piece of work many times and gives the middle of its times, ms. */
export function sectionTimes(job: Job, median: (run: () => unknown) => number): readonly string[] {
  const build = assemble(job);
  let solved = 0;
  let unknowns = 0;
  let inSolver = 0;
  const counting = (): CheckContext =>
    makeContext(400, (section, accuracy) => {
      const start = performance.now();
      const solution = solveSection(section, accuracy);
      inSolver += performance.now() - start;
      solved += 1;
      if (solution.ok) unknowns += solution.quality.unknowns;
      return solution;
    });
  const shares: number[] = [];
  const cold = median(() => {
    [solved, unknowns, inSolver] = [0, 0, 0];
    studyEnvelope(build, counting());
    shares.push(inSolver / solved);
  });
  const [sections, all] = [solved, unknowns];
  const share = sections * (shares.sort((a, b) => a - b)[Math.floor(shares.length / 2)] as number);
  const check = median(() => envelope.run(build, makeContext()));

  const again = (changed: Job): readonly [ms: number, solved: number] => {
    const other = assemble(changed);
    const times = Array.from({ length: 5 }, () => {
      const context = counting();
      studyEnvelope(build, context);
      solved = 0;
      const start = performance.now();
      studyEnvelope(other, context);
      return performance.now() - start;
    }).sort((a, b) => a - b);
    return [times[2] as number, solved];
  };
  const face = again(roofChanged(job));
  const opening = again(openingMoved(job));
  const line = (what: string, ms: number, more = ""): string => `${what.padEnd(28)}${ms.toFixed(0).padStart(9)} ms ${more}`.trimEnd();
  return [
    `sections of the box, ${sections} with ${all} unknowns on their last meshes`,
    line("cut and solved", cold, `of that the solver ${share.toFixed(0)} ms, ${((1000 * share) / all).toFixed(2)} us for each unknown`),
    line("the whole check", check, "with the sections that are solved again against mould"),
    line("after the roof changed", face[0], `${face[1]} of ${sections} solved again`),
    line("after an opening moved", opening[0], `${opening[1]} of ${sections} solved again`),
  ];
}

/** The roof with a tenth less foam, in a build-up of its own. */
function roofChanged(job: Job): Job {
  const { roof } = job.faces;
  const present = roof.buildUp === undefined ? undefined : job.buildUps[roof.buildUp];
  if (present?.foam === undefined) throw new Error("the roof has no foam");
  const thinner = { ...present, foam: { ...present.foam, thickness: 0.9 * present.foam.thickness } };
  return { ...job, buildUps: { ...job.buildUps, "thinner roof": thinner }, faces: { ...job.faces, roof: { ...roof, buildUp: "thinner roof" } } };
}

/** The first window 5 mm further along. */
function openingMoved(job: Job): Job {
  const window = job.openings.find(({ kind }) => kind === "window");
  if (window === undefined) throw new Error("the box has no window");
  return { ...job, openings: job.openings.map((one) => (one === window ? { ...one, at: { ...one.at, along: one.at.along + 0.005 } } : one)) };
}
