import { useMemo, useState, type ReactElement } from "react";
import { Button } from "react-aria-components";
import type { SectionRow } from "../../river/sections.ts";
import { VERDICT_WORDS } from "../findings/groups.ts";
import { useFrame } from "../frame/useFrame.ts";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { VerdictMark } from "../style/VerdictMark.tsx";
import { HourSwitch } from "./HourSwitch.tsx";
import { MaterialTable } from "./MaterialTable.tsx";
import { materialRows } from "./materials.ts";
import { Picture } from "./Picture.tsx";
import { useHeat } from "./useHeat.ts";
import { usePicture } from "./usePicture.ts";
import { atHour, capital, degrees } from "./words.ts";

/** One section: what was found at it, and its temperatures as a picture and as a table. */
export function SectionView({ row }: { readonly row: SectionRow }): ReactElement {
  const hour = useHeat((heat) => heat.hour);
  const system = useSettings((settings) => settings.system);
  const asked = usePicture(row.id, hour, system);
  const picture = asked.kind === "picture" ? asked.picture : undefined;
  const materials = useMemo(() => (picture === undefined ? [] : materialRows(picture)), [picture]);
  const [marked, setMarked] = useState<number>();
  const coldest = picture?.coldest;
  return (
    <>
      <header className="h-head">
        <h2>{capital(row.name)}</h2>
        <p className="h-coldest">
          {picture === undefined
            ? "Fetching its temperatures."
            : coldest === undefined
              ? `No room beside it is warmer than the outside ${atHour(picture.hour)}.`
              : `Coldest surface ${atHour(picture.hour)}: ${degrees(coldest.temperature, system)} in ${coldest.room}, ${coldest.words}; temperature factor ${coldest.factor.toFixed(2)}.`}
        </p>
      </header>
      <HourSwitch />
      {asked.kind === "gone" ? <p className="h-note">The site states no means for this month, so only the winter design hour can be shown.</p> : null}
      {asked.kind === "failed" ? <p className="alert">The picture could not be made: {asked.message}</p> : null}
      {picture === undefined ? <div className="h-room" aria-busy={asked.kind === "waiting"} /> : <Picture picture={picture} materials={materials} marked={marked} />}
      {picture === undefined ? null : <MaterialTable materials={materials} marked={marked} onMark={setMarked} />}
      <SectionFindings ids={row.findings} />
      <p className="quiet h-note">
        Solved on {row.unknowns.toLocaleString("en")} unknowns; halving the mesh last changed the heat flow by {(row.change * 100).toPrecision(2)} %.
      </p>
    </>
  );
}

/** What the check says of the section, each a way to its working. */
function SectionFindings({ ids }: { readonly ids: readonly string[] }): ReactElement | null {
  const findings = useSession((session) => session.screen?.findings) ?? [];
  const select = useSession((session) => session.select);
  const turnTo = useFrame((frame) => frame.turnTo);
  const own = findings.filter(({ id }) => ids.includes(id));
  if (own.length === 0) return null;
  return (
    <section aria-label="Findings at this section">
      <h3>Findings here</h3>
      <ul className="plain-list">
        {own.map(({ id, verdict, says }) => (
          <li key={id}>
            <Button
              className="h-finding"
              onPress={() => {
                select({ kind: "finding", id });
                turnTo("findings");
              }}
            >
              <span className={`is-${verdict}`}>
                <VerdictMark verdict={verdict} />
              </span>
              <span>
                <span className="only-heard">{VERDICT_WORDS[verdict].one}: </span>
                {says}
              </span>
            </Button>
          </li>
        ))}
      </ul>
    </section>
  );
}
