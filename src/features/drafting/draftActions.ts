import { blockOfPattern } from '#engine/cues/blockOfPattern.ts'
import type { RideReport } from '#engine/report.ts'
import type { Command } from '#plan/commands/command.ts'
import { insertSection } from '#plan/commands/insertSection.ts'
import { DEFAULT_LEAD_IN } from '#plan/defaults.ts'
import type { Ride, Section } from '#plan/model.ts'
import type { BlockPattern } from '#plan/patterns/blockPattern.ts'
import { findBlock, findItem } from '#plan/places.ts'
import type { Selection } from '#store/selectionSlice.ts'
import type { AppStore } from '#store/state.ts'
import { tell, words } from '#words/words.ts'
import { type Own, ownPatternCommand } from './ownPatternCommand.ts'
import { patternCommand } from './patternCommand.ts'

/** Runs a command and says in words what it did, where the thing now starts, and what the ride adds up to. */
export function runAndSay(store: AppStore, command: Command, id?: string): boolean {
  const done = store.getState().run(command)
  const { report } = store.getState()
  if (!done || !report) {
    store.getState().announce(words.drafting.noChange)
    return false
  }
  const played = report.blocks.find((other) => other.block.id === id || other.set?.set.id === id)
  const section = report.sections.find((other) => other.sectionId === id)
  const start = played?.from ?? section?.one
  const { total, slack } = report.overall
  store.getState().announce(words.drafting.done({ change: tell(command.label), start, total, slack }))
  return true
}

/** What was added, and what there is to say of it besides where it stands. */
interface Added {
  id: string
  note: string | null
}

/** Adds a block of a pattern after the selection, else at the end of the chosen, the first open, or the last section; a ride without sections gets one. */
export function addPattern(store: AppStore, pattern: BlockPattern): Added | null {
  const { ride, report, selection, newId } = store.getState()
  if (!ride || !report) return null
  const place = insertionPlace(ride, report, selection)
  if (!place) {
    const section = emptySection(ride, newId())
    const block = blockOfPattern(pattern, ride, section, newId)
    const command = insertSection(ride, { index: 0, section: { ...section, blocks: [block] } })
    return runAndSay(store, command, block.id) ? { id: block.id, note: null } : null
  }
  const { id, command, grows } = patternCommand(ride, { pattern, ...place, newId })
  return runAndSay(store, command, id) ? { id, note: grows ?? null } : null
}

/** Adds what is kept as a pattern where `addPattern` would add a block. */
export function addOwnPattern(store: AppStore, own: Own): { ids: string[]; note: string | null } | null {
  const { ride, report, selection, newId } = store.getState()
  if (!ride || !report) return null
  const place = insertionPlace(ride, report, selection)
  const section = place?.section ?? emptySection(ride, newId())
  const { ids, command, note } = ownPatternCommand(ride, { own, section, index: place?.index ?? 0, newId })
  const whole = place ? command : withSection(command, section)
  return runAndSay(store, whole, ids[0]) ? { ids, note: note ?? null } : null
}

/** The command in a ride that has no section yet, with one to put it in. */
export const withSection = (command: Command, section: Section): Command => ({
  label: command.label,
  apply: (ride) => command.apply(insertSection(ride, { index: 0, section }).apply(ride)),
})

/** Adds an empty section after the chosen one, else at the end. */
export function addSection(store: AppStore): string | null {
  const { ride, selection, newId } = store.getState()
  if (!ride) return null
  const chosen = ride.sections.findIndex((section) => section.id === selection.sectionId)
  const section = emptySection(ride, newId())
  const index = chosen === -1 ? ride.sections.length : chosen + 1
  return runAndSay(store, insertSection(ride, { index, section }), section.id) ? section.id : null
}

/** A section without a song or blocks, for a ride that has none yet or wants another. */
export function emptySection(ride: Ride, id: string): Section {
  return { id, song: null, leadInSeconds: ride.sections.length === 0 ? 0 : DEFAULT_LEAD_IN, blocks: [] }
}

/** Where a new block goes: after the selection, else at the end of the chosen, the first open, or the last section; null in a ride without any. */
export function insertionPlace(ride: Ride, report: RideReport, selection: Selection): { section: Section; index: number } | null {
  const last = selection.ids.at(-1)
  if (last !== undefined) {
    const itemId = findBlock(ride, last)?.set?.id ?? last
    const place = findItem(ride, itemId)
    if (place) return { section: place.section, index: place.index + 1 }
  }
  const firstOpen = report.sections.findIndex(({ open }) => open > 0)
  const section = ride.sections.find((other) => other.id === selection.sectionId) ?? ride.sections.at(firstOpen)
  return section ? { section, index: section.blocks.length } : null
}
