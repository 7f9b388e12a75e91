/** The part of a symmetric matrix on and below its diagonal, column by column. */
export interface SymmetricMatrix {
  readonly diagonal: Float64Array;
  /** Column k holds the entries from start[k] to before start[k + 1]: rows below k, in any order. */
  readonly start: Int32Array;
  readonly row: Int32Array;
  readonly value: Float64Array;
}
