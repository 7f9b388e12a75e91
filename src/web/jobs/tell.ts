import { issueText } from "../../job/issue.ts";
import type { Imported } from "../../job/api.ts";
import { ServerError } from "../state/server.ts";

/** What became of an imported file, in a sentence, with what is wrong with it. */
export function importedWords(imported: Imported): { readonly says: string; readonly issues: readonly string[] } {
  switch (imported.became) {
    case "job": {
      const issues = imported.issues.map(issueText);
      const draft = issues.length === 0 ? "a job" : "a job that cannot be read yet; it is kept as a draft";
      return { says: `${imported.name} became ${draft}.`, issues };
    }
    case "price book":
      return { says: `${imported.name} became revision ${imported.number} of the price book ${imported.book}.`, issues: [] };
    case "nothing": {
      const was = imported.format === "price book" ? "is a price book, and one with issues is not taken, for jobs are priced from it" : "was not taken";
      return { says: `${imported.name} ${was}.`, issues: imported.issues.map(issueText) };
    }
  }
}

/** Why something asked of the server did not come about, for people. */
export function problemWords(error: unknown): string {
  if (error instanceof ServerError) return SERVER[error.told.code] ?? `The server refused: ${error.message}.`;
  if (error instanceof TypeError) return "The server cannot be reached. What you have changed is still here.";
  return error instanceof Error ? error.message : String(error);
}

const SERVER: Readonly<Partial<Record<ServerError["told"]["code"], string>>> = {
  not_found: "The server does not have it any more.",
  too_large: "It is larger than the server takes.",
  busy: "The server is busy; try again in a moment.",
  failed: "The server met an error of its own. Its log says which.",
  has_issues: "The job has issues; mend them first.",
  no_price_book: "The server has no price book of the name that the job asks for. Import it under Jobs.",
};
