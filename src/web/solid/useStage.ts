import { useEffect, useRef, useState, type RefObject } from "react";
import { makeStage, type Shown, type Stage } from "./stage/stage.ts";
import { useSolid } from "./useSolid.ts";

export interface Size {
  readonly width: number;
  readonly height: number;
}

export interface Staged {
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  /** The element whose room the picture takes. */
  readonly frame: RefObject<HTMLDivElement | null>;
  readonly size: Size;
}

/** Keeps a stage on a canvas in step with what is shown, with the pose, with the room there is and with the theme. */
export function useStage({ solids, hidden, plane, picked, lit }: Shown, onLost: () => void): Staged {
  const canvas = useRef<HTMLCanvasElement>(null);
  const frame = useRef<HTMLDivElement>(null);
  const [stage, setStage] = useState<Stage>();
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });

  useEffect(() => {
    const { current } = canvas;
    if (current === null) return;
    const made = makeStage(current);
    made.paint();
    setStage(made);
    const themes = new MutationObserver(() => made.paint());
    themes.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
    const follow = ({ pose }: { readonly pose: Parameters<Stage["look"]>[0] | undefined }): void => {
      if (pose !== undefined) made.look(pose);
    };
    follow(useSolid.getState());
    const unfollow = useSolid.subscribe(follow);
    current.addEventListener("webglcontextlost", onLost);
    return () => {
      current.removeEventListener("webglcontextlost", onLost);
      unfollow();
      themes.disconnect();
      setStage(undefined);
      made.dispose();
    };
  }, [onLost]);

  useEffect(() => {
    const { current } = frame;
    if (current === null) return;
    const watch = new ResizeObserver(() => setSize({ width: current.clientWidth, height: current.clientHeight }));
    watch.observe(current);
    return () => watch.disconnect();
  }, []);

  useEffect(() => {
    if (size.width > 0 && size.height > 0) stage?.resize(size.width, size.height);
  }, [stage, size]);
  useEffect(() => stage?.show({ solids, hidden, plane, picked, lit }), [stage, solids, hidden, plane, picked, lit]);
  return { canvas, frame, size };
}
