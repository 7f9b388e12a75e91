import type { ReactElement } from "react";
import { ToggleButton, ToggleButtonGroup } from "react-aria-components";
import { useSession } from "../state/session.ts";
import { useHeat } from "./useHeat.ts";
import { MONTH_NAMES } from "./words.ts";

const DESIGN = "design";

/** The winter design hour, or a month by its mean where the site states them. */
export function HourSwitch(): ReactElement {
  const hour = useHeat((heat) => heat.hour);
  const turnTo = useHeat((heat) => heat.turnTo);
  const hasMonths = useSession((session) => session.screen?.build.job.site.monthly !== undefined);
  return (
    <ToggleButtonGroup
      className="h-hours"
      aria-label="Hour shown"
      disallowEmptySelection
      selectedKeys={[String(hour)]}
      onSelectionChange={(keys) => {
        const [key] = [...keys];
        if (key !== undefined) turnTo(key === DESIGN ? DESIGN : Number(key));
      }}
    >
      <ToggleButton className="button" id={DESIGN} aria-label="Winter design hour">
        Design hour
      </ToggleButton>
      {hasMonths
        ? MONTH_NAMES.map((name, month) => (
            <ToggleButton key={name} className="button" id={String(month)} aria-label={`${name}, by its mean`}>
              {name.slice(0, 3)}
            </ToggleButton>
          ))
        : null}
    </ToggleButtonGroup>
  );
}
