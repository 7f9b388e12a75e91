import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

const GEOMETRY = source("geometry", "derived");

/** How far the layers of a face reach, m. Domain: any list; none without layers. */
export const layersDepth = defineFormula({
  id: "build-layers-depth",
  symbol: "d_layers",
  means: "layers of a face, from the inside plane to the finished face",
  unit: "m",
  text: "sum(t_layer)",
  takes: { t_layer: "m[]" },
  source: GEOMETRY,
  compute: ({ t_layer }) => t_layer.reduce((sum, one) => sum + one, 0),
});

/** Size between two finished faces, m; below zero where the layers leave no room. */
export const clearBetween = defineFormula({
  id: "build-clear-between",
  symbol: "L_clear",
  means: "clear size between finished faces",
  unit: "m",
  text: "L_outside - d_inset_1 - d_inset_2 - d_layers_1 - d_layers_2",
  takes: { L_outside: "m", d_inset_1: "m", d_inset_2: "m", d_layers_1: "m", d_layers_2: "m" },
  source: GEOMETRY,
  compute: ({ L_outside, d_inset_1, d_inset_2, d_layers_1, d_layers_2 }) => L_outside - d_inset_1 - d_inset_2 - d_layers_1 - d_layers_2,
});

/** Extent of a part along one axis of its surface, m. */
export const extent = defineFormula({
  id: "build-extent",
  symbol: "L_part",
  means: "size of a part along one axis",
  unit: "m",
  text: "x_to - x_from",
  takes: { x_from: "m", x_to: "m" },
  source: GEOMETRY,
  compute: ({ x_from, x_to }) => x_to - x_from,
});
