import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { useSettings } from "../state/settings.ts";
import type { MaterialRow } from "./materials.ts";
import { capital, degrees, fluxText } from "./words.ts";

interface Shown {
  readonly materials: readonly MaterialRow[];
  /** Number of the material that is marked in the picture. */
  readonly marked: number | undefined;
  readonly onMark: (number: number | undefined) => void;
}

/** The picture as a table: every material and sheet with the temperatures that it takes. */
export function MaterialTable({ materials, marked, onMark }: Shown): ReactElement {
  const system = useSettings((settings) => settings.system);
  return (
    <div className="working-wide">
      <table className="table h-materials">
        <caption>Materials in the picture, by their numbers</caption>
        <thead>
          <tr>
            <th scope="col">No.</th>
            <th scope="col">Material</th>
            <th scope="col" className="is-number">
              Lowest
            </th>
            <th scope="col" className="is-number">
              Highest
            </th>
            <th scope="col" className="is-number">
              Most heat
            </th>
          </tr>
        </thead>
        <tbody>
          {materials.map(({ number, what, lowest, highest, mostFlux }) => (
            <tr key={number} className={marked === number ? "is-marked" : ""}>
              <td>
                <Button
                  className="h-number figures"
                  aria-pressed={marked === number}
                  aria-label={`${number}: mark ${what} in the picture`}
                  onPress={() => onMark(marked === number ? undefined : number)}
                >
                  {number}
                </Button>
              </td>
              <th scope="row">{capital(what)}</th>
              <td className="is-number figures">{degrees(lowest, system)}</td>
              <td className="is-number figures">{degrees(highest, system)}</td>
              <td className="is-number figures">{mostFlux === undefined ? <span className="quiet">along it</span> : fluxText(mostFlux, system)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
