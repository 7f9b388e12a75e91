import { catalogue } from "../../catalogue/catalogue.ts";
import { polygonArea, polygonBounds } from "../../geometry/polygon.ts";
import { intersect, type Rect, rectHeight } from "../../geometry/rect.ts";
import type { BuildUp } from "../../job/job.ts";
import type { Snag } from "../build.ts";
import type { PartMaker } from "../makePart.ts";
import type { Part, Role } from "../part.ts";
import { type Steel, steelAt } from "../steel.ts";
import type { Span, Surface } from "../surface.ts";
import { chooseStock } from "./chooseStock.ts";
import { type BoardField, type BoardLayout, layoutBoards } from "./layoutBoards.ts";

/** What all layers on one side of a surface have in common. */
export interface BoardPlan {
  readonly rect: Rect;
  readonly seamLines: BoardField["seamLines"];
  readonly from: "start" | "end";
  readonly holes: readonly Rect[];
  /** Steel of the box that the boards are notched around. */
  readonly steel: readonly Steel[];
  /** Number of the first layer. */
  readonly firstLayer: number;
  readonly role: Extract<Role, "board" | "floor board">;
}

export interface BoardedSurface {
  readonly parts: readonly Part[];
  /** Seams along u of all layers, which want backing. */
  readonly rowSeams: readonly number[];
  readonly snags: readonly Snag[];
}

/** Lays the layers one over the other, each clear of the seams beneath. */
export function boardSurface(
  surface: Surface,
  layers: BuildUp["boards"],
  depths: readonly Span[],
  plan: BoardPlan,
  maker: PartMaker,
): BoardedSurface {
  const parts: Part[] = [];
  const snags: Snag[] = [];
  const rowSeams = new Set<number>();
  let beneath: BoardLayout | undefined;
  for (const [index, { row, lay }] of layers.entries()) {
    const board = catalogue.boards.get(row);
    const stock = chooseStock(board, lay, rectHeight(plan.rect));
    const depth = depths[index] as Span;
    const notches = steelAt(plan.steel, depth).map(({ rect }) => rect);
    const layout = layoutBoards({ ...plan, holes: [...plan.holes, ...notches], stock, lay, beneath });
    const layer = plan.firstLayer + index;
    for (const { blank, outline } of layout.boards) {
      const area = polygonArea(outline);
      const bounds = polygonBounds(outline);
      parts.push(
        maker.make({
          role: plan.role,
          what: board.what,
          rect: bounds,
          depth,
          shape: { kind: "panel", outline: [outline], area, blank: intersect(blank, bounds) ?? bounds },
          row: { table: "boards", id: board.id },
          material: board.material,
          basis: { by: "area", area, massPerArea: board.massPerArea },
          layer,
        }),
      );
    }
    for (const seam of layout.rowSeams) rowSeams.add(seam);
    snags.push(
      ...layout.staggerLost.map((seam) => ({ kind: "stagger lost" as const, surface: surface.id, layer, seam })),
      ...layout.unsupported.map((from) => ({ kind: "no seam line" as const, surface: surface.id, layer, from })),
    );
    beneath = layout;
  }
  return { parts, rowSeams: [...rowSeams], snags };
}
