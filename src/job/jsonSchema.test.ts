import { expect, test } from "vitest";
import bunkRoom from "../../examples/trail-crew-bunk-room.job.json" with { type: "json" };
import { jobJsonSchema } from "./jsonSchema.ts";

test("docs/job.schema.json is current; write it again with: npx vitest run src/job/jsonSchema.test.ts -u", async () => {
  const text = `${JSON.stringify(jobJsonSchema(), undefined, 1)}\n`;
  await expect(text).toMatchFileSnapshot("../../docs/job.schema.json");
});

test("an editor may name the schema in the file, and it asks for what a demo job has", () => {
  const { properties, required } = jobJsonSchema() as { properties: object; required: string[] };
  expect(Object.keys(properties)).toEqual(expect.arrayContaining(Object.keys(bunkRoom)));
  expect(Object.keys(bunkRoom)).toEqual(expect.arrayContaining(required));
});
