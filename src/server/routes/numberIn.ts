import { found } from "../problem.ts";

/** A revision's number in an address. Throws the problem "not_found" where it is none. */
export function numberIn(text: string): number {
  return found(/^[1-9]\d{0,8}$/.test(text) ? Number(text) : undefined, "revision");
}
