import { DirectionalLight, HemisphereLight, PerspectiveCamera, Plane, Scene, Vector3, WebGLRenderer } from "three";
import type { CutPlane } from "../geometry/section.ts";
import { PEELED, type SolidLayer } from "../layers.ts";
import { eyeOf, FIELD_OF_VIEW, type Pose } from "../pose.ts";
import type { Solid } from "../solids.ts";
import { makeCutMesh } from "./cutMesh.ts";
import { type LayerMesh, makeLayerMesh } from "./layerMesh.ts";
import { makeMarkMesh } from "./markMesh.ts";
import { readPalette } from "./palette.ts";

/** All that is on the stage. */
export interface Shown {
  readonly solids: readonly Solid[];
  readonly hidden: readonly SolidLayer[];
  readonly plane: CutPlane | undefined;
  readonly picked: readonly Solid[];
  readonly lit: readonly Solid[];
}

/** Draws a build on a canvas, on demand: nothing is drawn while nothing changes. */
export interface Stage {
  readonly show: (shown: Shown) => void;
  readonly look: (pose: Pose) => void;
  readonly resize: (width: number, height: number) => void;
  /** Reads the colours again, as after a change of theme. */
  readonly paint: () => void;
  readonly dispose: () => void;
}

/** Throws where the canvas gives no WebGL. */
export function makeStage(canvas: HTMLCanvasElement): Stage {
  const renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true });
  renderer.localClippingEnabled = true;
  const scene = new Scene();
  const camera = new PerspectiveCamera((FIELD_OF_VIEW * 180) / Math.PI, 1);
  camera.up.set(0, 0, 1);
  const lamp = new DirectionalLight(0xffffff, 1.9);
  lamp.position.set(-1.2, 1.6, 2.4);
  camera.add(lamp, lamp.target);
  lamp.target.position.set(0, 0, -1);
  scene.add(camera, new HemisphereLight(0xffffff, 0xc4c4c4, 2.1));
  const layers = new Map<SolidLayer, LayerMesh>(PEELED.map((layer) => [layer, makeLayerMesh(layer)]));
  const cut = makeCutMesh();
  const picked = makeMarkMesh("whole");
  const lit = makeMarkMesh("dashed");
  const meshes = [...layers.values(), cut, picked, lit];
  scene.add(...meshes.map(({ group }) => group));

  const frames: Frames = { asked: undefined };
  const draw = (): void => {
    frames.asked ??= requestAnimationFrame(() => {
      frames.asked = undefined;
      renderer.render(scene, camera);
    });
  };
  const cutShown = remembered(cut.put);
  const pickedShown = remembered(picked.put);
  const litShown = remembered(lit.put);
  return {
    show: ({ solids, hidden, plane, ...marked }) => {
      const seen = solids.filter(({ layer }) => !hidden.includes(layer));
      const planes = plane === undefined ? [] : [clippingPlane(plane)];
      for (const [layer, mesh] of layers) {
        mesh.put(solids.filter((solid) => solid.layer === layer));
        mesh.group.visible = !hidden.includes(layer);
        mesh.clip(planes);
      }
      cutShown(seen, plane);
      pickedShown(marked.picked);
      litShown(marked.lit);
      picked.clip(planes);
      lit.clip(planes);
      draw();
    },
    look: (pose) => {
      camera.position.set(...eyeOf(pose));
      camera.lookAt(...pose.target);
      // Depth is told apart the better the farther the nearest plane lies off.
      camera.near = pose.distance * NEAR;
      camera.far = pose.distance + BEYOND;
      camera.updateProjectionMatrix();
      draw();
    },
    resize: (width, height) => {
      renderer.setPixelRatio(Math.min(window.devicePixelRatio, 2));
      renderer.setSize(width, height, false);
      camera.aspect = width / height;
      camera.updateProjectionMatrix();
      draw();
    },
    paint: () => {
      const palette = readPalette(canvas);
      for (const mesh of layers.values()) mesh.paint(palette);
      cut.paint(palette);
      picked.paint(palette.picked);
      lit.paint(palette.lit);
      draw();
    },
    dispose: () => {
      if (frames.asked !== undefined) cancelAnimationFrame(frames.asked);
      for (const mesh of meshes) mesh.dispose();
      lamp.dispose();
      renderer.dispose();
    },
  };
}

/** The nearest plane, as a share of the distance to the target. */
const NEAR = 0.04;
/** Metres beyond the target that are still drawn: more than the longest box. */
const BEYOND = 40;

interface Frames {
  asked: number | undefined;
}

/** Keeps what is on this side of the plane. */
function clippingPlane({ axis, at, takes }: CutPlane): Plane {
  const normal = new Vector3().setComponent(axis, -takes);
  return new Plane(normal, at * takes);
}

/** Calls again only where an argument is another object, or a list of other objects. */
function remembered<A extends readonly unknown[]>(call: (...given: A) => void): (...given: A) => void {
  let last: A | undefined;
  return (...given) => {
    if (last !== undefined && given.every((one, at) => isSame(one, last?.[at]))) return;
    last = given;
    call(...given);
  };
}

function isSame(a: unknown, b: unknown): boolean {
  if (!Array.isArray(a) || !Array.isArray(b)) return a === b;
  return a.length === b.length && a.every((one, at) => one === b[at]);
}
