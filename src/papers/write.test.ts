import { expect, it } from "vitest";
import { amountText, clockText, counted, currencyOf, dayText, groupedMoney, hoursText, liquidText, massText, moneyText, plainMoney } from "./write.ts";

it.each<[number, string, string]>([
  [0, "0.00", "0.00"],
  [5, "0.05", "0.05"],
  [-1234567, "-12345.67", "-12,345.67"],
  [100000000, "1000000.00", "1,000,000.00"],
])("writes %i cents", (cents, plain, grouped) => {
  expect(plainMoney(cents)).toBe(plain);
  expect(groupedMoney(cents)).toBe(grouped);
  expect(moneyText(cents, "USD")).toBe(`${grouped} USD`);
});

it("writes amounts in the units of the job", () => {
  expect(amountText({ value: 45.3, unit: "m" }, "metric")).toBe("45.3 m");
  expect(amountText({ value: 3.048, unit: "m" }, "imperial")).toBe("10 ft");
  expect(amountText({ value: 0.09290304, unit: "m2" }, "imperial")).toBe("1 ft²");
  expect(amountText({ value: 12, unit: "1" }, "imperial")).toBe("12");
  expect(liquidText(0.0189, "metric")).toBe("18.9 L");
  expect(liquidText(0.003785411784, "imperial")).toBe("1 US gal");
  expect(massText(3899.6, "metric")).toBe("3,900 kg");
  expect(massText(453.59237, "imperial")).toBe("1,000 lb");
});

it("writes counts, hours and times of the day", () => {
  expect([counted(1, "day", "days"), counted(0, "day", "days")]).toEqual(["1 day", "0 days"]);
  expect(hoursText(2.96)).toBe("3 h");
  expect(clockText({ day: "2027-02-01", minute: 425 })).toBe("07:05");
});

it("writes days in words, which no reader takes for another day", () => {
  expect(dayText("2027-05-06")).toBe("6 May 2027");
  expect(dayText("2027-12-31", "without year")).toBe("31 Dec");
  expect(() => dayText("2027-13-01")).toThrow(RangeError);
});

it("refuses a currency that money is not written in", () => {
  expect(() => currencyOf("XXX")).toThrow(RangeError);
});
