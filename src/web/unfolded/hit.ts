import type { Handle, Hit } from "./gestures/states.ts";

/** What an element of the drawing stands for, as its own marks say. */
export function hitOf(target: EventTarget): Hit {
  const element = target instanceof Element ? target.closest("[data-hit]") : null;
  const data = (name: string): string => element?.getAttribute(`data-${name}`) ?? "";
  switch (data("hit")) {
    case "thing":
      return { on: "thing", id: data("id"), key: data("key") };
    case "handle":
      return { on: "handle", id: data("id"), key: data("key"), handle: { u: side(data("u")), v: side(data("v")) } };
    case "mark":
      return { on: "mark", id: data("id") };
    case "face":
      return { on: "face", key: data("key") };
    default:
      return { on: "nothing" };
  }
}

function side(text: string): Handle["u"] {
  if (text === "-1") return -1;
  return text === "1" ? 1 : 0;
}
