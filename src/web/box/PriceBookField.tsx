import { type ReactElement, useEffect, useState } from "react";
import type { PriceBookRow } from "../../job/api.ts";
import { Choose } from "../controls/Choose.tsx";
import { problemWords } from "../jobs/tell.ts";
import type { ScreenHeadline } from "../../river/screen.ts";
import { useSession } from "../state/session.ts";
import { server } from "../state/server.ts";
import { bookGroups } from "./bookGroups.ts";
import { issueWords } from "./fieldText.ts";
import { useField } from "./useField.ts";

export const PRICE_BOOK = "prices.book";
const STEPS = ["prices", "book"] as const;

/** Why the job has no price, where that is for its price book. */
function unpricedWords(headline: ScreenHeadline | undefined): string {
  return headline !== undefined && "unpriced" in headline ? `${headline.unpriced} ${headline.mend}` : "";
}

/** The price book, chosen from those that are kept here; one that the job names and nobody keeps stands apart. */
export function PriceBookField(): ReactElement {
  const { words, value, put } = useField(STEPS);
  const told = useSession((session) => issueWords(session.issues, STEPS) || unpricedWords(session.screen?.headline));
  const [books, setBooks] = useState<readonly PriceBookRow[]>();
  const [problem, setProblem] = useState("");
  useEffect(() => {
    let wanted = true;
    server.priceBooks().then(
      (found) => {
        if (wanted) setBooks(found);
      },
      (error: unknown) => {
        if (wanted) setProblem(`The price books could not be listed: ${problemWords(error)}`);
      },
    );
    return () => {
      wanted = false;
    };
  }, []);
  const chosen = typeof value === "string" ? value : undefined;
  return (
    <Choose label={words.name} groups={bookGroups(books, chosen)} chosen={chosen} says={words.says} problem={told === "" ? problem : told} onChoose={put} />
  );
}
