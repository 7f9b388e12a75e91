import type { ReactElement, ReactNode } from "react";
import { CheckboxButton, CheckboxField } from "react-aria-components";

interface Checked {
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
  readonly children: ReactNode;
}

/** A box to tick, with its words beside it. */
export function Check({ isOn, onChange, children }: Checked): ReactElement {
  return (
    <CheckboxField isSelected={isOn} onChange={onChange}>
      <CheckboxButton className="check">
        <CheckMark isOn={isOn} />
        <span>{children}</span>
      </CheckboxButton>
    </CheckboxField>
  );
}

/** The box of a tick, for use inside a CheckboxButton. */
export function CheckMark({ isOn }: { readonly isOn: boolean }): ReactElement {
  return (
    <span className="check-box" aria-hidden="true">
      {isOn ? (
        <svg viewBox="0 0 16 16" width="14" height="14">
          <path d="M3 8.5 6.5 12 13 4" fill="none" stroke="currentColor" strokeWidth="2.2" />
        </svg>
      ) : null}
    </span>
  );
}
