/** A place in a text, both counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** Gives the line and column of an offset in the text. */
export function lineCounter(text: string): (offset: number) => Place {
  const starts = [0];
  for (let end = text.indexOf("\n"); end !== -1; end = text.indexOf("\n", end + 1)) starts.push(end + 1);
  return (offset) => {
    let low = 0;
    let high = starts.length - 1;
    while (low < high) {
      const middle = Math.ceil((low + high) / 2);
      if ((starts[middle] ?? Infinity) <= offset) low = middle;
      else high = middle - 1;
    }
    return { line: low + 1, column: offset - (starts[low] ?? offset) + 1 };
  };
}
