import { useEffect, useRef, type PointerEvent, type RefObject } from "react";
import { orbited, panned, zoomed, type Pose } from "./pose.ts";

interface Hand {
  readonly move: (change: (pose: Pose) => Pose) => void;
  /** Called for a press that did not drag, in pixels from the upper left corner. */
  readonly pick: (x: number, y: number) => void;
  /** Height of the picture in pixels. */
  readonly height: number;
}

interface Held {
  readonly x: number;
  readonly y: number;
}

interface Handlers {
  readonly onPointerDown: (event: PointerEvent<HTMLCanvasElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLCanvasElement>) => void;
  readonly onPointerUp: (event: PointerEvent<HTMLCanvasElement>) => void;
  readonly onPointerCancel: (event: PointerEvent<HTMLCanvasElement>) => void;
  readonly onContextMenu: (event: { readonly preventDefault: () => void }) => void;
}

/** One finger or the main button turns, two fingers or another button move, pinch and wheel zoom, a press picks. */
export function useHand(canvas: RefObject<HTMLCanvasElement | null>, { move, pick, height }: Hand): Handlers {
  const held = useRef(new Map<number, Held>());
  const press = useRef<Held & { readonly dragged: boolean }>(undefined);
  const latest = useRef(move);
  useEffect(() => {
    latest.current = move;
  }, [move]);
  useEffect(() => {
    const { current } = canvas;
    // The page would scroll where the listener were passive.
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      latest.current((pose) => zoomed(pose, Math.exp(event.deltaY * WHEEL)));
    };
    current?.addEventListener("wheel", onWheel, { passive: false });
    return () => current?.removeEventListener("wheel", onWheel);
  }, [canvas]);

  const letGo = ({ pointerId }: PointerEvent): void => {
    held.current.delete(pointerId);
  };
  return {
    onPointerDown: (event) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = { x: event.clientX, y: event.clientY };
      press.current = held.current.size === 0 ? { ...at, dragged: false } : undefined;
      held.current.set(event.pointerId, at);
    },
    onPointerMove: (event) => {
      const was = held.current.get(event.pointerId);
      if (was === undefined) return;
      const now = { x: event.clientX, y: event.clientY };
      const start = press.current;
      if (start !== undefined && !start.dragged) {
        if (Math.hypot(now.x - start.x, now.y - start.y) < SLACK) return;
        press.current = { ...start, dragged: true };
      }
      const others = [...held.current].filter(([id]) => id !== event.pointerId).map(([, at]) => at);
      held.current.set(event.pointerId, now);
      const dx = (now.x - was.x) / height;
      const dy = (now.y - was.y) / height;
      const [other] = others;
      if (other !== undefined) {
        const apart = (one: Held): number => Math.max(1, Math.hypot(one.x - other.x, one.y - other.y));
        move((pose) => zoomed(panned(pose, -dx / 2, dy / 2), apart(was) / apart(now)));
      } else if (event.shiftKey || (event.buttons & MAIN) === 0) {
        move((pose) => panned(pose, -dx, dy));
      } else {
        move((pose) => orbited(pose, -dx * Math.PI, dy * Math.PI));
      }
    },
    onPointerUp: (event) => {
      const { left, top } = event.currentTarget.getBoundingClientRect();
      if (press.current?.dragged === false && event.button === 0) pick(event.clientX - left, event.clientY - top);
      press.current = undefined;
      letGo(event);
    },
    onPointerCancel: (event) => {
      press.current = undefined;
      letGo(event);
    },
    onContextMenu: (event) => event.preventDefault(),
  };
}

/** Pixels that a press may wander. */
const SLACK = 5;
const MAIN = 1;
/** Of the logarithm of the distance, for a pixel of the wheel. */
const WHEEL = 0.0012;
