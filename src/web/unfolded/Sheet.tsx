import { useEffect, useMemo, useRef, useState, type FocusEvent, type PointerEvent, type ReactElement } from "react";
import type { Screen, Vec2 } from "../../river/screen.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { typedFile } from "../state/typedFile.ts";
import { Dimensions } from "./Dimensions.tsx";
import { FaceDrawing } from "./FaceDrawing.tsx";
import { FaceThings } from "./FaceThings.tsx";
import { GuideLines } from "./GuideLines.tsx";
import { Handles } from "./Handles.tsx";
import { hitOf } from "./hit.ts";
import { Labels } from "./Labels.tsx";
import { Marks, plateOf } from "./Marks.tsx";
import { marksOf } from "./marks.ts";
import { thingsOf, type Thing } from "./things.ts";
import type { Placement } from "./unfold.ts";
import { useConductor, type Guides } from "./useConductor.ts";
import { useSheetKeys } from "./useSheetKeys.ts";
import { toScreen, type Size, type View } from "./view.ts";

interface Shown {
  readonly screen: Screen;
  readonly placements: readonly Placement[];
  readonly view: View;
  readonly size: Size;
  readonly onPan: (by: Vec2) => void;
  readonly onZoom: (about: Vec2, times: number) => void;
  readonly onFit: () => void;
  /** True on a narrow screen, where the sheet is read and nothing is dragged. */
  readonly reading: boolean;
}

/** The drawing itself: faces, things on them, and what the hands do to them. */
export function Sheet({ screen, placements, view, size, onPan, onZoom, onFit, reading }: Shown): ReactElement {
  const svg = useRef<SVGSVGElement>(null);
  const [busy, setBusy] = useState(false);
  /** Where the drawing was when the hand came down: it must not move under a gesture. */
  const corner = useRef<Vec2>({ x: 0, y: 0 });
  const { file, stale, selection, lit } = useSession();
  const layers = useSettings((settings) => settings.layers);
  const { take, guides } = useConductor({ placements, view, onPan, onZoom });
  const filed = useMemo(() => thingsOf(file, screen), [file, screen]);
  const things = useMemo(() => inHand(filed, guides), [filed, guides]);
  const marks = useMemo(() => marksOf(screen, filed), [screen, filed]);
  const plates = marks.flatMap((mark) => placements.filter(({ surface }) => surface.id === mark.surface).map((placement) => plateOf(mark, placement, view)));
  const picked = pickedThings(things, selection, placements);
  const keys = useSheetKeys({ screen, placements, things, view, size, onPan, onZoom, onFit, onCancel: () => setBusy(take({ kind: "cancel" })) });
  useWheel(svg, onPan, onZoom);

  const at = (event: PointerEvent): Vec2 => ({ x: event.clientX - corner.current.x, y: event.clientY - corner.current.y });
  const onPointerDown = (event: PointerEvent<SVGSVGElement>): void => {
    if (event.button !== 0 && event.button !== 1) return;
    event.currentTarget.setPointerCapture(event.pointerId);
    const { left, top } = event.currentTarget.getBoundingClientRect();
    if (!busy) corner.current = { x: left, y: top };
    const hit = event.button === 1 ? { on: "nothing" as const } : hitOf(event.target);
    setBusy(take({ kind: "down", pointer: event.pointerId, at: at(event), hit, copy: event.altKey, reading }));
  };
  const onPointerMove = (event: PointerEvent<SVGSVGElement>): void => {
    if (busy) take({ kind: "move", pointer: event.pointerId, at: at(event), free: event.ctrlKey || event.metaKey });
  };
  const onPointerUp = (event: PointerEvent<SVGSVGElement>): void => setBusy(take({ kind: "up", pointer: event.pointerId, at: at(event) }));

  return (
    <svg
      ref={svg}
      className={`u-sheet${guides === undefined ? "" : " is-moving"}${stale ? " is-stale" : ""}`}
      width={size.width}
      height={size.height}
      viewBox={`0 0 ${String(size.width)} ${String(size.height)}`}
      role="group"
      aria-label="Unfolded box, every face seen from inside"
      onPointerDown={onPointerDown}
      onPointerMove={onPointerMove}
      onPointerUp={onPointerUp}
      onPointerCancel={() => setBusy(take({ kind: "cancel" }))}
      onKeyDown={keys.onKeyDown}
      onFocus={(event: FocusEvent) => bringIntoView(event.target, svg.current, onPan)}
    >
      <g transform={`translate(${String(view.x)} ${String(view.y)}) scale(${String(view.scale)})`}>
        <g className="u-build">
          {placements.map((placement) => (
            <FaceDrawing key={placement.key} build={screen.build} placement={placement} layers={layers} lit={lit} />
          ))}
        </g>
        {placements.map((placement) => (
          <FaceThings key={placement.key} placement={placement} things={things} file={typedFile(file)} screen={screen} layers={layers} selection={selection} lit={lit} />
        ))}
      </g>
      {layers.dimensions && guides === undefined && <Dimensions placements={placements} things={things} view={view} />}
      <Labels placements={placements} things={things.filter(({ kind }) => layers[kind === "item" ? "items" : "openings"])} view={view} taken={guides === undefined ? plates : []} />
      {guides === undefined && <Marks marks={marks} placements={placements} view={view} />}
      {!reading && picked.map(({ thing, placement }) => <Handles key={placement.key} thing={thing} placement={placement} view={view} />)}
      {guides !== undefined && <GuideLines guides={guides} view={view} />}
      <ScaleBar view={view} size={size} />
    </svg>
  );
}

