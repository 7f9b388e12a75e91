import type { Build } from "../../../build/build.ts";
import type { Finding } from "../../check.ts";
import type { EnvelopeStudy } from "../../envelope.ts";
import { decidingSections } from "./deciding.ts";
import { pictureOf, type SectionPicture } from "./picture.ts";
import { sectionRows, type SectionRow } from "./rows.ts";
import { heatTables, type HeatTables } from "./tables.ts";

/** What a study comes to, as plain data. */
export interface HeatShown {
  readonly sections: readonly SectionRow[];
  readonly tables: HeatTables;
  /** Of the sections that decide, at the winter design hour. */
  readonly pictures: readonly HeatPicture[];
}

/** A picture without the values on its grid, with what it is made of. */
export interface HeatPicture extends Omit<SectionPicture, "grid"> {
  /** W/(m K) of each material by its name. */
  readonly conductivities: Readonly<Record<string, number>>;
  /** Thickness of each sheet by its name, m. */
  readonly thicknesses: Readonly<Record<string, number>>;
}

/** Lists, tables and pictures of a study, for papers. `findings` are those of the same build. */
export function heatShown(build: Build, study: EnvelopeStudy, findings: readonly Finding[]): HeatShown {
  const sections = sectionRows(build, study, findings);
  const pictures = decidingSections(build, study, sections).flatMap((planned): readonly HeatPicture[] => {
    const solved = study.solver.solve(planned, "mould");
    const picture = solved === undefined ? undefined : pictureOf(build, solved, "design");
    if (solved === undefined || picture === undefined) return [];
    const { id, name, hour, window, axes, outlines, isotherms, dewPoint, environments, coldest } = picture;
    const { regions, sheets } = solved.section;
    const conductivities = Object.fromEntries(regions.flatMap(({ what, fill }) => (fill.kind === "solid" ? [[what, fill.conductivity]] : [])));
    const thicknesses = Object.fromEntries(sheets.map(({ what, thickness }) => [what, thickness]));
    return [{ id, name, hour, window, axes, outlines, isotherms, dewPoint, environments, coldest, conductivities, thicknesses }];
  });
  return { sections, tables: heatTables(build, study, findings), pictures };
}
