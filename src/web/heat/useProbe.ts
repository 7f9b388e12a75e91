import type { KeyboardEvent, PointerEvent } from "react";
import type { Vec2 } from "../../river/screen.ts";
import { inWindow, toMetres, toPixels, type Frame } from "./frame.ts";

interface Probing {
  readonly frame: Frame;
  readonly probe: Vec2 | undefined;
  readonly coldest: Vec2 | undefined;
  /** `heard` where the move is to be told to those who listen. */
  readonly move: (to: Vec2 | undefined, heard: boolean) => void;
}

interface Hands {
  readonly onPointerDown: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerMove: (event: PointerEvent<HTMLElement>) => void;
  readonly onPointerLeave: (event: PointerEvent<HTMLElement>) => void;
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

const ARROWS: Readonly<Record<string, Vec2>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
/** What a key moves the probe by, m; a tenth of it with Shift. */
const STEP = 0.01;
const FINE = 0.1;

/** Moves the probe: a mouse by passing over, a finger by pressing, keys by their arrows. */
export function useProbe({ frame, probe, coldest, move }: Probing): Hands {
  const { window } = frame;
  const follow = (event: PointerEvent<HTMLElement>): void => {
    const { left, top } = event.currentTarget.getBoundingClientRect();
    move(inWindow(window, toMetres(frame, { x: event.clientX - left, y: event.clientY - top })), false);
  };
  return {
    onPointerDown: follow,
    onPointerMove: (event) => {
      if (event.pointerType === "mouse" || event.buttons !== 0) follow(event);
    },
    onPointerLeave: ({ pointerType }) => {
      if (pointerType === "mouse") move(undefined, false);
    },
    onKeyDown: (event) => {
      const way = ARROWS[event.key];
      const from = probe === undefined ? { x: frame.width / 2, y: frame.height / 2 } : toPixels(frame, probe);
      const by = STEP * (event.shiftKey ? FINE : 1) * frame.scale;
      if (way !== undefined) move(inWindow(window, toMetres(frame, { x: from.x + way.x * by, y: from.y + way.y * by })), true);
      else if (event.key === "Home" && coldest !== undefined) move(coldest, true);
      else if (event.key === "Escape" && probe !== undefined) move(undefined, false);
      else return;
      event.preventDefault();
    },
  };
}
