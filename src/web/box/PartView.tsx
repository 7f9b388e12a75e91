import type { ReactElement } from "react";
import { Button } from "react-aria-components";
import { formatLength, formatQuantity } from "../../units/format.ts";
import { nameOf, selectionOf } from "../findings/about.ts";
import { WorkingButton } from "../findings/WorkingPanel.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";

/** What a part is, where it comes from and what it weighs; parts are worked out, so nothing is edited here. */
export function PartView({ id }: { readonly id: string }): ReactElement {
  const build = useSession((session) => session.screen?.build);
  const select = useSession((session) => session.select);
  const system = useSettings((settings) => settings.system);
  const part = build?.parts.find((one) => one.id === id);
  if (build === undefined || part === undefined) return <p className="quiet">The latest run has no part {id}.</p>;
  const { rect, depth, of, surface } = part;
  const size = [rect.u1 - rect.u0, rect.v1 - rect.v0, depth.to - depth.from].map((length) => formatLength(length, system)).join(" × ");
  const owner = of ?? surface;
  const selection = selectionOf(build, owner);
  return (
    <dl className="facts">
      <dt>What</dt>
      <dd>{part.what}</dd>
      <dt>Does</dt>
      <dd>{part.role}</dd>
      <dt>Material</dt>
      <dd>{part.material ?? "bought as a whole"}</dd>
      <dt>Along × up × inward</dt>
      <dd>
        <WorkingButton of={{ kind: "size of part", id }} title={`the size of ${id}`}>
          {size}
        </WorkingButton>
      </dd>
      <dt>Mass</dt>
      <dd>
        <WorkingButton of={{ kind: "mass of part", id }} title={`the mass of ${id}`}>
          {formatQuantity("mass", part.mass, system)}
        </WorkingButton>
      </dd>
      <dt>Belongs to</dt>
      <dd>
        {selection === undefined ? (
          nameOf(build, owner)
        ) : (
          <Button className="button" onPress={() => select(selection)}>
            {nameOf(build, owner)}
          </Button>
        )}
      </dd>
    </dl>
  );
}
