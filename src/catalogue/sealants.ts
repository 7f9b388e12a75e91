import { source } from "../working/source.ts";
import type { SealantRow } from "./rows.ts";

const practice = source("volume of the piece over the bead, spread or joint named; losses not counted", "derived");
const packs = source("usual packs and rates of made products", "typical");

const CARTRIDGE = 300e-6;
const BEAD_6_BY_6 = 0.006 * 0.006;
const cartridgeMetres = { amount: CARTRIDGE / BEAD_6_BY_6, of: "m" } as const;

/** Sealants, adhesives, tapes, fillers and weld. One piece gives `perPiece` before losses. */
export const sealantRows: readonly SealantRow[] = [
  { id: "sealant-polyurethane", what: "polyurethane sealant, 300 mL cartridge, bead 6 x 6 mm", source: practice, unit: "cartridge", perPiece: cartridgeMetres, mass: 0.42 },
  { id: "sealant-silicone", what: "neutral-cure silicone sealant, 300 mL cartridge, bead 6 x 6 mm", source: practice, unit: "cartridge", perPiece: cartridgeMetres, mass: 0.36 },
  { id: "sealant-acoustic", what: "acoustic sealant, 300 mL cartridge, bead 6 x 6 mm", source: practice, unit: "cartridge", perPiece: cartridgeMetres, mass: 0.45 },
  { id: "sealant-firestop", what: "intumescent firestop sealant, 300 mL cartridge, bead 6 x 6 mm; the listed system gives the real depth", source: practice, unit: "cartridge", perPiece: cartridgeMetres, mass: 0.42 },
  { id: "tape-butyl", what: "butyl tape 20 x 1.5 mm", source: packs, unit: "roll", perPiece: { amount: 15, of: "m" }, mass: 0.7 },
  { id: "tape-thermal", what: "closed-cell thermal break tape 40 x 3 mm for stud flanges", source: packs, unit: "roll", perPiece: { amount: 30, of: "m" }, mass: 0.2 },
  { id: "tape-joint", what: "paper joint tape 50 mm", source: packs, unit: "roll", perPiece: { amount: 150, of: "m" }, mass: 1.3 },
  { id: "compound-joint", what: "ready-mixed joint compound, 17 L tub, three coats over tape", source: packs, unit: "tub", perPiece: { amount: 80, of: "m" }, mass: 28 },
  { id: "adhesive-construction", what: "construction adhesive, 300 mL cartridge, bead 6 x 6 mm", source: practice, unit: "cartridge", perPiece: cartridgeMetres, mass: 0.42 },
  { id: "adhesive-panel", what: "panel adhesive, 14 L pail, whole back", source: packs, unit: "pail", perPiece: { amount: 18, of: "m2" }, mass: 18 },
  { id: "adhesive-floor", what: "floor covering adhesive, 15 L pail, fine notch", source: packs, unit: "pail", perPiece: { amount: 55, of: "m2" }, mass: 19 },
  { id: "foam-gap", what: "one-part gap foam, 750 mL can", source: packs, unit: "cartridge", perPiece: { amount: 0.03, of: "m3" }, mass: 0.9 },
  { id: "weld-stitch", what: "solid weld wire, 15 kg spool, 4 mm fillet, as metres of weld laid", source: packs, unit: "roll", perPiece: { amount: 160, of: "m" }, mass: 15 },
];
