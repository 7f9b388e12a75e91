import { type ReactElement, useState } from "react";
import { Button } from "react-aria-components";
import { TitledDialog } from "../controls/TitledDialog.tsx";
import { WorkingButton } from "../findings/WorkingPanel.tsx";
import { useSession } from "../state/session.ts";
import { useSettings } from "../state/settings.ts";
import { fourNumbers, type Number4 } from "./changes.ts";
import { DayList, MassList, PriceList, StopList } from "./NumberLists.tsx";
import "../controls/controls.css";
import "./numbers.css";

/** The four numbers that decide a job, with what changed since the last save; each opens what it is made of. */
export function FourNumbers(): ReactElement {
  const headline = useSession((session) => session.screen?.headline);
  const saved = useSession((session) => session.savedHeadline);
  const stale = useSession((session) => session.stale);
  const isCounting = useSession(({ slowStale, slowFailed }) => slowStale && slowFailed === undefined);
  const isShort = useSession(({ slow }) => slow === undefined);
  const system = useSettings((settings) => settings.system);
  const [open, setOpen] = useState<Number4["id"]>();
  if (headline === undefined) {
    return (
      <section className="four-numbers" aria-label="The four numbers">
        <p className="quiet">Nothing is worked out yet.</p>
      </section>
    );
  }
  const numbers = fourNumbers(headline, saved, system, isShort);
  const shown = numbers.find(({ id }) => id === open);
  return (
    <section className={stale ? "four-numbers is-stale" : "four-numbers"} aria-label="The four numbers" aria-busy={stale || isCounting}>
      {numbers.map((number) => (
        <OneNumber key={number.id} number={number} isStale={isCounting && number.id === "stops"} onOpen={() => setOpen(number.id)} />
      ))}
      {shown === undefined ? null : (
        <TitledDialog title={TITLES[shown.id]} isOpen onClose={() => setOpen(undefined)} wide>
          <p>
            <span className="four-value figures">
              <Figure number={shown} priced={!("unpriced" in headline)} />
            </span>{" "}
            <span className="quiet">{shown.note}</span>
          </p>
          <ListOf id={shown.id} onClose={() => setOpen(undefined)} />
        </TitledDialog>
      )}
    </section>
  );
}

/** The figure over its list; price and day lead to their working, that of the mass lies open below it. */
function Figure({ number: { id, value }, priced }: { readonly number: Number4; readonly priced: boolean }): ReactElement {
  if (!priced || (id !== "price" && id !== "day")) return <>{value}</>;
  return (
    <WorkingButton of={{ kind: id === "price" ? "price" : "delivery day" }} title={id === "price" ? "the price" : "the delivery day"}>
      {value}
    </WorkingButton>
  );
}

const TITLES: Readonly<Record<Number4["id"], string>> = {
  stops: "Stops and watches",
  mass: "Mass of the finished box",
  price: "Price",
  day: "Shop plan to delivery",
};

interface OneShown {
  readonly number: Number4;
  readonly isStale: boolean;
  readonly onOpen: () => void;
}

function OneNumber({ number, isStale, onOpen }: OneShown): ReactElement {
  const { id, name, value, note, change, worse } = number;
  return (
    <Button className={`four-number is-${id}${isStale ? " is-stale" : ""}`} onPress={onOpen}>
      <span className="four-name">{name}</span>
      <span className="four-value figures">{value}</span>
      <span className="four-note">{note}</span>
      {change === "" ? null : (
        <span className={worse ? "four-change figures is-worse" : "four-change figures"}>
          {change} <span className="four-since">since the save</span>
        </span>
      )}
    </Button>
  );
}

function ListOf({ id, onClose }: { readonly id: Number4["id"]; readonly onClose: () => void }): ReactElement {
  switch (id) {
    case "stops":
      return <StopList onClose={onClose} />;
    case "mass":
      return <MassList />;
    case "price":
      return <PriceList />;
    case "day":
      return <DayList />;
  }
}
