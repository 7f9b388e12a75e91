import { formatQuantity } from "../src/units/format.ts";
import { type WallCase, type WallFigures, HOUR } from "./sideWallStudy.ts";

/** The page docs/studies/side-wall.md, with the figures of these walls. */
export function sideWallPage(walls: readonly WallFigures[]): string {
  const at = (foam: number, standOff: number): WallFigures => {
    const found = walls.find((one) => one.foam === foam && one.standOff === standOff);
    if (found === undefined) throw new Error(`no wall with ${foam} in of foam and studs ${standOff} in off`);
    return found;
  };
  const [onSheet, halfInch, inchOff, moreFoam] = [at(2, 0), at(2, 0.5), at(2, 1), at(3, 0.5)];
  return `# A side wall with studs

**Question.** What does the side wall of a 20 ft box resist, and how cold does it get inside, once its steel studs are counted?

**The wall.** 2 lb closed-cell foam of 2 in or 3 in, counted from the inside plane, on the folded sheet; studs 2-1/2 in deep, 33 mil, at 16 in, against the
sheet or 1/2 in or 1 in off it with foam behind them; 5/8 in gypsum. 3 in of foam with studs against the sheet is left out: it would stand 1/2 in
proud of them. No openings. The hour: ${HOUR.outside} °C outside, ${HOUR.inside} °C inside.

**The method.** Sections cut from the build and solved as the [envelope check](../checks/envelope.md) does; inside surface resistance 0.13 for heat, 0.25
for cold surfaces. The mesh holds heat to 2 %. The plain layers are those of the [resistance check](../checks/resistance.md). R in h·ft²·°F/BTU.

## What it resists

"Foam" is the foam alone, as a rule of thumb counts a wall. "Plain" adds board and surfaces. "Field" is the solved section without studs.
"Inner" is with every stud on an inner flat of the sheet, "outer" with every stud over an outer flat, over the trough full of foam; "wall" is with the studs where
they stand.

| foam | studs off the sheet | foam | plain | field | inner | outer | wall |
|---|---|---|---|---|---|---|---|
${walls.map(resistanceRow).join("\n")}

## How cold it gets

Lowest surface temperature at the hour.

| foam | studs off the sheet | field | stud over an outer flat | stud on an inner flat |
|---|---|---|---|---|
${walls.map(temperatureRow).join("\n")}

## What the rule of thumb misses

- **Where the stud stands.** With studs against the sheet, ${R(onSheet.foamAlone)} of foam becomes a wall of ${R(onSheet.bridged)}. A stud on an inner flat touches the sheet: a wall of such studs
  would have ${R(onSheet.onInner)}; one of studs over the troughs, ${R(onSheet.overOuter)}. The pitch of the studs against the pitch of the sheet decides how many of each there are.
- **The cold line.** On the board over a stud on an inner flat it is ${T(onSheet.coldOnInner)}, while the field shows ${T(onSheet.coldField)}. No R tells that.
- **The first half inch.** Studs 1/2 in off the sheet lift the wall from ${R(onSheet.bridged)} to ${R(halfInch.bridged)} and the cold line from ${T(onSheet.coldOnInner)} to ${T(halfInch.coldOnInner)}, with no more foam
  than before. The next half inch adds less: ${R(inchOff.bridged)} and ${T(inchOff.coldOnInner)}.
- **More foam is not warmer.** A third inch of foam between studs 1/2 in off the sheet lifts the wall from ${R(halfInch.bridged)} to ${R(moreFoam.bridged)}, yet the cold line falls from ${T(halfInch.coldOnInner)} to
  ${T(moreFoam.coldOnInner)}: foam that hides the stud's web keeps the room's warmth from it.
- **What helps the wall.** The troughs full of foam: the field resists more than its plain layers, which count the foam where it is thinnest. So the walls
  of 2 in whose studs stand off beat their foam's own R, and the one whose studs touch does not.

## What it leaves out

Screws, clips and tracks; corners, rails and floor, which the envelope check adds for the whole box; air that moves behind the boards; ageing of the foam
beyond the declared value; contact resistance between stud and sheet, which would warm the studs that touch. Conductivities, sizes of sheet and studs are the catalogue's.
The figures are computed, not measured. Licensed people and local authorities decide.

\`test/studies.test.ts\` computes every figure on this page again.
`;
}

function resistanceRow(wall: WallFigures): string {
  const { foamAlone, plain, field, onInner, overOuter, bridged } = wall;
  return `| ${[...headOf(wall), ...[foamAlone, plain, field, onInner, overOuter, bridged].map(R)].join(" | ")} |`;
}

function temperatureRow(wall: WallFigures): string {
  const { coldField, coldOverOuter, coldOnInner } = wall;
  return `| ${[...headOf(wall), ...[coldField, coldOverOuter, coldOnInner].map(T)].join(" | ")} |`;
}

function headOf({ foam, standOff }: WallCase): readonly string[] {
  return [`${foam} in`, standOff === 0.5 ? "1/2 in" : `${standOff} in`];
}

function R(resistance: number): string {
  return formatQuantity("thermalResistance", resistance, "imperial", { digits: 3 });
}

/** To half a degree: the mesh promises no more. */
function T(temperature: number): string {
  return `${(Math.round(2 * temperature) / 2).toFixed(1)} °C`;
}
