/** The least thickness that passes, found by looking. */
export type LeastThickness =
  /** Passes at `thickness` and not a millimetre below. `failsAgain`: a greater thickness that was looked at and fails, if any. */
  | { readonly kind: "found"; readonly thickness: number; readonly failsAgain: number | undefined }
  /** Passes at the least thickness already. */
  | { readonly kind: "any"; readonly failsAgain: number | undefined }
  /** Fails at every thickness that was looked at, up to the greatest. */
  | { readonly kind: "none" };

/** Steps of the first look, in millimetres: what passes or fails in between goes unseen. */
const FIRST_LOOK = 8;

/**
 * The least thickness from `least` to `greatest`, m, at which `passes`, to a whole millimetre. More foam does not always warm
 * every surface, so the whole range is looked at in steps of 8 mm first, and the answer then found by halving.
 * Yields before every look, so that the caller can stop. Throws RangeError where the range is not one of thicknesses.
 */
export function* leastThickness(least: number, greatest: number, passes: (thickness: number) => boolean): Generator<undefined, LeastThickness> {
  if (!(least > 0) || !(greatest >= least)) throw new RangeError(`thicknesses from ${least} to ${greatest} m are no range`);
  const looks = looksOver(least, greatest);
  const seen: boolean[] = [];
  for (const thickness of looks) {
    yield undefined;
    seen.push(passes(thickness));
  }
  const first = seen.indexOf(true);
  if (first === -1) return { kind: "none" };
  const failsAgain = looks.find((_, at) => at > first && seen[at] === false);
  if (first === 0) return { kind: "any", failsAgain };
  let [low, high] = [Math.floor(inMillimetres(looks[first - 1] as number)), Math.ceil(inMillimetres(looks[first] as number))];
  while (high - low > 1) {
    const middle = (low + high) >> 1;
    yield undefined;
    if (passes(inMetres(middle))) high = middle;
    else low = middle;
  }
  return { kind: "found", thickness: Math.min(inMetres(high), looks[first] as number), failsAgain };
}

/** Both ends, and whole millimetres between. */
function looksOver(least: number, greatest: number): readonly number[] {
  const looks = [least];
  for (let at = Math.ceil(inMillimetres(least)) + FIRST_LOOK; inMetres(at) < greatest; at += FIRST_LOOK) looks.push(inMetres(at));
  return greatest > least ? [...looks, greatest] : looks;
}

function inMetres(millimetres: number): number {
  return millimetres / 1000;
}

/** A length that is whole millimetres but for rounding counts as that. */
function inMillimetres(length: number): number {
  const exact = length * 1000;
  return Math.abs(exact - Math.round(exact)) < 1e-6 ? Math.round(exact) : exact;
}
