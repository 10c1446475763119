import { fingerprint } from '#plan/document/fingerprint.ts'

/** A ride, or a profile, as it is kept. The seal is over everything else, so a record written by half, or mixed from two, does not pass. */
export interface RideRecord {
  id: string
  title: string
  /** Rises by one with every save of the ride. */
  revision: number
  /** Milliseconds since 1970. */
  updated: number
  /** What is kept, as JSON. */
  text: string
  seal: string
}

/** The record of something with an id and a title, sealed. */
export function makeRecord({ id, title }: { id: string; title: string }, text: string, revision: number, updated: number): RideRecord {
  const unsealed = { id, title, revision, updated, text }
  return { ...unsealed, seal: sealOf(unsealed) }
}

/** The record that a stored value is, if it is whole. */
export function readRecord(value: unknown): RideRecord | null {
  if (typeof value !== 'object' || value === null) return null
  const record = value as Partial<Record<keyof RideRecord, unknown>>
  const { id, title, revision, updated, text, seal } = record
  if (typeof id !== 'string' || typeof title !== 'string' || typeof text !== 'string') return null
  if (typeof revision !== 'number' || typeof updated !== 'number') return null
  const unsealed = { id, title, revision, updated, text }
  return seal === sealOf(unsealed) ? { ...unsealed, seal } : null
}

/** The newer of two records first; of equal revisions, as two windows can make them, the later one. */
export const newestFirst = (a: RideRecord, b: RideRecord): number => b.revision - a.revision || b.updated - a.updated

const sealOf = ({ id, title, revision, updated, text }: Omit<RideRecord, 'seal'>): string =>
  fingerprint(JSON.stringify([id, title, revision, updated, text]))
