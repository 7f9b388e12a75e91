import { type ReactElement, useEffect } from "react";
import { hearLive } from "../state/live.ts";
import { server } from "../state/server.ts";
import { whenText } from "./newJob.ts";
import { useAsked } from "./useAsked.ts";

/** The price books that jobs may name; an imported file with the same id becomes the next revision of its book. */
export function PriceBooks(): ReactElement {
  const [asked, again] = useAsked(server.priceBooks);
  useEffect(() => hearLive(again), [again]);
  return (
    <section aria-label="Price books">
      <h2>Price books</h2>
      {asked.kind === "problem" ? <p className="alert">{asked.says}</p> : null}
      <ul className="plain-list">
        {asked.kind === "answer"
          ? asked.answer.map(({ id, number, who, when }) => (
              <li key={id}>
                <strong>{id}</strong>, revision <span className="figures">{number}</span>, {who}, <span className="figures">{whenText(when)}</span>
              </li>
            ))
          : null}
      </ul>
      <p className="quiet">To change a book, import its file: it becomes the book&apos;s next revision.</p>
    </section>
  );
}
