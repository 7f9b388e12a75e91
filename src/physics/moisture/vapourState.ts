import { AIR_PERMEABILITY, vapourFlow } from "./layer.ts";
import { meshOf, type Mesh, type Plane, type Stretch, type Wall } from "./mesh.ts";
import { nth } from "./nth.ts";
import { saturationAt } from "./saturation.ts";
import { tautLine, type Knot } from "./tautLine.ts";

/** Air on both sides of a wall: temperatures in °C, vapour pressures in Pa. */
export interface WallAirs {
  readonly outside: { readonly temperature: number; readonly vapourPressure: number };
  readonly inside: { readonly temperature: number; readonly vapourPressure: number };
}

/** Heat and vapour through a wall in a steady state; lists run over its planes from the outside surface in. */
export interface VapourState {
  readonly planes: readonly Plane[];
  /** °C. */
  readonly temperatures: readonly number[];
  /** Pa. */
  readonly saturation: readonly number[];
  /** Pa; undefined at planes between two vapour-tight layers, where nothing says how much vapour there is. */
  readonly pressures: readonly (number | undefined)[];
  /** Water gathered at each plane, kg/(s m2); below zero where it dries. */
  readonly rates: readonly number[];
  /** Vapour that enters from the room, kg/(s m2); below zero where it leaves. */
  readonly fromRoom: number;
  /** Vapour that leaves outward, kg/(s m2); below zero where it enters. */
  readonly toOutside: number;
  /** The surface itself is wet: its air is over saturation, and the wall starts from saturated air there. */
  readonly wetSurfaces: { readonly outside: boolean; readonly inside: boolean };
}

/**
 * Vapour through a wall that is dry at the start, by the tangent construction of ISO 13788 (Glaser): the vapour pressure
 * is the tautest line that nowhere passes above saturation; it bends where vapour condenses. Behind a vapour-tight layer
 * the line ends level. Throws RangeError for a wall, temperature or vapour pressure that makes no sense.
 */
export function vapourState(wall: Wall, airs: WallAirs): VapourState {
  const mesh = meshOf(wall);
  return stateOf(mesh, airs, new Set());
}

/** The state of a wall with water at some of its planes, where the air is saturated until they are dry. */
export function stateOf(mesh: Mesh, airs: WallAirs, wet: ReadonlySet<number>): VapourState {
  const { inside, outside } = checked(airs);
  const last = mesh.planes.length - 1;
  const temperatures = mesh.shares.map((share) => outside.temperature + (inside.temperature - outside.temperature) * share);
  const saturation = temperatures.map(saturationAt);
  const [outermost, innermost] = [nth(saturation, 0), nth(saturation, last)];
  const held = new Map([...wet].map((plane) => [plane, nth(saturation, plane)]));
  held.set(0, Math.min(outside.vapourPressure, outermost));
  held.set(last, Math.min(inside.vapourPressure, innermost));
  const pressures: (number | undefined)[] = mesh.planes.map(() => undefined);
  pressures[0] = held.get(0);
  pressures[last] = held.get(last);
  const rates = mesh.planes.map(() => 0);
  for (const stretch of mesh.stretches) passStretch(stretch, saturation, held, pressures, rates);
  const [toOutside, fromRoom] = [nth(rates, 0), 0 - nth(rates, last)];
  rates[0] = 0;
  rates[last] = 0;
  const wetSurfaces = { outside: outside.vapourPressure > outermost, inside: inside.vapourPressure > innermost };
  return { planes: mesh.planes, temperatures, saturation, pressures, rates, fromRoom, toOutside, wetSurfaces };
}

/** Fills in the pressures along a stretch, and what each end of a straight piece of the line gives and takes. */
function passStretch(
  { from, s }: Stretch,
  saturation: readonly number[],
  held: ReadonlyMap<number, number>,
  pressures: (number | undefined)[],
  rates: number[],
): void {
  const knots: readonly Knot[] = s.map((at, k) => ({ at, most: nth(saturation, from + k), held: held.get(from + k) }));
  const line = tautLine(knots);
  if (line === undefined) return;
  line.forEach(({ knot, value }, place) => {
    pressures[from + knot] = value;
    const next = line[place + 1];
    if (next === undefined) return;
    const s_d = nth(s, next.knot) - nth(s, knot);
    const outward = vapourFlow.compute({ delta_0: AIR_PERMEABILITY.value, p_1: next.value, p_2: value, s_d });
    rates[from + knot] = nth(rates, from + knot) + outward;
    rates[from + next.knot] = nth(rates, from + next.knot) - outward;
    for (let k = knot + 1; k < next.knot; k += 1) {
      pressures[from + k] = value + ((next.value - value) * (nth(s, k) - nth(s, knot))) / s_d;
    }
  });
}

function checked(airs: WallAirs): WallAirs {
  for (const [side, { temperature, vapourPressure }] of Object.entries(airs)) {
    if (!(temperature >= -100 && temperature <= 100)) throw new RangeError(`${side}.temperature is ${temperature} degC and has to be -100 to 100`);
    if (!(vapourPressure >= 0 && Number.isFinite(vapourPressure))) {
      throw new RangeError(`${side}.vapourPressure is ${vapourPressure} Pa and may not be below zero`);
    }
  }
  return airs;
}
