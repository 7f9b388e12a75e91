import { useCallback, useEffect, useLayoutEffect, useMemo, useRef, useState, type ReactElement } from "react";
import { flushSync } from "react-dom";
import { Button } from "react-aria-components";
import type { Screen, Vec2 } from "../../river/screen.ts";
import { useSession } from "../state/session.ts";
import type { Selection } from "../state/selection.ts";
import type { LayerId } from "../state/settings.ts";
import { LayerSwitches } from "./LayerSwitches.tsx";
import { layerOfPart } from "./partPaths.ts";
import { PickedBar } from "./PickedBar.tsx";
import { Sheet } from "./Sheet.tsx";
import { partitionPlacements, sheetBounds, unfold, type Placement } from "./unfold.ts";
import "./Unfolded.css";
import { fitted, panned, zoomed, type Size, type View } from "./view.ts";

/** The box unfolded: floor in the middle, walls folded out, roof beyond; every face true to scale and seen from inside. */
export function Unfolded(): ReactElement {
  const { screen, selection } = useSession();
  if (screen === undefined) return <p className="u-empty">No build yet.</p>;
  return <UnfoldedBuild screen={screen} selection={selection} />;
}

/** Narrower than this the sheet is for reading. */
const READING = 600;
const ZOOM = 1.3;

function UnfoldedBuild({ screen, selection }: { readonly screen: Screen; readonly selection: Selection | undefined }): ReactElement {
  const { surfaces } = screen.build;
  const partition = partitionShown(screen, selection);
  const faces = useMemo(() => unfold(surfaces), [surfaces]);
  const placements = useMemo(() => {
    const beside = surfaces.find(({ id, kind }) => kind === "partition" && id === partition);
    return beside === undefined ? faces : [...faces, ...partitionPlacements(faces, beside)];
  }, [faces, surfaces, partition]);
  const { frame, size } = useSize();
  const { view, setView, fit } = useView(faces, size);
  const onPan = useCallback((by: Vec2) => setView((now) => panned(now, by)), [setView]);
  const onZoom = useCallback((about: Vec2, times: number) => setView((now) => zoomed(now, about, times)), [setView]);
  const middle = { x: size.width / 2, y: size.height / 2 };
  return (
    <section className="unfolded" aria-label="Unfolded">
      <div className="u-frame" ref={frame}>
        {size.width > 0 && (
          <Sheet screen={screen} placements={placements} view={view} size={size} onPan={onPan} onZoom={onZoom} onFit={fit} reading={size.width < READING} />
        )}
        <div className="u-acts" role="toolbar" aria-label="View">
          <LayerSwitches present={layersIn(screen)} />
          <Button className="button" aria-label="Zoom out" onPress={() => onZoom(middle, 1 / ZOOM)}>
            −
          </Button>
          <Button className="button" aria-label="Zoom in" onPress={() => onZoom(middle, ZOOM)}>
            +
          </Button>
          <Button className="button" onPress={fit}>
            Whole box
          </Button>
        </div>
      </div>
      <PickedBar screen={screen} />
    </section>
  );
}

/** The partition whose faces stand beside the box: the one that is picked, or that the picked opening is cut in. */
function partitionShown({ build }: Screen, selection: Selection | undefined): string | undefined {
  if (selection === undefined) return undefined;
  const { kind, id } = selection;
  const on =
    kind === "opening" ? build.openings.find(({ opening }) => opening.id === id)?.surface.id
    : kind === "part" ? build.parts.find((part) => part.id === id)?.surface
    : id;
  return build.surfaces.find((surface) => surface.kind === "partition" && surface.id === on)?.id;
}

function layersIn({ build }: Screen): ReadonlySet<LayerId> {
  const sides = build.surfaces.flatMap((surface) => {
    const side: Placement["side"] = surface.kind === "partition" ? "door side" : "inside";
    return build.parts.filter((part) => part.surface === surface.id).map((part) => layerOfPart(part, { surface, side }));
  });
  return new Set<LayerId>([...sides.filter((layer) => layer !== undefined), "openings", "items", "clearSpaces", "dimensions"]);
}

function useSize(): { readonly frame: (element: HTMLDivElement | null) => (() => void) | undefined; readonly size: Size } {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  const frame = useCallback((element: HTMLDivElement | null) => {
    if (element === null) return undefined;
    const watch = new ResizeObserver(() => setSize({ width: element.clientWidth, height: element.clientHeight }));
    watch.observe(element);
    return () => watch.disconnect();
  }, []);
  return { frame, size };
}

interface Looking {
  readonly view: View;
  readonly setView: (next: (now: View) => View) => void;
  readonly fit: () => void;
}

/** The view, fitted anew when the box or the room for it changes and the user has not moved the paper himself. */
function useView(faces: readonly Placement[], size: Size): Looking {
  const [view, setView] = useState<View>({ scale: 50, x: 0, y: 0 });
  const own = useRef(false);
  const { x0, x1, y0, y1 } = sheetBounds(faces);
  const fit = useCallback(() => {
    own.current = false;
    setView(fitted({ x0, x1, y0, y1 }, size));
  }, [x0, x1, y0, y1, size]);
  const aside = useRef<View>(undefined);
  const outer = `${String(x1 - x0)} ${String(y1 - y0)}`;
  const before = useRef(outer);
  useLayoutEffect(() => {
    if (before.current !== outer) own.current = false;
    before.current = outer;
    if (!own.current) fit();
  }, [fit, outer]);
  // Paper shows the whole box, whatever part of it is looked at.
  useEffect(() => {
    const whole = (): void => {
      if (!own.current) return;
      aside.current = view;
      flushSync(fit);
    };
    const back = (): void => {
      if (aside.current === undefined) return;
      own.current = true;
      setView(aside.current);
      aside.current = undefined;
    };
    addEventListener("beforeprint", whole);
    addEventListener("afterprint", back);
    return () => {
      removeEventListener("beforeprint", whole);
      removeEventListener("afterprint", back);
    };
  }, [fit, view]);
  const move = useCallback((next: (now: View) => View) => {
    own.current = true;
    setView(next);
  }, []);
  return { view, setView: move, fit };
}
