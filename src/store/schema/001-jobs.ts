import { makeAppendOnly } from "./step.ts";
import type { SchemaStep } from "./step.ts";

/** Jobs, their revisions, and the revisions of price books. */
export const jobs: SchemaStep = {
  number: 1,
  name: "jobs, revisions and price books",
  up: async (db, engine) => {
    await db.schema
      .createTable("job")
      .addColumn("id", "text", (column) => column.primaryKey().notNull())
      .addColumn("demo", "integer", (column) => column.notNull())
      .addColumn("created_at", "text", (column) => column.notNull())
      .execute();
    await db.schema
      .createTable("revision")
      .addColumn("job", "text", (column) => column.notNull().references("job.id"))
      .addColumn("number", "integer", (column) => column.notNull())
      .addColumn("parent", "integer")
      .addColumn("file", "text", (column) => column.notNull())
      .addColumn("title", "text")
      .addColumn("readable", "integer", (column) => column.notNull())
      .addColumn("who", "text", (column) => column.notNull())
      .addColumn("why", "text", (column) => column.notNull())
      .addColumn("saved_at", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("revision_key", ["job", "number"])
      .addForeignKeyConstraint("revision_parent", ["job", "parent"], "revision", ["job", "number"])
      .execute();
    await makeAppendOnly(db, engine, "revision");
    await db.schema
      .createTable("price_book_revision")
      .addColumn("book", "text", (column) => column.notNull())
      .addColumn("number", "integer", (column) => column.notNull())
      .addColumn("parent", "integer")
      .addColumn("file", "text", (column) => column.notNull())
      .addColumn("who", "text", (column) => column.notNull())
      .addColumn("why", "text", (column) => column.notNull())
      .addColumn("saved_at", "text", (column) => column.notNull())
      .addPrimaryKeyConstraint("price_book_revision_key", ["book", "number"])
      .addForeignKeyConstraint("price_book_revision_parent", ["book", "parent"], "price_book_revision", ["book", "number"])
      .execute();
    await makeAppendOnly(db, engine, "price_book_revision");
    await db.schema
      .createTable("done_once")
      .addColumn("name", "text", (column) => column.primaryKey().notNull())
      .addColumn("done_at", "text", (column) => column.notNull())
      .execute();
  },
};
