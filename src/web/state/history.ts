/** One step that can be taken back: what was done, and the state before it. */
export interface Step<T> {
  readonly label: string;
  readonly before: T;
}

/** The past and the undone future of a value, with an open gesture while one runs. */
export interface History<T> {
  readonly now: T;
  readonly past: readonly Step<T>[];
  /** Steps undone, the next to be done again last; `before` is the state after the step. */
  readonly future: readonly Step<T>[];
  readonly gesture: Step<T> | undefined;
}

export function startHistory<T>(now: T): History<T> {
  return { now, past: [], future: [], gesture: undefined };
}

/** A change: a step of its own, or part of the gesture that is open. The same value again is no step. */
export function changed<T>(history: History<T>, label: string, now: T): History<T> {
  if (Object.is(now, history.now)) return history;
  if (history.gesture !== undefined) return { ...history, now };
  return { now, past: pushed(history.past, { label, before: history.now }), future: [], gesture: undefined };
}

/** Opens a gesture: all changes until it ends are one step. A gesture that is still open ends first. */
export function gestureBegun<T>(history: History<T>, label: string): History<T> {
  const ended = gestureEnded(history);
  return { ...ended, gesture: { label, before: ended.now } };
}

export function gestureEnded<T>(history: History<T>): History<T> {
  const { gesture, now, past } = history;
  if (gesture === undefined) return history;
  if (Object.is(gesture.before, now)) return { ...history, gesture: undefined };
  return { now, past: pushed(past, gesture), future: [], gesture: undefined };
}

/** Back to how it was before the gesture, as if it had not been. */
export function gestureCancelled<T>(history: History<T>): History<T> {
  const { gesture } = history;
  return gesture === undefined ? history : { ...history, now: gesture.before, gesture: undefined };
}

/** Whether there is a step to take back; a gesture that is still open and changed something is one. */
export function canUndo<T>({ past, gesture, now }: History<T>): boolean {
  return past.length > 0 || (gesture !== undefined && !Object.is(gesture.before, now));
}

export function canRedo<T>({ future }: History<T>): boolean {
  return future.length > 0;
}

export function undone<T>(history: History<T>): History<T> {
  const { now, past, future } = gestureEnded(history);
  const step = past.at(-1);
  if (step === undefined) return history;
  return { now: step.before, past: past.slice(0, -1), future: [...future, { label: step.label, before: now }], gesture: undefined };
}

export function redone<T>(history: History<T>): History<T> {
  const { now, past, future } = gestureEnded(history);
  const step = future.at(-1);
  if (step === undefined) return history;
  return { now: step.before, past: [...past, { label: step.label, before: now }], future: future.slice(0, -1), gesture: undefined };
}

/** More steps than anyone takes back; older ones are let go. */
const DEEPEST = 500;

function pushed<T>(past: readonly Step<T>[], step: Step<T>): readonly Step<T>[] {
  return [...past.slice(1 - DEEPEST), step];
}
