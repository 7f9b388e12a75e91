import type { Vec2 } from "../../../river/screen.ts";

/** What lies under the pointer. Ids are those of the sheet's things; `key` names the face's place on the sheet. */
export type Hit =
  | { readonly on: "thing"; readonly id: string; readonly key: string }
  | { readonly on: "handle"; readonly id: string; readonly key: string; readonly handle: Handle }
  | { readonly on: "mark"; readonly id: string }
  | { readonly on: "face"; readonly key: string }
  | { readonly on: "nothing" };

/** Which edges a handle pulls, in the axes of the face: -1 the lower edge, 1 the upper, 0 neither. */
export interface Handle {
  readonly u: -1 | 0 | 1;
  readonly v: -1 | 0 | 1;
}

/** What the hand does. Places are pixels of the drawing. */
export type Input =
  | { readonly kind: "down"; readonly pointer: number; readonly at: Vec2; readonly hit: Hit; readonly copy: boolean; readonly reading: boolean }
  | { readonly kind: "move"; readonly pointer: number; readonly at: Vec2; readonly free: boolean }
  | { readonly kind: "up"; readonly pointer: number; readonly at: Vec2 }
  | { readonly kind: "cancel" };

/** What the sheet has to do about it. Steps are pixels from where the gesture began; pans from the place before. */
export type Effect =
  | { readonly do: "pick"; readonly hit: Hit; readonly at: Vec2 }
  | { readonly do: "begin move"; readonly id: string; readonly key: string; readonly copy: boolean }
  | { readonly do: "move"; readonly by: Vec2; readonly free: boolean }
  | { readonly do: "begin resize"; readonly id: string; readonly key: string; readonly handle: Handle }
  | { readonly do: "resize"; readonly by: Vec2; readonly free: boolean }
  | { readonly do: "finish" }
  | { readonly do: "abandon" }
  | { readonly do: "pan"; readonly by: Vec2 }
  | { readonly do: "zoom"; readonly about: Vec2; readonly times: number };

export type Gesture =
  | { readonly state: "idle" }
  | Pointing
  | { readonly state: "dragging"; readonly pointer: number; readonly from: Vec2 }
  | { readonly state: "resizing"; readonly pointer: number; readonly from: Vec2 }
  | { readonly state: "panning"; readonly pointer: number; readonly last: Vec2 }
  | Pinching;

export interface Pointing {
  readonly state: "pointing";
  readonly pointer: number;
  readonly from: Vec2;
  readonly hit: Hit;
  readonly copy: boolean;
  /** For reading only: a drag moves the paper, never a thing. */
  readonly reading: boolean;
}

export interface Pinching {
  readonly state: "pinching";
  readonly first: { readonly pointer: number; readonly at: Vec2 };
  readonly second: { readonly pointer: number; readonly at: Vec2 };
}

export interface Turn {
  readonly next: Gesture;
  readonly effects: readonly Effect[];
}
