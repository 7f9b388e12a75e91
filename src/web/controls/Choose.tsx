import type { ReactElement } from "react";
import {
  Button, FieldError, Header, Label, ListBox, ListBoxItem, ListBoxSection, Popover, Select, SelectValue, Text,
} from "react-aria-components";

/** One thing to choose; `more` is said in small letters below it. */
export interface Option {
  readonly id: string;
  readonly name: string;
  readonly more?: string | undefined;
}

export interface OptionGroup {
  /** "" for options that stand without a heading. */
  readonly name: string;
  readonly options: readonly Option[];
}

interface Choosing {
  readonly label: string;
  readonly groups: readonly OptionGroup[];
  /** Undefined where nothing is chosen. */
  readonly chosen: string | undefined;
  readonly onChoose: (id: string) => void;
  /** What stands there while nothing is chosen. */
  readonly empty?: string;
  readonly says?: string | undefined;
  /** What is wrong with the choice; "" where nothing is. */
  readonly problem?: string;
}

/** A list to choose one from, by pointer, arrow keys or first letters. */
export function Choose({ label, groups, chosen, onChoose, empty = "choose", says, problem = "" }: Choosing): ReactElement {
  return (
    <Select
      className="field"
      value={chosen ?? null}
      placeholder={empty}
      isInvalid={problem !== ""}
      validationBehavior="aria"
      onChange={(key) => {
        if (key !== null) onChoose(String(key));
      }}
    >
      <Label className="field-name">{label}</Label>
      <Button className="field-input choose-button">
        <SelectValue className="choose-value">{({ selectedText, isPlaceholder, defaultChildren }) => (isPlaceholder ? defaultChildren : selectedText)}</SelectValue>
        <span aria-hidden="true" className="choose-mark" />
      </Button>
      {says === undefined ? null : (
        <Text slot="description" className="field-says">
          {says}
        </Text>
      )}
      <FieldError className="field-problem">{problem}</FieldError>
      <Popover className="choose-list">
        <ListBox className="choose-options">
          {groups.map(({ name, options }) => (
            <ListBoxSection key={name} id={`group ${name}`} aria-label={name === "" ? label : name}>
              {name === "" ? null : <Header className="choose-group">{name}</Header>}
              {options.map((option) => (
                <ListBoxItem key={option.id} id={option.id} textValue={option.name} className="choose-option">
                  <Text slot="label">{option.name}</Text>
                  {option.more === undefined ? null : (
                    <Text slot="description" className="field-says">
                      {option.more}
                    </Text>
                  )}
                </ListBoxItem>
              ))}
            </ListBoxSection>
          ))}
        </ListBox>
      </Popover>
    </Select>
  );
}
