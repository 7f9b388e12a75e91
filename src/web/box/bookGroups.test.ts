import { expect, it } from "vitest";
import { bookGroups } from "./bookGroups.ts";

const row = { id: "shop-usd", number: 3, parent: 2, who: "Ada", why: "", when: "2027-02-01T08:00:00.000Z" };

it("lists the price books that are kept, and sets apart one that is not", () => {
  const kept = { name: "", options: [{ id: "shop-usd", name: "shop-usd", more: "revision 3, 2027-02-01" }] };
  expect(bookGroups([row], "shop-usd")).toEqual([kept]);
  expect(bookGroups([row], undefined)).toEqual([kept]);
  expect(bookGroups([row], "lost")).toEqual([{ name: "Not kept here", options: [{ id: "lost", name: "lost" }] }, kept]);
  expect(bookGroups(undefined, "shop-usd")).toEqual([{ name: "In the job", options: [{ id: "shop-usd", name: "shop-usd" }] }]);
});
