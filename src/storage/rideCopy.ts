/** One place that holds a whole copy of all saved rides: values by ride id, whatever they are. */
export interface RideCopy {
  /** Undefined when there is none. */
  read: (id: string) => Promise<unknown>
  /** Whether there is one, without reading it. */
  has: (id: string) => Promise<boolean>
  readAll: () => Promise<{ id: string; value: unknown }[]>
  /** Replaces the value as a whole or not at all. */
  write: (id: string, value: unknown) => Promise<void>
  remove: (id: string) => Promise<void>
}
