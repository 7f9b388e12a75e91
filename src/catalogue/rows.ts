import type { Source } from "../working/source.ts";

/** What every catalogue row carries. Ids are lower-case words with hyphens and never change once published. */
export interface Row {
  readonly id: string;
  readonly what: string;
  readonly source: Source;
}

/** Trapezoidal sheet. Seen from inside the box: `innerFlat` touches the inside plane, `outerFlat` lies `depth` behind it. */
export interface ProfileRow extends Row {
  readonly depth: number;
  readonly pitch: number;
  readonly innerFlat: number;
  readonly outerFlat: number;
  readonly thickness: number;
  readonly material: string;
}

export interface Extents {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly source: Source;
}

/** A straight member of the box's frame, as the outside size of its section. */
export interface FrameMember {
  /** Size square to the member and parallel to the face that it borders, seen from outside. */
  readonly face: number;
  /** Size square to that face. */
  readonly depth: number;
  readonly massPerLength: number;
  readonly source: Source;
}

export interface BoxRow extends Row {
  readonly nominalFeet: 10 | 20 | 40 | 45;
  readonly height: "standard" | "high cube";
  readonly outside: Extents;
  readonly inside: Extents;
  /** From each outside face to the inside plane (inner flats of the sheet, closed doors' inner sheet, bare floor). */
  readonly insets: {
    readonly blindEnd: number;
    readonly doorEnd: number;
    readonly left: number;
    readonly right: number;
    readonly roof: number;
    readonly floor: number;
    readonly source: Source;
  };
  readonly doorOpening: { readonly width: number; readonly height: number; readonly source: Source };
  readonly mass: { readonly tare: number; readonly greatestGross: number; readonly source: Source };
  readonly fittings: {
    /** Hole centres apart along the length (S) and across the width (P). */
    readonly holesAlong: number;
    readonly holesAcross: number;
    readonly body: { readonly length: number; readonly width: number; readonly height: number };
    /** Mass of one fitting. */
    readonly mass: number;
    readonly source: Source;
  };
  /** Posts: `face` is the size seen on the side wall (along the box), `depth` the size seen on the end. */
  readonly posts: { readonly blindEnd: FrameMember; readonly doorEnd: FrameMember };
  readonly rails: {
    readonly topSide: FrameMember;
    readonly bottomSide: FrameMember;
    readonly topBlind: FrameMember;
    readonly bottomBlind: FrameMember;
    readonly doorHeader: FrameMember;
    readonly doorSill: FrameMember;
  };
  readonly crossMembers: {
    readonly pitch: number;
    readonly depth: number;
    readonly flange: number;
    readonly massPerLength: number;
    readonly source: Source;
  };
  /** Fork pockets: none on long boxes. `spacing` is between pocket centres. */
  readonly forkPockets:
    | { readonly spacing: number; readonly width: number; readonly height: number; readonly source: Source }
    | null;
  readonly floor: { readonly thickness: number; readonly material: string; readonly source: Source };
  /** Sheets by profile id. The end sheet closes the blind end. */
  readonly sheets: { readonly side: string; readonly end: string; readonly roof: string };
  readonly cargoDoors: {
    readonly leafWidth: number;
    readonly leafHeight: number;
    readonly leafMass: number;
    /** From the leaf's inner sheet to the plane that the lining may not pass if the doors are to close. */
    readonly liningDepth: number;
    /** Free margin that a leaf's lining keeps from the leaf's edges for gasket and locking gear. */
    readonly liningMargin: number;
    readonly source: Source;
  };
}

/** Conductivity in W/(m K), specific heat in J/(kg K); `vapourResistance` is the factor mu, null where vapour-tight. */
export interface MaterialRow extends Row {
  readonly density: number;
  readonly conductivity: number;
  readonly specificHeat: number;
  readonly vapourResistance: number | null;
}

export type BoardKind = "gypsum" | "wood panel" | "steel plate" | "aluminium sheet" | "plastic panel" | "floor covering" | "cement board";

