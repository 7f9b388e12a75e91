/** Moments are text, ISO 8601 in UTC; yes and no are 1 and 0: so both engines give the same types. */
export interface Tables {
  job: { id: string; demo: number; created_at: string };
  revision: {
    job: string;
    number: number;
    parent: number | null;
    file: string;
    title: string | null;
    readable: number;
    who: string;
    why: string;
    saved_at: string;
  };
  price_book_revision: {
    book: string;
    number: number;
    parent: number | null;
    file: string;
    who: string;
    why: string;
    saved_at: string;
  };
  /** Things that are done once in the life of a database. */
  done_once: { name: string; done_at: string };
  schema_step: { number: number; name: string; done_at: string };
}
