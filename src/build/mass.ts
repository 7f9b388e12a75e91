import { apply } from "../working/formula.ts";
import { given, type Quantity } from "../working/quantity.ts";
import { massByArea, massByLength, massByVolume } from "./massFormulas.ts";
import type { MassBasis, Part } from "./part.ts";

/** Mass on a basis, kg; the same relations that `massWorking` shows. */
export function massOn(basis: Exclude<MassBasis, { by: "given" }>): number {
  switch (basis.by) {
    case "length":
      return massByLength.compute({ L: basis.length, m_L: basis.massPerLength });
    case "area":
      return massByArea.compute({ A: basis.area, m_A: basis.massPerArea });
    case "volume":
      return massByVolume.compute({ V: basis.volume, rho: basis.density });
  }
}

/** A part's mass with its working. */
export function massWorking(part: Part): Quantity<"kg"> {
  const basis = part.massBasis;
  const of = (field: string) => ({ kind: "part" as const, id: part.id, field });
  const means = `mass of ${part.what}`;
  switch (basis.by) {
    case "length":
      return apply(
        massByLength,
        {
          L: given(basis.length, "m", "L", "length", of("length")),
          m_L: given(basis.massPerLength, "kg/m", "m_L", "mass for each metre", of("mass per length")),
        },
        { means },
      );
    case "area":
      return apply(
        massByArea,
        {
          A: given(basis.area, "m2", "A", "area", of("area")),
          m_A: given(basis.massPerArea, "kg/m2", "m_A", "mass for each square metre", of("mass per area")),
        },
        { means },
      );
    case "volume":
      return apply(
        massByVolume,
        {
          V: given(basis.volume, "m3", "V", "volume", of("volume")),
          rho: given(basis.density, "kg/m3", "rho", "density", of("density")),
        },
        { means },
      );
    case "given":
      return given(part.mass, "kg", "m", means, of("mass"));
  }
}
