import { useEffect, useLayoutEffect, useMemo, useState, type ReactElement } from "react";
import type { Screen } from "../../river/screen.ts";
import { useSession } from "../state/session.ts";
import { boundsAround } from "./geometry/measure.ts";
import { Knob } from "./Knob.tsx";
import { LayerList } from "./LayerList.tsx";
import { nextToPeel, nextToPutBack, PEELED } from "./layers.ts";
import { lights, pickSolid, selectionFor, selects } from "./picking.ts";
import { PickedLine } from "./PickedLine.tsx";
import { orbited, panned, poseFrom, rayThrough, zoomed, type Pose, type ViewName } from "./pose.ts";
import { SectionBar } from "./SectionBar.tsx";
import { makeSolidMaker } from "./solids.ts";
import { useHand } from "./useHand.ts";
import { useSolid } from "./useSolid.ts";
import { useStage } from "./useStage.ts";
import { ViewBar } from "./ViewBar.tsx";

interface Shown {
  readonly job: string;
  readonly screen: Screen;
  /** The browser took its drawing context away. */
  readonly onLost: () => void;
}

const KEYS = "Arrow keys turn the build, Shift and arrow keys move it, plus and minus zoom, Home shows all of it. P peels the next layer, Shift and P puts it back. Escape lets go of what is picked.";

/** Picture, layers and section of one job's build. */
export function SolidView({ job, screen, onLost }: Shown): ReactElement {
  const { build } = screen;
  const { selection, lit, stale, select } = useSession();
  const { hidden, plane, begin, show } = useSolid();
  useLayoutEffect(() => begin(job), [begin, job]);
  const [solidsFor] = useState(makeSolidMaker);
  const solids = useMemo(() => solidsFor(build), [solidsFor, build]);
  const present = useMemo(() => PEELED.filter((layer) => solids.some((solid) => solid.layer === layer)), [solids]);
  const bounds = useMemo(() => boundsAround(solids.map((solid) => solid.bounds)), [solids]);
  const picked = useMemo(() => (selection === undefined ? [] : solids.filter(({ part }) => selects(selection, part, build))), [solids, selection, build]);
  const lighted = useMemo(() => {
    const ids = new Set(lit);
    return ids.size === 0 ? [] : solids.filter(({ part }) => lights(ids, part));
  }, [solids, lit]);
  const { canvas, frame, size } = useStage({ solids, hidden, plane, picked, lit: lighted }, onLost);
  const aspect = size.width / size.height;

  const view = (name: ViewName): void => useSolid.getState().look(poseFrom(name, bounds, aspect));
  const move = (change: (pose: Pose) => Pose): void => {
    const { pose, look } = useSolid.getState();
    if (pose !== undefined) look(change(pose));
  };
  const isSized = size.width > 0;
  useEffect(() => {
    const { pose, look } = useSolid.getState();
    if (isSized && pose === undefined) look(poseFrom("corner", bounds, aspect));
  }, [isSized, job, bounds, aspect]);

  const pick = (x: number, y: number): void => {
    const { pose } = useSolid.getState();
    if (pose === undefined) return;
    const seen = solids.filter(({ layer }) => !hidden.includes(layer));
    const found = pickSolid(seen, rayThrough(pose, aspect, (2 * x) / size.width - 1, 1 - (2 * y) / size.height), plane);
    select(found === undefined ? undefined : selectionFor(found.part));
  };
  const hand = useHand(canvas, { move, pick, height: size.height });
  const peel = (): void => {
    const next = nextToPeel(present, hidden);
    if (next !== undefined) show(next, false);
  };
  const putBack = (): void => {
    const next = nextToPutBack(present, hidden);
    if (next !== undefined) show(next, true);
  };
  const acts: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => move((pose) => orbited(pose, -TURN, 0)),
    ArrowRight: () => move((pose) => orbited(pose, TURN, 0)),
    ArrowUp: () => move((pose) => orbited(pose, 0, TURN)),
    ArrowDown: () => move((pose) => orbited(pose, 0, -TURN)),
    "Shift ArrowLeft": () => move((pose) => panned(pose, MOVE, 0)),
    "Shift ArrowRight": () => move((pose) => panned(pose, -MOVE, 0)),
    "Shift ArrowUp": () => move((pose) => panned(pose, 0, -MOVE)),
    "Shift ArrowDown": () => move((pose) => panned(pose, 0, MOVE)),
    "+": () => move((pose) => zoomed(pose, 1 / ZOOM)),
    "=": () => move((pose) => zoomed(pose, 1 / ZOOM)),
    "-": () => move((pose) => zoomed(pose, ZOOM)),
    Home: () => view("corner"),
    p: peel,
    "Shift P": putBack,
    Escape: () => select(undefined),
  };
  return (
    <section className={`solid${stale ? " is-stale" : ""}`} aria-label="Three dimensions">
      <SectionBar bounds={bounds} />
      <div className="s-body">
        <div className="s-picture">
          <ViewBar onView={view} onZoom={(by) => move((pose) => zoomed(pose, by))} />
          <div
            ref={frame}
            className="s-frame"
            role="group"
            tabIndex={0}
            aria-label={`The build in three dimensions, ${String(solids.length)} parts`}
            aria-describedby="solid-keys"
            onKeyDown={(event) => {
              if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) return;
              const named = event.shiftKey && event.key !== "+" ? `Shift ${event.key}` : event.key;
              const act = acts[named];
              if (act === undefined) return;
              event.preventDefault();
              act();
            }}
          >
            <canvas ref={canvas} className="s-canvas" aria-hidden="true" {...hand} />
            {isSized && <Knob bounds={bounds} size={size} />}
          </div>
        </div>
        <LayerList solids={solids} present={present} onPeel={peel} onPutBack={putBack} />
      </div>
      <PickedLine picked={picked} lit={lighted} hidden={hidden} />
      <p id="solid-keys" className="s-keys quiet">
        {KEYS}
      </p>
    </section>
  );
}

/** Radians for an arrow key. */
const TURN = Math.PI / 24;
/** Share of the picture's height for an arrow key. */
const MOVE = 0.05;
const ZOOM = 1.15;
