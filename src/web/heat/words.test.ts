import { expect, it } from "vitest";
import { atHour, capital, degrees, degreeUnit, fluxText, level } from "./words.ts";

it("writes temperatures to tenths, and levels without what they do not need", () => {
  expect([-34, 0, -0.04, 1.26].map((t) => degrees(t, "metric"))).toEqual(["−34.0 °C", "0.0 °C", "0.0 °C", "1.3 °C"]);
  expect([-40, 10].map((t) => degrees(t, "imperial"))).toEqual(["−40.0 °F", "50.0 °F"]);
  expect([-30, 2.5].map((t) => level(t, "metric"))).toEqual(["−30", "2.5"]);
  expect([degreeUnit("metric"), degreeUnit("imperial")]).toEqual(["°C", "°F"]);
});

it("writes fluxes, hours and capitals", () => {
  expect(fluxText(14.237, "metric")).toBe("14.2 W/m²");
  // 1 W/m2 is 0.316998 BTU/(h ft2).
  expect(fluxText(10, "imperial")).toBe("3.17 BTU/(h·ft²)");
  expect([atHour("design"), atHour(0), atHour(11)]).toEqual(["at the winter design hour", "in January", "in December"]);
  expect([capital("edge"), capital("")]).toEqual(["Edge", ""]);
});
