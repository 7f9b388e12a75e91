import { memo, type ReactElement } from "react";
import type { Build } from "../../river/screen.ts";
import type { LayerId } from "../state/settings.ts";
import { layerPaths, partPath, profilePath, rectPath, troughsPath } from "./partPaths.ts";
import { matrixText, type Placement } from "./unfold.ts";

interface Shown {
  readonly build: Build;
  readonly placement: Placement;
  readonly layers: Readonly<Record<LayerId, boolean>>;
  readonly lit: readonly string[];
}

/** What the build has on one face, layer by layer, true to scale. Nothing here can be picked; things lie above. */
export const FaceDrawing = memo(function FaceDrawing({ build, placement, layers, lit }: Shown): ReactElement {
  const { surface } = placement;
  const paths = layerPaths(build.parts, placement).filter(({ layer }) => layers[layer]);
  const litParts = build.parts.filter((part) => part.surface === surface.id && lit.includes(part.id));
  return (
    <g transform={matrixText(placement)} aria-hidden="true">
      <path className="u-edge" d={rectPath(surface.outside)} />
      <path className="u-ground" d={rectPath(surface.inside)} />
      {layers.skin && surface.profile !== undefined && (
        <>
          <path className="u-trough" d={troughsPath(surface)} />
          <path className="u-profile" d={profilePath(surface)} />
        </>
      )}
      {paths.map(({ layer, d }) => (
        <path key={layer} className={`u-layer is-${layer.startsWith("board") ? "board" : layer}`} d={d} fillRule="evenodd" />
      ))}
      <path className="u-lined" d={rectPath(surface.lined)} />
      {litParts.map((part) => (
        <path key={part.id} className="u-lit" d={partPath(part)} />
      ))}
    </g>
  );
});
