import type { Snag } from "../../build/build.ts";
import type { Finding } from "../check.ts";
import type { Fit, Rule } from "./context.ts";

/** What the build could not be given as asked, each place told once. */
export const snags: Rule = (fit) => {
  const told = new Map(fit.build.snags.map((snag) => findingOf(fit, snag)).map((finding) => [finding.id, finding]));
  return [...told.values()];
};

function findingOf({ build, make }: Fit, snag: Snag): Finding {
  const surface = build.surfaces.find(({ id }) => id === snag.surface)?.name ?? snag.surface;
  switch (snag.kind) {
    case "no header room":
      return make(
        snag.kind,
        { opening: snag.opening, surface },
        { verdict: "stop", at: `snags/header/${snag.opening}`, about: [snag.opening, snag.surface] },
      );
    case "jamb left out":
      return make(
        snag.kind,
        { opening: snag.opening, surface },
        { verdict: "watch", at: `snags/jamb/${snag.opening}`, about: [snag.opening, snag.surface] },
      );
    case "stagger lost":
      return make(
        snag.kind,
        { surface, layer: snag.layer, at: snag.seam },
        { verdict: "watch", at: `snags/stagger/${snag.surface}/${snag.layer}/${millimetres(snag.seam)}`, about: [snag.surface] },
      );
    case "no seam line":
      return make(
        snag.kind,
        { surface, layer: snag.layer, at: snag.from },
        { verdict: "stop", at: `snags/seam/${snag.surface}/${snag.layer}/${millimetres(snag.from)}`, about: [snag.surface] },
      );
  }
}

/** Part of a stable id. */
function millimetres(length: number): string {
  return String(Math.round(length * 1000));
}
