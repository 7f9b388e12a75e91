import type { ReactElement } from "react";
import { Choose } from "../controls/Choose.tsx";
import { VERDICT_WORDS } from "../findings/groups.ts";
import { useSettings } from "../state/settings.ts";
import type { Listed } from "./SectionList.tsx";
import { useHeat, wantedOf, WHOLE } from "./useHeat.ts";
import { capital, degrees, KINDS } from "./words.ts";

/** The list of sections where there is no room for it beside the picture: one to choose. */
export function SectionChoice({ sections, shown }: Listed): ReactElement {
  const system = useSettings((settings) => settings.system);
  const want = useHeat((heat) => heat.want);
  return (
    <div className="h-choice">
      <Choose
        label="Section"
        chosen={shown}
        onChoose={(key) => want(wantedOf(key))}
        groups={[
          { name: "", options: [{ id: WHOLE, name: "The whole box" }] },
          ...KINDS.map(({ kind, name }) => ({
            name,
            options: sections
              .filter((row) => row.kind === kind)
              .map((row) => {
                const verdict = row.verdict === undefined ? [] : [VERDICT_WORDS[row.verdict].one];
                const coldest = row.coldest === undefined ? [] : [degrees(row.coldest.temperature, system)];
                return { id: row.id, name: capital(row.name), more: [...verdict, ...coldest].join(", ") };
              }),
          })).filter(({ options }) => options.length > 0),
        ]}
      />
    </div>
  );
}
