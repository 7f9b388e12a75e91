import { z } from "zod";
import type { JsonValue } from "../file.ts";

/** The schema of the field at a place in the file; undefined where the schema knows no such field. */
export function schemaAt(root: z.core.$ZodType, steps: readonly PropertyKey[]): z.core.$ZodType | undefined {
  let at: z.core.$ZodType | undefined = root;
  for (const step of steps) {
    const holder = at === undefined ? undefined : unwrapped(at);
    if (holder instanceof z.ZodObject) {
      const shape: Readonly<Record<string, z.core.$ZodType>> = holder.shape;
      at = Object.hasOwn(shape, step) ? shape[String(step)] : undefined;
    } else if (holder instanceof z.ZodArray) at = holder.element;
    else if (holder instanceof z.ZodRecord) at = holder.valueType;
    else return undefined;
  }
  return at;
}

/** What a field wants, in plain words. */
export function wantedBy(schema: z.core.$ZodType): string {
  const bare = unwrapped(schema);
  const description = z.globalRegistry.get(bare)?.description;
  if (description !== undefined) return description;
  if (bare instanceof z.ZodEnum) return `one of ${bare.options.map((option) => JSON.stringify(option)).join(", ")}`;
  if (bare instanceof z.ZodLiteral) return [...bare.values].map((value) => JSON.stringify(value)).join(" or ");
  if (bare instanceof z.ZodBoolean) return "true or false";
  if (bare instanceof z.ZodNumber) return "a whole number without quotes";
  if (bare instanceof z.ZodArray) return "a list in [ ]";
  if (bare instanceof z.ZodObject || bare instanceof z.ZodRecord) return "fields in { }";
  return "text in double quotes";
}

/** A form that would do: for an object only what has to be there. */
export function exampleOf(schema: z.core.$ZodType): JsonValue {
  const bare = unwrapped(schema);
  const examples = z.globalRegistry.get(bare)?.["examples"];
  if (Array.isArray(examples) && examples.length > 0) return examples[0] as JsonValue;
  if (bare instanceof z.ZodEnum) return bare.options[0] ?? "";
  if (bare instanceof z.ZodLiteral) return ([...bare.values] as JsonValue[])[0] ?? "";
  if (bare instanceof z.ZodBoolean) return true;
  if (bare instanceof z.ZodNumber) return bare.minValue ?? 1;
  if (bare instanceof z.ZodArray) return [exampleOf(bare.element)];
  if (bare instanceof z.ZodRecord) return {};
  if (bare instanceof z.ZodObject) return requiredFields(bare);
  return "text";
}

/** The names of the fields that an object may hold; none for anything else. */
export function fieldNames(schema: z.core.$ZodType): readonly string[] {
  const bare = unwrapped(schema);
  return bare instanceof z.ZodObject ? Object.keys(bare.shape) : [];
}

function requiredFields(schema: z.ZodObject): JsonValue {
  const shape: Readonly<Record<string, z.core.$ZodType>> = schema.shape;
  const fields = Object.entries(shape).filter(([, field]) => unwrapped(field) === field);
  return Object.fromEntries(fields.map(([key, field]) => [key, exampleOf(field)]));
}

/** The schema under "optional" and defaults, which is the one that says what may be written. */
function unwrapped(schema: z.core.$ZodType): z.core.$ZodType {
  if (schema instanceof z.ZodOptional || schema instanceof z.ZodDefault || schema instanceof z.ZodPrefault) {
    return unwrapped(schema.def.innerType);
  }
  return schema;
}
