import { jobJsonSchema } from "../../job/jsonSchema.ts";
import { CHOICE_TABLES, type ChoiceTable } from "../../job/choices.ts";
import { type Kind, KINDS, kindInWords } from "../../units/kinds.ts";

/** What may stand at a place of the job file, as an editor needs to know it. */
export type FieldNode =
  | { readonly kind: "quantity"; readonly of: Kind }
  | { readonly kind: "row"; readonly table: ChoiceTable }
  | { readonly kind: "build-up name" | "surface" | "own id" | "day" | "fixed" }
  | { readonly kind: "text"; readonly most: number | undefined }
  | { readonly kind: "choice"; readonly options: readonly string[] }
  | { readonly kind: "whole"; readonly least: number | undefined; readonly greatest: number | undefined }
  | { readonly kind: "yes or no" }
  | { readonly kind: "group"; readonly fields: readonly Field[] }
  | { readonly kind: "list"; readonly of: FieldNode; readonly most: number | undefined }
  | { readonly kind: "named"; readonly of: FieldNode };

export type LeafNode = Exclude<FieldNode, { readonly kind: "group" | "list" | "named" }>;

/** A field of a group. `preset` is what stands in for a field left out, where the schema names one. */
export interface Field {
  readonly name: string;
  readonly node: FieldNode;
  readonly required: boolean;
  readonly preset: string | number | boolean | undefined;
}

/** The job file's fields, from the schema that reads it. */
export function jobFields(): FieldNode {
  const root = jobJsonSchema() as Plain;
  return nodeOf(root, (root["$defs"] ?? {}) as Readonly<Record<string, Plain>>);
}

/** The node at a place of the file; undefined where the schema knows none. */
export function nodeAt(root: FieldNode, steps: readonly (string | number)[]): FieldNode | undefined {
  let at: FieldNode | undefined = root;
  for (const step of steps) {
    if (at?.kind === "group") at = at.fields.find(({ name }) => name === step)?.node;
    else if (at?.kind === "list" && typeof step === "number") at = at.of;
    else if (at?.kind === "named" && typeof step === "string") at = at.of;
    else return undefined;
  }
  return at;
}

/** The place without its numbers and own names: `openings[].at.up`, `buildUps{}.foam.row`. Words are kept by it. */
export function patternOf(root: FieldNode, steps: readonly (string | number)[]): string {
  return steps.reduce<string>((pattern, step, at) => {
    if (typeof step === "number") return `${pattern}[]`;
    if (nodeAt(root, steps.slice(0, at))?.kind === "named") return `${pattern}{}`;
    return pattern === "" ? step : `${pattern}.${step}`;
  }, "");
}

/** Every pattern of the schema below a node, groups and lists among them, in the schema's order. */
export function patternsOf(node: FieldNode, pattern = ""): readonly string[] {
  if (node.kind === "list") return patternsOf(node.of, `${pattern}[]`);
  if (node.kind === "named") return patternsOf(node.of, `${pattern}{}`);
  if (node.kind !== "group") return [];
  return node.fields.flatMap(({ name, node: inner }) => {
    const own = pattern === "" ? name : `${pattern}.${name}`;
    return [own, ...patternsOf(inner, own)];
  });
}

type Plain = Readonly<Record<string, unknown>>;

function nodeOf(written: Plain, defs: Readonly<Record<string, Plain>>): FieldNode {
  const schema = resolved(written, defs);
  const description = typeof schema["description"] === "string" ? schema["description"] : "";
  if (schema["const"] !== undefined) return { kind: "fixed" };
  if (Array.isArray(schema["enum"])) return { kind: "choice", options: schema["enum"].map(String) };
  switch (schema["type"]) {
    case "object":
      return objectNode(schema, defs);
    case "array":
      return { kind: "list", of: nodeOf(schema["items"] as Plain, defs), most: count(schema["maxItems"]) };
    case "boolean":
      return { kind: "yes or no" };
    case "integer":
      return { kind: "whole", least: count(schema["minimum"]), greatest: count(schema["maximum"]) };
    default:
      return textNode(description, count(schema["maxLength"]));
  }
}

function objectNode(schema: Plain, defs: Readonly<Record<string, Plain>>): FieldNode {
  const properties = schema["properties"] as Readonly<Record<string, Plain>> | undefined;
  if (properties === undefined) return { kind: "named", of: nodeOf(schema["additionalProperties"] as Plain, defs) };
  const required = new Set((schema["required"] ?? []) as readonly string[]);
  const fields = Object.entries(properties).map(([name, inner]) => {
    const preset = resolved(inner, defs)["default"];
    const isPlain = typeof preset === "string" || typeof preset === "number" || typeof preset === "boolean";
    return { name, node: nodeOf(inner, defs), required: required.has(name), preset: isPlain ? preset : undefined };
  });
  return { kind: "group", fields };
}

/** Text fields are told apart by the words that the schema describes them with. */
function textNode(description: string, most: number | undefined): FieldNode {
  const quantity = QUANTITIES.get(description);
  if (quantity !== undefined) return { kind: "quantity", of: quantity };
  const table = CHOICE_TABLES.find((one) => description === `id of a row in the catalogue of ${one}`);
  if (table !== undefined) return { kind: "row", table };
  const kind = DESCRIBED[description];
  return kind === undefined ? { kind: "text", most } : { kind };
}

const QUANTITIES: ReadonlyMap<string, Kind> = new Map(KINDS.map((kind) => [`${kindInWords(kind)} as text with its unit`, kind]));

const DESCRIBED: Readonly<Record<string, "build-up name" | "surface" | "own id" | "day">> = {
  "name of one of the job's build-ups": "build-up name",
  "a face of the box, or the id of a partition": "surface",
  "id within this job": "own id",
  "calendar day as year-month-day": "day",
};

function resolved(schema: Plain, defs: Readonly<Record<string, Plain>>): Plain {
  const reference = schema["$ref"];
  if (typeof reference !== "string") return schema;
  const inner = defs[reference.slice("#/$defs/".length)];
  if (inner === undefined) throw new Error(`the schema names ${reference}, which it does not hold`);
  return { ...resolved(inner, defs), ...schema, $ref: undefined };
}

function count(value: unknown): number | undefined {
  return typeof value === "number" ? value : undefined;
}
