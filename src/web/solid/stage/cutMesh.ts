import { DoubleSide, Group, LineBasicMaterial, LineSegments, Mesh, MeshBasicMaterial } from "three";
import { boundsAround } from "../geometry/measure.ts";
import { type CutFace, type CutPlane, cutFace } from "../geometry/section.ts";
import { PEELED, type SolidLayer } from "../layers.ts";
import { frameEdges } from "../sectionFrame.ts";
import type { Solid } from "../solids.ts";
import { facesOf, linesOf } from "./buffers.ts";
import type { Palette } from "./palette.ts";

/** The faces that the section cuts through the parts, filled and outlined, and the frame of the section itself. */
export interface CutMesh {
  readonly group: Group;
  readonly put: (solids: readonly Solid[], plane: CutPlane | undefined) => void;
  readonly paint: (palette: Palette) => void;
  readonly dispose: () => void;
}

export function makeCutMesh(): CutMesh {
  const group = new Group();
  const fills = new Map<SolidLayer, Mesh<ReturnType<typeof facesOf>, MeshBasicMaterial>>();
  for (const [order, layer] of PEELED.entries()) {
    // Steel bedded in foam lies in the same plane as the foam's cut: the inner layer is drawn over the outer one.
    const offset = -order;
    const mesh = new Mesh(facesOf([]), new MeshBasicMaterial({ side: DoubleSide, polygonOffset: true, polygonOffsetFactor: offset, polygonOffsetUnits: offset }));
    fills.set(layer, mesh);
    group.add(mesh);
  }
  const outline = new LineSegments(linesOf([]), new LineBasicMaterial());
  const frame = new LineSegments(linesOf([]), new LineBasicMaterial());
  group.add(outline, frame);
  return {
    group,
    put: (solids, plane) => {
      const cut = solids.flatMap((solid) => {
        const face = plane === undefined ? undefined : faceThrough(solid, plane);
        return face === undefined ? [] : [{ layer: solid.layer, face }];
      });
      for (const [layer, mesh] of fills) {
        mesh.geometry.dispose();
        mesh.geometry = facesOf(cut.filter((one) => one.layer === layer).map(({ face }) => face.fill));
      }
      outline.geometry.dispose();
      outline.geometry = linesOf(cut.map(({ face }) => face.edges));
      frame.geometry.dispose();
      frame.geometry = linesOf(plane === undefined || solids.length === 0 ? [] : [frameEdges(boundsAround(solids.map(({ bounds }) => bounds)), plane)]);
    },
    paint: ({ fill, ink, picked }) => {
      for (const [layer, mesh] of fills) mesh.material.color.copy(fill[layer]).lerp(ink, CUT_SHADE);
      outline.material.color.copy(ink);
      frame.material.color.copy(picked);
    },
    dispose: () => {
      for (const one of [...fills.values(), outline, frame]) {
        one.geometry.dispose();
        one.material.dispose();
      }
    },
  };
}

/** A cut face is a little darker than the part. */
const CUT_SHADE = 0.12;

function faceThrough({ bounds, form }: Solid, plane: CutPlane): CutFace | undefined {
  const { axis, at } = plane;
  return bounds.from[axis] < at && at < bounds.to[axis] ? cutFace(form.triangles, plane) : undefined;
}
