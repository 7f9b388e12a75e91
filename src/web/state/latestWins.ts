/**
 * Runs one call at a time and keeps at most one waiting, the latest: a call that comes while another waits takes its
 * place, and the one displaced answers undefined.
 */
export function latestWins<A extends readonly unknown[], T>(run: (...given: A) => Promise<T>): (...given: A) => Promise<T | undefined> {
  let running = false;
  let waiting: { readonly given: A; readonly answer: (value: Promise<T> | undefined) => void } | undefined;
  const start = (given: A): Promise<T> => {
    running = true;
    return run(...given).finally(() => {
      running = false;
      const next = waiting;
      waiting = undefined;
      next?.answer(start(next.given));
    });
  };
  return (...given) => {
    if (!running) return start(given);
    waiting?.answer(undefined);
    return new Promise((resolve) => {
      waiting = { given, answer: resolve };
    });
  };
}
