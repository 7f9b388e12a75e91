import { isList, isObject, type JobFile, type JsonValue } from "../../job/file.ts";

/** The lists whose members carry an id of their own; all share one set of ids. */
const LISTS = ["openings", "items", "partitions", "rooms"] as const;

/** Every id that the file uses, faces among them, in small letters: ids are not told apart by capitals. */
export function idsOf(file: JobFile): ReadonlySet<string> {
  const shop = file["shop"];
  const crews = isObject(shop) ? shop["crews"] : undefined;
  const members = [...LISTS.map((list) => file[list]), crews].flatMap((list) => (isList(list) ? list : []));
  const faces = ["left", "right", "blindEnd", "doorEnd", "roof", "floor"];
  return new Set([...members.flatMap((one) => idOf(one) ?? []), ...faces].map((id) => id.toLowerCase()));
}

/** The id of a member of a list; undefined where it has none. */
export function idOf(member: JsonValue | undefined): string | undefined {
  if (!isObject(member)) return undefined;
  const id = member["id"];
  return typeof id === "string" ? id : undefined;
}

/** Where the member of that id stands in a list; undefined where there is none. */
export function indexOfId(list: JsonValue | undefined, id: string): number | undefined {
  if (!isList(list)) return undefined;
  const index = list.findIndex((one) => idOf(one) === id);
  return index === -1 ? undefined : index;
}

/** The next free id of a row: `D1` gives `D2`, `IN9` gives `IN10`, `rack` gives `rack-2`. */
export function nextId(file: JobFile, like: string): string {
  const taken = idsOf(file);
  const [, stem = like, digits] = /^(.*?)(\d+)$/.exec(like) ?? [];
  const start = digits === undefined ? 2 : Number(digits);
  const before = digits === undefined ? `${stem}-` : stem;
  for (let number = start; ; number += 1) {
    const id = `${before}${number}`;
    if (!taken.has(id.toLowerCase())) return id;
  }
}
