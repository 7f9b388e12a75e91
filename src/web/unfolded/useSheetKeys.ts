import { useCallback, useEffect, useRef, type KeyboardEvent } from "react";
import type { Screen, Vec2 } from "../../river/screen.ts";
import { nudgeStep } from "../state/lengthText.ts";
import { useSession } from "../state/session.ts";
import { hitOf } from "./hit.ts";
import { takeAway, unitsOf } from "./thingEdits.ts";
import type { Thing } from "./things.ts";
import { stepOnFace, type Placement } from "./unfold.ts";
import { duplicateBeside, nudge } from "./useConductor.ts";
import type { Size, View } from "./view.ts";

interface Sheet {
  readonly screen: Screen;
  readonly placements: readonly Placement[];
  readonly things: readonly Thing[];
  readonly view: View;
  readonly size: Size;
  readonly onPan: (by: Vec2) => void;
  readonly onZoom: (about: Vec2, times: number) => void;
  readonly onFit: () => void;
  readonly onCancel: () => void;
}

interface Keys {
  readonly onKeyDown: (event: KeyboardEvent) => void;
}

const ARROWS: Readonly<Record<string, Vec2>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
/** What the arrow keys move the paper by, pixels. */
const PAN = 40;
const ZOOM = 1.25;

/** The keys of the sheet: everything that a hand can do, without one. */
export function useSheetKeys({ screen, placements, things, size, onPan, onZoom, onFit, onCancel }: Sheet): Keys {
  const nudging = useNudging();
  const { selection } = useSession();

  const pickFocused = (target: EventTarget): void => {
    const { select, light } = useSession.getState();
    const hit = hitOf(target);
    if (hit.on === "thing") {
      const kind = things.find(({ id }) => id === hit.id)?.kind;
      if (kind !== undefined) select({ kind, id: hit.id });
    } else if (hit.on === "face") {
      const surface = placements.find(({ key }) => key === hit.key)?.surface;
      if (surface !== undefined) select({ kind: surface.kind === "partition" ? "partition" : "face", id: surface.id });
    } else if (hit.on === "mark") {
      select({ kind: "finding", id: hit.id });
      light(screen.findings.find(({ id }) => id === hit.id)?.about ?? []);
    }
  };

  /** The picked thing on the face that has the focus, else where it is first seen. */
  const picked = (target: EventTarget): { readonly thing: Thing; readonly placement: Placement } | undefined => {
    const hit = hitOf(target);
    const key = hit.on === "thing" ? hit.key : undefined;
    const same = things.filter(({ kind, id }) => kind === selection?.kind && id === selection.id);
    const seen = same.flatMap((thing) => placements.filter(({ surface }) => surface.id === thing.surface).map((placement) => ({ thing, placement })));
    return seen.find(({ placement }) => placement.key === key) ?? seen[0];
  };

  const arrow = (event: KeyboardEvent, way: Vec2): void => {
    const found = picked(event.target);
    if (found === undefined) {
      onPan({ x: -way.x * PAN, y: -way.y * PAN });
      return;
    }
    const session = useSession.getState();
    nudging.begin(`Move ${found.thing.id}`);
    const by = nudgeStep(unitsOf(session.file)) * (event.shiftKey ? 10 : 1);
    const { u, v } = stepOnFace(found.placement, { x: way.x * by, y: way.y * by });
    nudge(screen, found.thing, u, v);
  };

  return {
    onKeyDown: (event) => {
      const session = useSession.getState();
      const way = ARROWS[event.key];
      const command = event.ctrlKey || event.metaKey;
      const middle = { x: size.width / 2, y: size.height / 2 };
      if (way !== undefined && !command && !event.altKey) arrow(event, way);
      else if (event.key === "Escape") {
        if (session.history.gesture === undefined) session.select(undefined);
        nudging.end();
        onCancel();
      } else if ((event.key === "Enter" || event.key === " ") && !command) pickFocused(event.target);
      else if (event.key === "Delete" || event.key === "Backspace") {
        const found = picked(event.target);
        if (found === undefined) return;
        takeAway(found.thing);
      } else if (command && event.key.toLowerCase() === "d") {
        const found = picked(event.target);
        if (found !== undefined) duplicateBeside(found.thing, found.placement.surface);
      } else if ((event.key === "+" || event.key === "=") && !command) onZoom(middle, ZOOM);
      else if (event.key === "-" && !command) onZoom(middle, 1 / ZOOM);
      else if (event.key === "0" && !command) onFit();
      else return;
      event.preventDefault();
    },
  };
}

interface Nudging {
  /** Opens the gesture of a key that is held down, where it is not open yet. */
  readonly begin: (label: string) => void;
  readonly end: () => void;
}

/** One step for an arrow key held down, which ends when the key, the focus, the window or the sheet goes: a key let go elsewhere is not heard here. */
function useNudging(): Nudging {
  const listening = useRef<AbortController>(undefined);
  const end = useCallback(() => {
    if (listening.current === undefined) return;
    listening.current.abort();
    listening.current = undefined;
    useSession.getState().endGesture();
  }, []);
  useEffect(() => end, [end]);
  return {
    end,
    begin: (label) => {
      const { history, beginGesture } = useSession.getState();
      // Undo ends a gesture too.
      if (listening.current !== undefined && history.gesture !== undefined) return;
      beginGesture(label);
      listening.current?.abort();
      listening.current = new AbortController();
      const { signal } = listening.current;
      addEventListener("keyup", ({ key }) => (ARROWS[key] === undefined ? undefined : end()), { signal, capture: true });
      for (const event of ["focusout", "blur", "pointerdown", "pagehide"]) addEventListener(event, end, { signal, capture: true });
      document.addEventListener("visibilitychange", end, { signal });
    },
  };
}
