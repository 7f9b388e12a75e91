import type { Build, Part, Surface } from "../../river/screen.ts";
import type { Form } from "./geometry/form.ts";
import { type Bounds, boundsOf } from "./geometry/measure.ts";
import { partForm } from "./geometry/partForm.ts";
import { layerOfSolid, type SolidLayer } from "./layers.ts";

/** A part with its form in the world. */
export interface Solid {
  readonly part: Part;
  readonly layer: SolidLayer;
  readonly form: Form;
  readonly bounds: Bounds;
  /** All that the form was made from, as text. */
  readonly made: string;
}

/**
 * Every part of a build that has a form. A part that is as it was before keeps its form, the same object, so that an edit
 * makes again only what it changed: each answer comes from the worker as new objects, so parts are compared by content.
 */
export function solidsOf(build: Build, before: readonly Solid[]): readonly Solid[] {
  const old = new Map(before.map((solid) => [solid.part.id, solid]));
  const surfaces = new Map(build.surfaces.map((surface) => [surface.id, { surface, text: textOf(surface) }]));
  return build.parts.flatMap((part): readonly Solid[] => {
    const on = surfaces.get(part.surface);
    const layer = on === undefined ? undefined : layerOfSolid(part, on.surface);
    if (on === undefined || layer === undefined) return [];
    const made = on.text + JSON.stringify([part.rect, part.depth, part.shape, part.temporary]);
    const was = old.get(part.id);
    if (was?.made === made) return [{ ...was, part, layer }];
    const form = partForm(part, on.surface);
    return form === undefined ? [] : [{ part, layer, form, bounds: boundsOf(form.triangles), made }];
  });
}

/** Remembers the solids of the last build that it was given. */
export function makeSolidMaker(): (build: Build) => readonly Solid[] {
  let last: readonly Solid[] = [];
  return (build) => {
    last = solidsOf(build, last);
    return last;
  };
}

/** What a surface lends to the forms on it. */
function textOf({ origin, along, up, inward, profile, panel }: Surface): string {
  return JSON.stringify([origin, along, up, inward, profile?.id, panel]);
}
