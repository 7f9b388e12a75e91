import { overlaps } from "../../geometry/rect.ts";
import type { Rule } from "./context.ts";

/** Openings cut in the cargo doors. */
export const cargoDoorOpenings: Rule = (fit) => {
  const working = fit.build.job.faces.doorEnd.cargoDoors === "working";
  const leaves = fit.parts("doorEnd", "cargo door");
  return fit.build.openings
    .filter(({ surface }) => surface.id === "doorEnd")
    .flatMap(({ opening, hole }) => {
      const cut = leaves.filter((leaf) => overlaps(leaf.rect, hole)).map((leaf) => leaf.id);
      const facts = { opening: opening.id };
      const body = { at: `cargo-door-openings/${opening.id}`, about: [opening.id, ...cut] };
      if (cut.length > 1) {
        return [
          working
            ? fit.make("opening crosses leaves", facts, { ...body, verdict: "stop" })
            : fit.make("opening across fixed leaves", facts, { ...body, verdict: "watch" }),
        ];
      }
      return working && cut.length === 1 ? [fit.make("opening on working leaf", facts, { ...body, verdict: "watch" })] : [];
    });
};
