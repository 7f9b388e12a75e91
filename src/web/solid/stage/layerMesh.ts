import { Group, LineBasicMaterial, LineSegments, Mesh, MeshLambertMaterial, type Plane } from "three";
import type { SolidLayer } from "../layers.ts";
import type { Solid } from "../solids.ts";
import { facesOf, linesOf } from "./buffers.ts";
import type { Palette } from "./palette.ts";

/** All parts of one layer in three draws: faces, edges and bends. */
export interface LayerMesh {
  readonly group: Group;
  /** Makes the buffers again only where a form is another object than before. */
  readonly put: (solids: readonly Solid[]) => void;
  readonly paint: (palette: Palette) => void;
  readonly clip: (planes: Plane[]) => void;
  readonly dispose: () => void;
}

export function makeLayerMesh(layer: SolidLayer): LayerMesh {
  const isFoam = layer === "foam";
  const faces = new Mesh(
    facesOf([]),
    new MeshLambertMaterial({ polygonOffset: true, polygonOffsetFactor: layer === "skin" ? THIN : 1, polygonOffsetUnits: 1, transparent: isFoam, opacity: isFoam ? FOAM : 1, depthWrite: !isFoam }),
  );
  const edges = new LineSegments(linesOf([]), new LineBasicMaterial());
  const bends = new LineSegments(linesOf([]), new LineBasicMaterial({ transparent: true, opacity: FAINT }));
  const group = new Group();
  group.add(faces, edges, bends);
  group.renderOrder = isFoam ? 1 : 0;
  let forms: readonly object[] = [];
  return {
    group,
    put: (solids) => {
      const now = solids.map(({ form }) => form);
      if (now.length === forms.length && now.every((form, at) => form === forms[at])) return;
      forms = now;
      faces.geometry.dispose();
      edges.geometry.dispose();
      bends.geometry.dispose();
      faces.geometry = facesOf(now.map(({ triangles }) => triangles));
      edges.geometry = linesOf(now.map((form) => form.edges));
      bends.geometry = linesOf(now.map((form) => form.bends));
    },
    paint: ({ fill, line }) => {
      faces.material.color.copy(fill[layer]);
      edges.material.color.copy(line[layer]);
      bends.material.color.copy(line[layer]);
    },
    clip: (planes) => {
      faces.material.clippingPlanes = planes;
      edges.material.clippingPlanes = planes;
      bends.material.clippingPlanes = planes;
    },
    dispose: () => {
      for (const one of [faces, edges, bends]) {
        one.geometry.dispose();
        one.material.dispose();
      }
    },
  };
}

/** How far faces lie behind their own lines: little for a thin sheet, or what is behind it would show through. */
const THIN = 0.3;
/** Studs are seen through foam. */
const FOAM = 0.62;
/** Lines of the profile lie close together. */
const FAINT = 0.55;
