import type { ReactElement, ReactNode } from "react";
import { Button } from "react-aria-components";
import { formatQuantity, formatSi, type System } from "../../units/format.ts";
import type { HeatTables, SectionRow } from "../../river/sections.ts";
import { WorkingButton } from "../findings/WorkingPanel.tsx";
import { useSettings } from "../state/settings.ts";
import { useHeat } from "./useHeat.ts";
import { capital, numberIn, unitIn } from "./words.ts";

/** What the whole box loses, face by face, edge by edge, opening by opening; every number leads to its working. */
export function LossTables({ heat, sections }: { readonly heat: HeatTables; readonly sections: readonly SectionRow[] }): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { loss, yearlyHeat, missing } = heat;
  return (
    <>
      <header className="h-head">
        <h2>The whole box</h2>
        <p className="h-sums">
          {loss === undefined ? (
            <span>A face could not be solved, so there is no sum for the box.</span>
          ) : (
            <span>
              Loses{" "}
              <WorkingButton of={{ kind: "heat loss" }} title="the heat loss of the box">
                {lossText(loss)}
              </WorkingButton>{" "}
              by conduction.
            </span>
          )}
          {yearlyHeat === undefined ? null : (
            <span>
              Takes about{" "}
              <WorkingButton of={{ kind: "yearly heat" }} title="the heat of a year">
                {formatQuantity("energy", yearlyHeat, system, { unit: "kWh", digits: 3 })}
              </WorkingButton>{" "}
              a year, by monthly means.
            </span>
          )}
        </p>
        <p className="quiet">Without air that comes and goes, sun, people and equipment.</p>
        {missing.length === 0 ? null : <p>Left out, because nothing leaves a place to cut or the mesh was not fine enough: {missing.join("; ")}.</p>}
      </header>
      <FaceTable heat={heat} system={system} />
      <JunctionTable heat={heat} system={system} sections={sections} />
      <OpeningTable heat={heat} system={system} />
    </>
  );
}

interface Tabled {
  readonly heat: HeatTables;
  readonly system: System;
}

/** Kinds of numbers that stand in columns under their unit. */
type Columned = "area" | "thermalTransmittance" | "linearTransmittance";

const DIGITS: Readonly<Record<Columned, number>> = { area: 3, thermalTransmittance: 3, linearTransmittance: 2 };

function text(kind: Columned, value: number, system: System): string {
  return formatQuantity(kind, value, system, { digits: DIGITS[kind] });
}

function FaceTable({ heat: { faces }, system }: Tabled): ReactElement {
  const U = (value: number): string => numberIn(text("thermalTransmittance", value, system));
  const unitOf = (kind: Columned): string => unitIn(text(kind, 1, system));
  return (
    <Table
      caption="Faces"
      heads={[["Face"], ["Area", unitOf("area")], ["Plain", unitOf("thermalTransmittance")], ["With bridges", unitOf("thermalTransmittance")], ["Bridges add"], ["Loses", LOSS_UNIT]]}
    >
      {faces.map(({ surface, name, area, field, bridged, share, loss }) => (
        <tr key={surface}>
          <th scope="row">{capital(name)}</th>
          <td className="is-number">
            <WorkingButton of={{ kind: "face transmittance", id: surface }} title={`the area of the ${name}`}>
              {numberIn(text("area", area, system))}
            </WorkingButton>
          </td>
          <td className="is-number">
            <WorkingButton of={{ kind: "field transmittance", id: surface }} title={`the plain ${name}`}>
              {U(field)}
            </WorkingButton>
          </td>
          <td className="is-number">
            <WorkingButton of={{ kind: "face transmittance", id: surface }} title={`the ${name} with what bridges it`}>
              {U(bridged)}
            </WorkingButton>
          </td>
          <td className="is-number">
            <WorkingButton of={{ kind: "face transmittance", id: surface }} title={`what bridges add to the ${name}`}>
              {formatQuantity("ratio", share, system, { unit: "%", digits: 2 })}
            </WorkingButton>
          </td>
          <LossCell loss={loss} of={name} />
        </tr>
      ))}
    </Table>
  );
}

