import Papa from "papaparse";
import { expect, it } from "vitest";
import { csv } from "./csv.ts";

it("writes what an independent reader reads back, cell by cell", () => {
  const rows = [
    ["plain", 'a "quoted" word', "comma, inside"],
    ["line\r\nbreak", " space at the ends ", ""],
    ["7' 8-5/8\"", "m²·K/W", "日本"],
  ];
  const text = csv(["a", "b", "c"], rows);
  const read = Papa.parse<string[]>(text, { newline: "\r\n" });
  expect(read.errors).toEqual([]);
  expect(read.data).toEqual([["a", "b", "c"], ...rows, [""]]);
});

it("ends every line with CRLF and quotes only what needs it (RFC 4180)", () => {
  expect(csv(["a", "b"], [["x", 'y"z'], [1, undefined]])).toBe('a,b\r\nx,"y""z"\r\n1,\r\n');
});

it.each(["=1+1", "+1", "-2+3", "@SUM(A1)", "\t=1", "\r=1", "  =HYPERLINK(\"x\")"])(
  "takes the meaning of a formula from %j",
  (text) => {
    const [, row] = Papa.parse<string[]>(csv(["a"], [[text]])).data;
    expect(row).toEqual([`'${text}`]);
  },
);

it("leaves numbers as numbers, whole and with their sign", () => {
  expect(csv(["a"], [[-1.5], [0.1 + 0.2], [1e-7]])).toBe("a\r\n-1.5\r\n0.30000000000000004\r\n1e-7\r\n");
});

it("refuses a number that is not finite and a row of another width", () => {
  expect(() => csv(["a"], [[Number.NaN]])).toThrow(RangeError);
  expect(() => csv(["a"], [["x", "y"]])).toThrow(RangeError);
});