/** The things with the one in the hand where the hand has it, which the file follows a little later. */
function inHand(things: readonly Thing[], guides: Guides | undefined): readonly Thing[] {
  if (guides === undefined) return things;
  const { id, placement, rect } = guides;
  return things.map((thing) => {
    if (thing.id !== id || thing.surface !== placement.surface.id) return thing;
    const { rect: was, around } = thing;
    const moved = {
      u0: around.u0 + rect.u0 - was.u0, u1: around.u1 + rect.u1 - was.u1, v0: around.v0 + rect.v0 - was.v0, v1: around.v1 + rect.v1 - was.v1,
    };
    return { ...thing, rect, around: around === was ? rect : moved };
  });
}

/** Where the picked thing is on the sheet: once for most, on both sides for what is in a partition. */
function pickedThings(
  things: readonly Thing[], selection: { readonly kind: string; readonly id: string } | undefined, placements: readonly Placement[],
): readonly { readonly thing: Thing; readonly placement: Placement }[] {
  if (selection === undefined) return [];
  const same = things.filter(({ kind, id }) => kind === selection.kind && id === selection.id);
  return same.flatMap((thing) => placements.filter(({ surface }) => surface.id === thing.surface).map((placement) => ({ thing, placement })));
}

/** Wheel and trackpad pinch zoom about the pointer; with Shift the wheel moves the paper sideways. */
function useWheel(svg: { readonly current: SVGSVGElement | null }, onPan: (by: Vec2) => void, onZoom: (about: Vec2, times: number) => void): void {
  const latest = useRef({ onPan, onZoom });
  useEffect(() => {
    latest.current = { onPan, onZoom };
  });
  useEffect(() => {
    const element = svg.current;
    if (element === null) return undefined;
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const box = element.getBoundingClientRect();
      if (event.shiftKey) {
        latest.current.onPan({ x: -event.deltaX - event.deltaY, y: 0 });
        return;
      }
      const lines = event.deltaMode === WheelEvent.DOM_DELTA_LINE ? 16 : 1;
      latest.current.onZoom({ x: event.clientX - box.left, y: event.clientY - box.top }, Math.exp((-event.deltaY * lines) / 480));
    };
    element.addEventListener("wheel", onWheel, { passive: false });
    return () => element.removeEventListener("wheel", onWheel);
  }, [svg]);
}

/** What gets the focus by key is moved onto the screen. */
function bringIntoView(target: Element, svg: SVGSVGElement | null, onPan: (by: Vec2) => void): void {
  if (svg === null || !target.matches(":focus-visible")) return;
  const seen = svg.getBoundingClientRect();
  const box = target.getBoundingClientRect();
  const middle = { x: (box.left + box.right) / 2, y: (box.top + box.bottom) / 2 };
  const out = middle.x < seen.left || middle.x > seen.right || middle.y < seen.top || middle.y > seen.bottom;
  if (out) onPan({ x: (seen.left + seen.right) / 2 - middle.x, y: (seen.top + seen.bottom) / 2 - middle.y });
}

/** A metre, or a part of one, as long as it is on the sheet. */
function ScaleBar({ view, size }: { readonly view: View; readonly size: Size }): ReactElement {
  const system = useSettings((settings) => settings.system);
  const [metres, text] = BARS[system].find(([long]) => long * view.scale <= 140) ?? (BARS[system].at(-1) ?? SMALLEST_BAR);
  const from = { x: 14, y: size.height - 14 };
  const to = toScreen({ ...view, ...from }, { x: metres, y: 0 });
  return (
    <g className="u-scale" aria-hidden="true">
      <path d={`M${String(from.x)} ${String(from.y - 5)}v5H${String(to.x)}v-5`} />
      <text className="u-text" x={to.x + 6} y={from.y}>{text}</text>
    </g>
  );
}

const SMALLEST_BAR = [0.01, "10 mm"] as const;
const FOOT = 0.3048;
const BARS: Readonly<Record<"metric" | "imperial", readonly (readonly [number, string])[]>> = {
  metric: [[5, "5 m"], [2, "2 m"], [1, "1 m"], [0.5, "500 mm"], [0.2, "200 mm"], [0.1, "100 mm"], [0.05, "50 mm"], [0.02, "20 mm"], SMALLEST_BAR],
  imperial: [[10 * FOOT, "10 ft"], [5 * FOOT, "5 ft"], [2 * FOOT, "2 ft"], [FOOT, "1 ft"], [FOOT / 2, "6 in"], [FOOT / 6, "2 in"], [FOOT / 12, "1 in"], [FOOT / 24, "1/2 in"]],
};
