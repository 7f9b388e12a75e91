import { defineFormula } from "../working/formula.ts";
import { source } from "../working/source.ts";

const arithmetic = source("definition of mass, density and their line and area forms", "derived");

export const massByLength = defineFormula({
  id: "mass-by-length",
  symbol: "m",
  means: "mass of a bar",
  unit: "kg",
  text: "L * m_L",
  takes: { L: "m", m_L: "kg/m" },
  source: arithmetic,
  compute: ({ L, m_L }) => L * m_L,
});

export const massByArea = defineFormula({
  id: "mass-by-area",
  symbol: "m",
  means: "mass of a panel",
  unit: "kg",
  text: "A * m_A",
  takes: { A: "m2", m_A: "kg/m2" },
  source: arithmetic,
  compute: ({ A, m_A }) => A * m_A,
});

export const massByVolume = defineFormula({
  id: "mass-by-volume",
  symbol: "m",
  means: "mass of a filling",
  unit: "kg",
  text: "V * rho",
  takes: { V: "m3", rho: "kg/m3" },
  source: arithmetic,
  compute: ({ V, rho }) => V * rho,
});
