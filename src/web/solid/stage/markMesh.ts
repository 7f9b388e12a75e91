import { type Color, Group, LineBasicMaterial, LineDashedMaterial, LineSegments, Mesh, MeshBasicMaterial, type Plane } from "three";
import type { Solid } from "../solids.ts";
import { facesOf, linesOf } from "./buffers.ts";

/** Parts that stand out: tinted where they are seen, and outlined through everything before them. */
export interface MarkMesh {
  readonly group: Group;
  readonly put: (solids: readonly Solid[]) => void;
  readonly paint: (color: Color) => void;
  readonly clip: (planes: Plane[]) => void;
  readonly dispose: () => void;
}

/** What is picked has a whole outline, what a finding lights up a dashed one. */
export function makeMarkMesh(line: "whole" | "dashed"): MarkMesh {
  const tint = new Mesh(
    facesOf([]),
    new MeshBasicMaterial({ transparent: true, opacity: 0.42, depthWrite: false, polygonOffset: true, polygonOffsetFactor: -1, polygonOffsetUnits: -1 }),
  );
  const through = { depthTest: false, transparent: true };
  const outline = new LineSegments(linesOf([]), line === "whole" ? new LineBasicMaterial(through) : new LineDashedMaterial({ ...through, dashSize: 0.06, gapSize: 0.04 }));
  const group = new Group();
  group.add(tint, outline);
  tint.renderOrder = 2;
  outline.renderOrder = 3;
  return {
    group,
    put: (solids) => {
      tint.geometry.dispose();
      outline.geometry.dispose();
      tint.geometry = facesOf(solids.map(({ form }) => form.triangles));
      outline.geometry = linesOf(solids.map(({ form }) => form.edges));
      if (line === "dashed") outline.computeLineDistances();
    },
    paint: (color) => {
      tint.material.color.copy(color);
      outline.material.color.copy(color);
    },
    clip: (planes) => {
      tint.material.clippingPlanes = planes;
      outline.material.clippingPlanes = planes;
    },
    dispose: () => {
      for (const one of [tint, outline]) {
        one.geometry.dispose();
        one.material.dispose();
      }
    },
  };
}
