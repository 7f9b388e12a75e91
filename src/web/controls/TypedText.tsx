import { type ReactElement, type ReactNode, useState } from "react";
import { FieldError, Input, Label, Text, TextArea, TextField } from "react-aria-components";

interface Typing {
  readonly label: string;
  readonly text: string;
  /** Called when the typing ends by Enter or by leaving the field, and only where the text changed. */
  readonly onTyped: (text: string) => void;
  readonly says?: ReactNode;
  /** Kind and unit of what is typed; "" where the label says enough. */
  readonly takes?: string;
  /** What is wrong with a text; "" where nothing is. Asked for the text as it is being typed too. */
  readonly problemOf?: (text: string) => string;
  /** Said beside the text, as how it was read. */
  readonly besideOf?: (text: string) => string;
  readonly lines?: boolean;
  /** A text with a problem is not taken: it stays in the field, with its problem, until it is mended or Escape takes it back. */
  readonly strict?: boolean;
}

/** A field that keeps the text as typed: Enter or leaving it takes the text, Escape takes the typing back. */
export function TypedText({ label, text, onTyped, says, takes = "", problemOf, besideOf, lines = false, strict = false }: Typing): ReactElement {
  const [typing, setTyping] = useState<string>();
  const shown = typing ?? text;
  const problem = problemOf?.(shown) ?? "";
  const beside = problem === "" ? (besideOf?.(shown) ?? "") : "";
  const take = (): void => {
    if (strict && problem !== "") return;
    setTyping(undefined);
    if (typing !== undefined && typing !== text) onTyped(typing);
  };
  return (
    <TextField className="field" value={shown} onChange={setTyping} onBlur={take} isInvalid={problem !== ""} validationBehavior="aria">
      <Label className="field-name">{label}</Label>
      {takes === "" ? null : (
        <span className="field-takes" aria-hidden="true">
          {takes}
        </span>
      )}
      {lines ? (
        <TextArea className="field-input" rows={3} onKeyDown={({ key }) => (key === "Escape" ? setTyping(undefined) : undefined)} />
      ) : (
        <Input
          className="field-input"
          autoComplete="off"
          spellCheck={false}
          onKeyDown={(event) => {
            if (event.key === "Escape") setTyping(undefined);
            if (event.key !== "Enter") return;
            // What the text leads to may take the focus: the rest of this key stroke must not press it.
            event.preventDefault();
            take();
          }}
        />
      )}
      {beside === "" ? null : <span className="field-beside figures">{beside}</span>}
      {says === undefined ? null : (
        <Text slot="description" className="field-says">
          {takes === "" ? null : <span className="only-heard">{takes}; </span>}
          {says}
        </Text>
      )}
      <FieldError className="field-problem">{problem}</FieldError>
    </TextField>
  );
}
