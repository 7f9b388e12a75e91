import { useState, type KeyboardEvent, type ReactElement } from "react";
import { FieldError, Input, Label, TextField } from "react-aria-components";
import { parseQuantity } from "../../units/parse.ts";

interface Shown {
  readonly label: string;
  /** The text in the job file. */
  readonly text: string;
  readonly onChange: (text: string) => void;
}

/** A length as text in any unit; taken with Enter or when left, put back with Escape, refused with the reason where it will not do. */
export function LengthField({ label, text, onChange }: Shown): ReactElement {
  const [typed, setTyped] = useState<string>();
  const reading = typed === undefined ? undefined : parseQuantity("length", typed);
  const refused = reading?.ok === false ? `${reading.reason}; for example ${reading.example}` : undefined;
  const commit = (): void => {
    if (typed === undefined || refused !== undefined) return;
    if (typed !== text) onChange(typed);
    setTyped(undefined);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === "Enter") commit();
    if (event.key === "Escape") setTyped(undefined);
  };
  return (
    <TextField className="u-field" value={typed ?? text} onChange={setTyped} onBlur={commit} onKeyDown={onKeyDown} isInvalid={refused !== undefined}>
      <Label>{label}</Label>
      <Input className="figures" autoComplete="off" spellCheck="false" />
      <FieldError>{refused}</FieldError>
    </TextField>
  );
}
