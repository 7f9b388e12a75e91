import type { Part, Role } from "../../build/part.ts";
import { massCentre, massMoment, massSum } from "../../physics/rigidBody.ts";
import { apply } from "../../working/formula.ts";
import { given, type Quantity } from "../../working/quantity.ts";
import type { Axis } from "../places.ts";

/** Mass of the finished box and its centre in the world. */
export interface Weighed {
  readonly total: Quantity<"kg">;
  readonly centre: Readonly<Record<Axis, Quantity<"m">>>;
}

/**
 * Weighs all parts that stay, role by role: mass of each role, then of all; first moments the same way.
 * Undefined where nothing has mass.
 */
export function weigh(parts: readonly Part[]): Weighed | undefined {
  const groups = [...byRole(parts.filter(({ temporary }) => !temporary))].map(([role, alike]) => groupOf(role, alike));
  if (groups.length === 0) return undefined;
  const total = apply(massSum, { m: groups.map(({ mass }) => mass) }, { symbol: "m_total", means: "mass of the finished box" });
  if (!(total.value > 0)) return undefined;
  const centre = (axis: Axis) =>
    apply(
      massCentre,
      { S_m: groups.map(({ moment }) => moment[axis]), m_sum: total },
      { symbol: `${axis}_cm`, means: `centre of mass, ${WORDS[axis]}` },
    );
  return { total, centre: { x: centre("x"), y: centre("y"), z: centre("z") } };
}

const WORDS: Readonly<Record<Axis, string>> = {
  x: "from the outside of the blind end",
  y: "from the outside of the left wall",
  z: "above the bare floor",
};

interface Group {
  readonly mass: Quantity<"kg">;
  readonly moment: Readonly<Record<Axis, Quantity<"kg m">>>;
}

function groupOf(role: Role, parts: readonly Part[]): Group {
  const m = parts.map(({ id, mass }) => given(mass, "kg", "m", "mass of the part", { kind: "part", id, field: "mass" }));
  const moment = (axis: Axis) =>
    apply(
      massMoment,
      {
        m,
        x: parts.map(({ id, centre }) =>
          given(centre[axis], "m", axis, `centre of the part, ${WORDS[axis]}`, { kind: "part", id, field: `centre.${axis}` }),
        ),
      },
      { symbol: `S_${axis}`, means: `first moment of ${role}, ${WORDS[axis]}` },
    );
  return {
    mass: apply(massSum, { m }, { means: `mass of ${role}` }),
    moment: { x: moment("x"), y: moment("y"), z: moment("z") },
  };
}

function byRole(parts: readonly Part[]): ReadonlyMap<Role, readonly Part[]> {
  const roles = new Map<Role, Part[]>();
  for (const part of parts) {
    const alike = roles.get(part.role);
    if (alike === undefined) roles.set(part.role, [part]);
    else alike.push(part);
  }
  return roles;
}
