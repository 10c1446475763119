import { followAddress } from '#app/addressSync.ts'
import { openRideFile } from '#app/openRideFile.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { type Backup, readBackup, writeBackup } from '#plan/kept/backup.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import { isSet, type Ride } from '#plan/model.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { RideShelf } from '#store/ports.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { chanceOf } from './chance.ts'
import { hostileFile } from './hostileFile.ts'
import { hostileLink } from './hostileLink.ts'

/** What became of hostile links and files, by the page's own doors. */
export interface Outcome {
  opened: number
  refused: number
  /** What must never happen, with the number that makes the same case again. */
  broken: { seed: number; what: string }[]
  slowest: { seed: number; milliseconds: number; what: string }[]
}

const SLOWEST_KEPT = 5

/**
 * Opens one hostile link or file after another over a ride of one's own, as the page does, and
 * looks whether each gave a reason in a sentence or a ride that keeps all rules.
 *
 * @param from the first case's number; the same number is the same case
 */
export async function fuzz(from: number, cases: number): Promise<Outcome> {
  const outcome: Outcome = { opened: 0, refused: 0, broken: [], slowest: [] }
  const page = openPage()
  for (let seed = from; seed < from + cases; seed++) {
    const chance = chanceOf(seed)
    const isLink = chance.oneIn(2)
    const text = isLink ? hostileLink(chance) : hostileFile(chance)
    const began = performance.now()
    try {
      const opened = await page.take(text, isLink)
      outcome[opened ? 'opened' : 'refused'] += 1
    } catch (error) {
      outcome.broken.push({ seed, what: error instanceof Error ? error.message : String(error) })
    }
    note(outcome, { seed, milliseconds: performance.now() - began, what: isLink ? 'link' : 'file' })
  }
  return outcome
}

function note({ slowest }: Outcome, one: Outcome['slowest'][number]): void {
  if (slowest.length === SLOWEST_KEPT && slowest.at(-1)!.milliseconds >= one.milliseconds) return
  slowest.push(one)
  slowest.sort((a, b) => b.milliseconds - a.milliseconds)
  slowest.splice(SLOWEST_KEPT)
}

/** A store with a ride of one's own, saved and open; neither may change, whatever comes in. */
function openPage() {
  const own: Ride = frozen({ ...smallRide(), id: 'own-and-saved', title: 'Mine' })
  const touched: string[] = []
  const shelf: RideShelf = {
    list: async () => [{ id: own.id, title: own.title, updated: 0 }] as Awaited<ReturnType<RideShelf['list']>>,
    load: async () => ({ ok: true, ride: own }) as Awaited<ReturnType<RideShelf['load']>>,
    save: async () => void touched.push('save'),
    remove: async () => void touched.push('remove'),
  }
  const store = createAppStore({ newId: countedIds('new'), shelf })

  /** True where a ride came out. Throws where anything happened that must not. */
  async function take(text: string, isLink: boolean): Promise<boolean> {
    store.getState().openRide(own)
    store.getState().dismissNotice()
    store.getState().cancelBackup()
    if (isLink) await followAddress(asFragment(text), store)
    else await openRideFile(new File([text], 'received.ride.json'), store, shelf)
    const { ride, received, restoring, notice } = store.getState()
    if (touched.length > 0) throw new Error(`What is saved was touched: ${touched.splice(0).join(', ')}.`)
    if ('polluted' in {} || Object.keys(Object.prototype).length > 0) throw new Error('Every object of the page was changed.')
    const came = received?.ride ?? (ride === own ? null : ride)
    if (came) checkRide(came)
    else if (ride !== own) throw new Error('The open ride was put away.')
    else if (!notice && !restoring && !sameAsOwn(text, isLink)) throw new Error('Nothing was said.')
    if (notice && !/[.!:]$/.test(notice.sentence)) throw new Error(`Not a sentence: ${notice.sentence}`)
    if (restoring) checkBackup(restoring.backup)
    return came !== null || restoring !== null
  }
  return { take }
}

/** The fragment of an address never comes as a place of the page here. */
const asFragment = (text: string): string => `#${text.replace(/^#*\/?/, '')}`

/** An empty address names nothing, and there is nothing to say. */
const sameAsOwn = (text: string, isLink: boolean): boolean => isLink && asFragment(text) === '#'

/** A backup that came in holds rides that keep the rules, and is the same one when it is written and read again. */
function checkBackup(backup: Backup): void {
  for (const { ride } of [...backup.rides, ...backup.versions]) checkRide(ride)
  const again = readBackup(JSON.parse(JSON.stringify(writeBackup(backup))))
  if (!again.ok || again.unreadable > 0) throw new Error('A backup came in that cannot be read again.')
  if (sorted(again.backup) !== sorted(backup)) throw new Error('A backup came in that reads as another.')
}

/** A ride that came in keeps the rules, comes through a link again as it is, and has no more than its limits. */
function checkRide(ride: Ride): void {
  const again = parseRide(ride)
  if (!again.ok) throw new Error(`A ride came in that breaks a rule: ${told(again.problems[0]!.text)}`)
  if (JSON.stringify(again.ride) !== JSON.stringify(ride)) throw new Error('A ride came in that reads as another.')
  const back = decodeLink(encodeLink(ride))
  if (!back.ok) throw new Error(`A ride came in that no link carries: ${told(back.problems[0]!.text)}`)
  if (sorted(back.ride) !== sorted(shareable(ride))) throw new Error('A ride came in that a link changes.')
  const items = ride.sections.flatMap(({ blocks }) => blocks)
  if (items.flatMap((item) => (isSet(item) ? item.parts : [item])).length > 100_000) throw new Error('A ride came in without end.')
}

const sorted = (value: unknown): string =>
  JSON.stringify(value, (_, held: unknown) =>
    typeof held === 'object' && held !== null && !Array.isArray(held)
      ? Object.fromEntries(Object.entries(held).sort(([a], [b]) => (a < b ? -1 : 1)))
      : held,
  )
