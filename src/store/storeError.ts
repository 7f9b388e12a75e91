export type StoreErrorCode = "folder_in_use" | "newer_schema" | "unreachable" | "not_empty" | "exists" | "no_folder" | "bad_backup";

/** Something that the person who starts the server can mend; its message is all that they need. */
export class StoreError extends Error {
  readonly code: StoreErrorCode;
  /** Address of the server that holds the folder, where it is known. */
  readonly address: string | undefined;

  constructor(code: StoreErrorCode, message: string, address?: string) {
    super(message);
    this.name = "StoreError";
    this.code = code;
    this.address = address;
  }
}
