import type { ReactElement } from "react";
import type { Change } from "../../job/merge.ts";
import { pathWords } from "./pathWords.ts";
import { ShownValue } from "./ShownValue.tsx";
import "../controls/controls.css";
import "./saving.css";

interface Shown {
  readonly title: string;
  readonly changes: readonly Change[];
}

/** Changes of a job file, field by field. */
export function ChangeTable({ title, changes }: Shown): ReactElement {
  if (changes.length === 0) return <p className="quiet">No field differs.</p>;
  return (
    <div className="working-wide">
      <table className="table">
        <caption>{title}</caption>
        <thead>
          <tr>
            <th scope="col">Field</th>
            <th scope="col">Before</th>
            <th scope="col">After</th>
          </tr>
        </thead>
        <tbody>
          {changes.map(({ path, before, after }) => (
            <tr key={path}>
              <th scope="row" className="change-path">
                {pathWords(path)}
              </th>
              <td className="change-value">
                <ShownValue value={before} of={`${pathWords(path)} before`} />
              </td>
              <td className="change-value">
                <ShownValue value={after} of={`${pathWords(path)} after`} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
