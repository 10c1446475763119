import type { RideCopy } from './rideCopy.ts'
import { newestFirst, type RideRecord, readRecord } from './rideRecord.ts'

/** What the copies hold under an id; one that cannot be read holds nothing. */
export async function heldIn(copies: readonly RideCopy[], id: string): Promise<unknown[]> {
  const values = await Promise.all(copies.map((copy) => copy.read(id).catch(() => undefined)))
  return values.filter((value) => value !== undefined)
}

/** All that the copies hold, by id. */
export async function allIn(copies: readonly RideCopy[]): Promise<Map<string, unknown[]>> {
  const all = (await Promise.all(copies.map((copy) => copy.readAll().catch(() => [])))).flat()
  const byId = new Map<string, unknown[]>()
  for (const { id, value } of all) byId.set(id, [...(byId.get(id) ?? []), value])
  return byId
}

/**
 * One whole copy is enough; only when none could be written did the save fail.
 *
 * @returns how many copies were written
 */
export async function writeTo(copies: readonly RideCopy[], id: string, value: unknown): Promise<number> {
  const failures: unknown[] = []
  for (const copy of copies) await copy.write(id, value).catch((error: unknown) => failures.push(error))
  if (failures.length === copies.length) throw failures[0]
  return copies.length - failures.length
}

/** How many of the copies hold anything under an id. */
export async function countHolding(copies: readonly RideCopy[], id: string): Promise<number> {
  const held = await Promise.all(copies.map((copy) => copy.has(id).catch(() => false)))
  return held.filter(Boolean).length
}

/** What cannot be read is never written over: it moves to an id of its own and stays there. */
export async function setAside(copies: readonly RideCopy[], id: string, value: unknown): Promise<void> {
  let aside = `${id}.unread`
  while ((await heldIn(copies, aside)).length > 0) aside += '-1'
  await writeTo(copies, aside, value)
}

/** Whole records among what is held, newest first. */
export const recordsOf = (held: readonly unknown[]): RideRecord[] => held.flatMap((value) => readRecord(value) ?? []).sort(newestFirst)
