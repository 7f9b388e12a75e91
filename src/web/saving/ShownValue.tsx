import { type ReactElement, useState } from "react";
import { ToggleButton } from "react-aria-components";
import type { JsonValue } from "../../job/file.ts";
import { cutWords, isLong, valueWords } from "./valueWords.ts";

/** A value in words; a long one is cut, with a button that shows all of it. */
export function ShownValue({ value, of }: { readonly value: JsonValue | undefined; readonly of: string }): ReactElement {
  const [whole, setWhole] = useState(false);
  const words = valueWords(value);
  return (
    <>
      <bdi>{whole ? words : cutWords(words)}</bdi>
      {isLong(words) ? <WholeSwitch of={of} whole={whole} onChange={setWhole} /> : null}
    </>
  );
}

interface Switched {
  readonly of: string;
  readonly whole: boolean;
  readonly onChange: (whole: boolean) => void;
}

/** Shows long values whole, or cut again. */
export function WholeSwitch({ of, whole, onChange }: Switched): ReactElement {
  return (
    <ToggleButton className="button value-all" isSelected={whole} onChange={onChange} aria-label={`Show all of ${of}`}>
      Show all
    </ToggleButton>
  );
}
