import { useMemo, useRef, useState, type ReactElement } from "react";
import type { Vec2 } from "../../river/screen.ts";
import type { SectionPicture } from "../../river/sections.ts";
import { useSettings } from "../state/settings.ts";
import { frameIn, lieOf, toPixels } from "./frame.ts";
import { gridPoint } from "./gridPoint.ts";
import { Legend } from "./Legend.tsx";
import type { MaterialRow } from "./materials.ts";
import { Overlay } from "./Overlay.tsx";
import { probeText } from "./probeText.ts";
import { usePainted } from "./usePainted.ts";
import { useProbe } from "./useProbe.ts";
import { useSize } from "./useSize.ts";

interface Shown {
  readonly picture: SectionPicture;
  readonly materials: readonly MaterialRow[];
  /** Number of the material to mark. */
  readonly marked: number | undefined;
}

/** Right of the picture: the numbers of its materials. */
const NUMBERS = 32;
/** How near to a line of a sheet the probe takes it, pixels. */
const NEAR = 3;

/** The temperatures of a section as shades between lines of equal temperature, and a probe to read them at any point. */
export function Picture({ picture, materials, marked }: Shown): ReactElement {
  const system = useSettings((settings) => settings.system);
  const area = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(area);
  const frame = useMemo(() => frameIn(picture.window, lieOf(picture.axes), Math.max(0, width - NUMBERS), height), [picture.window, picture.axes, width, height]);
  const { canvas, bands } = usePainted(picture, frame);
  const [probe, setProbe] = useState<Vec2>();
  const [isHeard, setIsHeard] = useState(false);
  const move = (to: Vec2 | undefined, heard: boolean): void => {
    setProbe(to);
    setIsHeard(heard);
  };
  const hands = useProbe({ frame, probe, coldest: picture.coldest?.at, move });
  const found = probe === undefined ? undefined : gridPoint(picture, probe, NEAR / frame.scale);
  const cross = probe === undefined ? undefined : toPixels(frame, probe);
  const says = cross === undefined ? undefined : probeText({ x: cross.x / frame.scale, y: (frame.height - cross.y) / frame.scale }, found, system);
  return (
    <div className="h-picture">
      <div className="h-frame">
        <div className="h-room is-measure" ref={area} />
        <div className="h-sheet" style={{ width: frame.width + NUMBERS, height: frame.height }}>
          <canvas ref={canvas} className="h-canvas" style={{ width: frame.width, height: frame.height }} aria-hidden="true" />
          <Overlay picture={picture} materials={materials} marked={marked} frame={frame} numbers={NUMBERS} />
          <div
            className="h-probe"
            style={{ width: frame.width, height: frame.height }}
            role="application"
            aria-roledescription="picture with a probe"
            aria-label={`Temperatures in the ${picture.name}. Arrow keys move the probe, Home puts it on the coldest surface.`}
            tabIndex={0}
            {...hands}
          >
            {cross === undefined ? null : (
              <svg className="h-cross" width={frame.width} height={frame.height} aria-hidden="true">
                <path d={`M${cross.x} 0V${frame.height}M0 ${cross.y}H${frame.width}`} />
                <circle cx={cross.x} cy={cross.y} r="4" />
              </svg>
            )}
          </div>
        </div>
      </div>
      <p className="h-reading">
        {says === undefined ? (
          <span className="quiet">Point at the picture, or move with the arrow keys, to read a temperature.</span>
        ) : (
          <>
            <strong className="figures">{says.value}</strong> {says.what} <span className="quiet">{says.place}</span>
          </>
        )}
      </p>
      <p className="only-heard" role="status">
        {isHeard && says !== undefined ? `${says.value} ${says.what}, ${says.place}` : ""}
      </p>
      <Legend picture={picture} bands={bands} />
    </div>
  );
}
