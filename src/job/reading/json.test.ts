import fc from "fast-check";
import { expect, test } from "vitest";
import { issueText } from "../issue.ts";
import { readJson } from "./json.ts";

/** The language's own reader, which tells right from wrong but not where. */
function referenceReading(text: string): { readonly value: unknown } | undefined {
  try {
    return { value: JSON.parse(text) as unknown };
  } catch {
    return undefined;
  }
}

test("reads what the language's own reader reads, and refuses what it refuses", () => {
  const whole = fc.json({ maxDepth: 6 });
  const cut = fc.tuple(whole, fc.nat(), fc.constantFrom("", ",", "]", "}", '"', "\\", "0", "\n", "e")).map(
    ([text, at, letter]) => text.slice(0, at % (text.length + 1)) + letter + text.slice((at % (text.length + 1)) + 1),
  );
  fc.assert(
    fc.property(fc.oneof(whole, cut, fc.string()), (text) => {
      const reference = referenceReading(text);
      const read = readJson(text);
      expect(read.ok).toBe(reference !== undefined);
      if (read.ok) expect(read.value).toEqual(reference?.value);
    }),
    { seed: 11, numRuns: 2000 },
  );
});

test("knows the line of every value", () => {
  const read = readJson('{\n  "a": [\n    1,\n    { "b c": "x" }\n  ]\n}');
  if (!read.ok) throw new Error("not read");
  expect(["", "a", "a[0]", "a[1]", 'a[1]["b c"]', "a[2]"].map(read.lineOf)).toEqual([1, 2, 3, 4, 4, undefined]);
});

test("says where a mistake is and what was wanted", () => {
  const mistakes = ["", '{ "a": 1, }', '{\n  "a": "7\' 8""\n}', "// note", '{ "a": "b\nc" }', "{ a: 1 }", "[1 2]", "[01]", "{} x"];
  const said = mistakes.map((text) => {
    const read = readJson(text);
    return read.ok ? "read" : issueText(read.issue);
  });
  expect(said.join("\n")).toMatchInlineSnapshot(`
    "line 1, column 1: the text is not JSON: found the end of the file; wanted: a value: text in double quotes, a number, true, false, null, { or [, for example "2 in".
    line 1, column 11: the text is not JSON: found "}"; wanted: no comma before }.
    line 2, column 14: the text is not JSON: found "\\""; wanted: a comma or }; an inch mark inside a text is written \\" or in, for example "7' 8-5/8 in".
    line 1, column 1: the text is not JSON: found "// note"; wanted: a value: text in double quotes, a number, true, false, null, { or [, for example "2 in".
    line 1, column 10: the text is not JSON: found the end of the line; wanted: text that ends with a double quote on its own line; \\ only as \\" \\\\ \\/ \\b \\f \\n \\r \\t \\u0000, for example "2 in".
    line 1, column 3: the text is not JSON: found "a: 1 }"; wanted: a field's name in double quotes, for example "units": "metric".
    line 1, column 4: the text is not JSON: found "2]"; wanted: a comma or ].
    line 1, column 2: the text is not JSON: found "01]"; wanted: a value: text in double quotes, a number, true, false, null, { or [, for example "2 in".
    line 1, column 4: the text is not JSON: found "x"; wanted: nothing after the closing brace."
  `);
});

test("long texts and deep lists are read or refused, never a crash", () => {
  expect(readJson(`"${"\\n".repeat(500_000)}"`).ok).toBe(true);
  expect(readJson("[".repeat(500_000)).ok).toBe(false);
});
