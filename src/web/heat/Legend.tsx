import type { ReactElement } from "react";
import type { SectionPicture } from "../../river/sections.ts";
import { useSettings } from "../state/settings.ts";
import { ColdestMark } from "./Overlay.tsx";
import type { Bands } from "./shade.ts";
import { degrees, degreeUnit, level } from "./words.ts";

interface Shown {
  readonly picture: SectionPicture;
  readonly bands: Bands;
}

/** What shades and lines stand for, and how warm the air is on each side. */
export function Legend({ picture, bands }: Shown): ReactElement {
  const system = useSettings((settings) => settings.system);
  const { environments, dewPoint, coldest } = picture;
  return (
    <div className="h-legend">
      <ul className="h-bands" aria-hidden="true">
        {bands.colours.map((colour, band) => {
          const upTo = bands.levels[band];
          return (
            <li key={upTo ?? "warmest"}>
              <span className="h-band" style={{ background: `rgb(${colour.join(" ")})` }} />
              <span className={upTo === undefined ? "h-level is-unit" : "h-level figures"}>{upTo === undefined ? degreeUnit(system) : level(upTo, system)}</span>
            </li>
          );
        })}
      </ul>
      <ul className="h-keys">
        {environments.map(({ name, temperature }) => (
          <li key={name}>
            {name} <span className="figures">{degrees(temperature, system)}</span>
          </li>
        ))}
        {dewPoint === undefined ? null : (
          <li>
            <svg className="h-key" width="28" height="10" aria-hidden="true">
              <path className="h-dew" d="M1 5H27" />
            </svg>
            dew point of the room <span className="figures">{degrees(dewPoint.temperature, system)}</span>
            {dewPoint.lines.length === 0 ? ", nowhere in the section" : ""}
          </li>
        )}
        {coldest === undefined ? null : (
          <li>
            <svg className="h-key" width="20" height="20" aria-hidden="true">
              <ColdestMark at={{ x: 10, y: 10 }} />
            </svg>
            coldest surface <span className="figures">{degrees(coldest.temperature, system)}</span>
          </li>
        )}
      </ul>
    </div>
  );
}
