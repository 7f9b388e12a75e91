import { useEffect, useMemo, useRef, useState, type RefObject } from "react";
import type { SectionPicture } from "../../river/sections.ts";
import { usePrinting } from "../frame/usePrinting.ts";
import type { Frame } from "./frame.ts";
import { bandsOf, shade, type Bands, type Colour } from "./shade.ts";

/** The tokens of the scale from cold to warm. */
const SCALE = ["--heat-1", "--heat-2", "--heat-3", "--heat-4", "--heat-5"];

export interface Painted {
  readonly canvas: RefObject<HTMLCanvasElement | null>;
  readonly bands: Bands;
}

/** Keeps a canvas painted with a picture's temperatures, sharp on any screen, in the colours of the theme; light on paper. */
export function usePainted({ grid, isotherms }: SectionPicture, frame: Frame): Painted {
  const canvas = useRef<HTMLCanvasElement>(null);
  const scale = useScale();
  const bands = useMemo(() => bandsOf(isotherms.map(({ temperature }) => temperature), scale), [isotherms, scale]);
  useEffect(() => {
    const { current } = canvas;
    const { width, height } = frame;
    const context = current?.getContext("2d");
    if (current === null || context === null || context === undefined || width === 0 || height === 0) return;
    const [w, h] = [Math.round(width * devicePixelRatio), Math.round(height * devicePixelRatio)];
    current.width = w;
    current.height = h;
    context.putImageData(new ImageData(shade(grid, frame, w, h, bands), w, h), 0, 0);
  }, [grid, frame, bands]);
  return { canvas, bands };
}

/** The colours of the scale in the theme that is shown. */
function useScale(): readonly Colour[] {
  const printing = usePrinting();
  const [scale, setScale] = useState(() => readScale(printing));
  useEffect(() => {
    const read = (): void => setScale(readScale(printing));
    read();
    if (printing) return undefined;
    const themes = new MutationObserver(read);
    themes.observe(document.documentElement, { attributes: true, attributeFilter: ["data-theme"] });
    return () => themes.disconnect();
  }, [printing]);
  return scale;
}

function readScale(printing: boolean): readonly Colour[] {
  const { dataset } = document.documentElement;
  const { theme } = dataset;
  // Paper is always light, and the browser says that it prints before its rules for paper hold.
  if (printing) delete dataset["theme"];
  const style = getComputedStyle(document.documentElement);
  const colours = SCALE.map((name) => colourIn(style.getPropertyValue(name)));
  if (printing && theme !== undefined) dataset["theme"] = theme;
  return colours;
}

/** "#0b6577" as its three channels. */
function colourIn(token: string): Colour {
  const [r, g, b] = [1, 3, 5].map((at) => parseInt(token.trim().slice(at, at + 2), 16)) as [number, number, number];
  return [r, g, b];
}
