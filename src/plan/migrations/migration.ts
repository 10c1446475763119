/** A document of some version, as plain data; what it holds is that version's affair. */
export type Document = Record<string, unknown>

/**
 * One step from a version to the next. `apply` gets a document it may keep parts of but
 * not change, and need not set the new number.
 */
export interface Migration {
  from: number
  apply: (document: Document) => Document
}