function JunctionTable({ heat: { junctions }, system, sections }: Tabled & { readonly sections: readonly SectionRow[] }): ReactElement {
  const shown = new Set(sections.map(({ id }) => id));
  const want = useHeat((heat) => heat.want);
  return (
    <Table caption="Edges, partitions and openings' frames, beyond the faces beside them" heads={[["Where"], ["Linear transmittance", unitIn(text("linearTransmittance", 1, system))], ["Length"], ["Loses", LOSS_UNIT]]}>
      {junctions.map(({ id, name, psi, length, loss }) => (
        <tr key={id}>
          <th scope="row">
            {shown.has(id) ? (
              <Button className="h-link" onPress={() => want({ kind: "section", id })}>
                {capital(name)}
              </Button>
            ) : (
              capital(name)
            )}
          </th>
          <td className="is-number">
            <WorkingButton of={{ kind: "junction transmittance", id }} title={name}>
              {numberIn(text("linearTransmittance", psi, system))}
            </WorkingButton>
          </td>
          <td className="is-number">
            <WorkingButton of={{ kind: "heat loss" }} title={`the length of the ${name}, in the heat loss of the box`}>
              {formatQuantity("length", length, system)}
            </WorkingButton>
          </td>
          <LossCell loss={loss} of={name} />
        </tr>
      ))}
    </Table>
  );
}

function OpeningTable({ heat: { openings }, system }: Tabled): ReactElement | null {
  if (openings.length === 0) return null;
  return (
    <Table caption="Openings" heads={[["Opening"], ["Transmittance", unitIn(text("thermalTransmittance", 1, system))], ["Area", unitIn(text("area", 1, system))], ["Loses", LOSS_UNIT]]}>
      {openings.map(({ opening, transmittance, area, loss, isBare }) => (
        <tr key={opening}>
          <th scope="row">
            {opening}
            {isBare ? <span className="quiet"> as bare steel: its article states no transmittance</span> : null}
          </th>
          <td className="is-number">
            <WorkingButton of={{ kind: "opening transmittance", id: opening }} title={`the opening ${opening}`}>
              {numberIn(text("thermalTransmittance", transmittance, system))}
            </WorkingButton>
          </td>
          <td className="is-number">
            <WorkingButton of={{ kind: "heat loss" }} title={`the area of ${opening}, in the heat loss of the box`}>
              {numberIn(text("area", area, system))}
            </WorkingButton>
          </td>
          <LossCell loss={loss} of={opening} />
        </tr>
      ))}
    </Table>
  );
}

interface Columns {
  readonly caption: string;
  /** The first is that of the rows' names; the unit stands below. */
  readonly heads: readonly (readonly [head: string, unit?: string])[];
  readonly children: ReactNode;
}

function Table({ caption, heads, children }: Columns): ReactElement {
  return (
    <div className="working-wide">
      <table className="table h-losses">
        <caption>{caption}</caption>
        <thead>
          <tr>
            {heads.map(([head, unit], index) => (
              <th key={head} scope="col" className={index === 0 ? "" : "is-number"}>
                {head}
                {unit === undefined ? null : <span className="h-head-unit"> {unit}</span>}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>{children}</tbody>
      </table>
    </div>
  );
}

function LossCell({ loss, of }: { readonly loss: number; readonly of: string }): ReactElement {
  return (
    <td className="is-number">
      <WorkingButton of={{ kind: "heat loss" }} title={`what ${of} loses, in the heat loss of the box`}>
        {numberIn(lossText(loss))}
      </WorkingButton>
    </td>
  );
}

const LOSS_UNIT = "W/K";

function lossText(loss: number): string {
  return formatSi("W/K", loss, 3);
}