/** A board, plate, panel or roll that covers a face. Sizes on offer: width across, length along the grain. */
export interface BoardRow extends Row {
  readonly kind: BoardKind;
  readonly material: string;
  readonly thickness: number;
  readonly massPerArea: number;
  readonly stock: readonly { readonly width: number; readonly length: number }[];
  /** Fastener id and its spacing at edges and in the field. Null where the layer is glued or welded. */
  readonly fixing: { readonly fastener: string; readonly edge: number; readonly field: number } | null;
  /** Adhesive or weld where there is no fastener pattern; `perArea` is for one m2, in the unit of the sealant's `perPiece`. */
  readonly bond?: { readonly sealant: string; readonly perArea: number };
  /** Joints that are taped and filled. */
  readonly taped: boolean;
}

export type SectionShape = "stud" | "track" | "hat" | "hollow" | "angle" | "flat" | "channel";

/**
 * A bar sold by length. `depth` is the web (square to the lined face), `width` the flange that carries boards, both
 * over the outside: a track is deeper than its stud by two thicknesses. `thickness` is the design thickness of folded
 * sheet and the nominal one of hollow sections, whose design takes 0.93 of it.
 */
export interface SectionRow extends Row {
  readonly shape: SectionShape;
  readonly material: string;
  readonly depth: number;
  readonly width: number;
  readonly lip?: number;
  readonly thickness: number;
  readonly massPerLength: number;
  readonly stockLengths: readonly number[];
}

/** `grip` is the range of steel and layers that it can hold, metres; mass of one piece. */
export interface FastenerRow extends Row {
  readonly length: number;
  readonly diameter: number;
  readonly mass: number;
  readonly grip: { readonly least: number; readonly greatest: number };
  readonly pack: number;
}

/** Sealants, adhesives, tapes and fillers. `perPiece` is what one piece gives, in the unit named. */
export interface SealantRow extends Row {
  readonly unit: "cartridge" | "roll" | "tub" | "pail";
  readonly perPiece: { readonly amount: number; readonly of: "m" | "m2" | "m3" };
  readonly mass: number;
}

/** Foam sprayed in place. `yield` is the sprayed volume of one set of drums. */
export interface FoamRow extends Row {
  readonly material: string;
  readonly closedCell: boolean;
  readonly passThickness: { readonly least: number; readonly greatest: number };
  /** Room that the gun needs in front of and around its nozzle. */
  readonly nozzleRoom: number;
  /** From which a product states that it is its own vapour barrier; null where its maker states none. */
  readonly barrierThickness: number | null;
  readonly setYield: number;
  readonly setMass: number;
}

/** Wool cut to stand between studs by its own springiness. `pack` is how many batts come in one. */
export interface BattRow extends Row {
  readonly kind: "rock wool" | "glass wool";
  readonly material: string;
  readonly thickness: number;
  readonly width: number;
  readonly length: number;
  readonly massPerArea: number;
  readonly pack: number;
}

export interface CoatingRow extends Row {
  readonly solidsByVolume: number;
  /** Dry film of one coat, metres, and its spreading rate as m2 for a m3 of liquid before losses. */
  readonly dryFilm: number;
  readonly spread: number;
  readonly wetDensity: number;
  readonly dryDensity: number;
  /** Hours at 20 °C. */
  readonly recoatHours: number;
  readonly cureHours: number;
  readonly packVolume: number;
}

export type ArticleKind =
  | "door" | "window" | "damper" | "screen" | "louvre" | "fan" | "split unit" | "heater" | "cable entry" | "sleeve" | "hatch";

/** A bought article that stands in an opening or in the room. Sizes as seen square to the face: width, height, depth. */
export interface ArticleRow extends Row {
  readonly kind: ArticleKind;
  readonly width: number;
  readonly height: number;
  readonly depth: number;
  readonly mass: number;
  /** Hole in the skin that the maker asks for; null where the article stands in the room. */
  readonly rough: { readonly width: number; readonly height: number } | null;
  readonly airFlow?: number;
  readonly pressure?: number;
  readonly power?: number;
  readonly cooling?: number;
  readonly heating?: number;
  /** What air, cables or a person may pass, m2: the clear opening of doors, windows, hatches and dampers when open. */
  readonly freeArea?: number;
  /** Side-hung leaves: how many stand in the frame, and how wide each is. */
  readonly leaves?: { readonly count: 1 | 2; readonly width: number };
  readonly fireMinutes?: number;
  readonly glazed?: boolean;
  /** Of the whole article from air to air, frame included, closed, W/(m2 K); a usual value where the maker's is not known. */
  readonly transmittance?: number;
}
