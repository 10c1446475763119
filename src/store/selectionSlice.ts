import { isSet, type Ride, type Section } from '#plan/model.ts'
import { findBlock, findItem, findSection, idsOf } from '#plan/places.ts'
import type { GetState, SetState } from './state.ts'

/** What the next action is about. */
export interface Selection {
  /** The section the chosen items stand in, or the section chosen as a whole when there are none. */
  sectionId: string | null
  /** Ids of blocks, sets and parts of sets, in the order they were chosen. */
  ids: readonly string[]
  /** Where a range starts. */
  anchor: string | null
}

export interface SelectionSlice {
  selection: Selection
  /** Chooses one block, set or part alone. */
  selectItem: (id: string) => void
  /** Adds an item to the chosen ones, or takes it out. */
  toggleItem: (id: string) => void
  /** Chooses everything from the anchor to the item, in the order of the ride. */
  selectRange: (id: string) => void
  /** Chooses exactly these. */
  selectItems: (ids: readonly string[]) => void
  /** Chooses a section as a whole. */
  selectSection: (sectionId: string) => void
  clearSelection: () => void
}

export const NOTHING_SELECTED: Selection = { sectionId: null, ids: [], anchor: null }

export function createSelectionSlice(set: SetState, get: GetState): SelectionSlice {
  const choose = (ids: readonly string[], anchor: string | null) => {
    const ride = get().shown
    if (!ride) return
    const known = ids.filter((id) => sectionOf(ride, id) !== undefined)
    const last = known.at(-1)
    if (last === undefined) return set({ selection: NOTHING_SELECTED })
    set({ selection: { sectionId: sectionOf(ride, last)!.id, ids: known, anchor: anchor ?? last } })
  }

  return {
    selection: NOTHING_SELECTED,
    selectItem: (id) => choose([id], id),
    selectItems: (ids) => choose(ids, ids[0] ?? null),
    toggleItem: (id) => {
      const { ids } = get().selection
      choose(ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id], id)
    },
    selectRange: (id) => {
      const { selection, shown } = get()
      if (!shown) return
      const anchor = selection.anchor ?? id
      choose(rangeBetween(shown, anchor, id), anchor)
    },
    selectSection: (sectionId) => {
      const ride = get().shown
      if (ride && findSection(ride, sectionId)) set({ selection: { sectionId, ids: [], anchor: null } })
    },
    clearSelection: () => set({ selection: NOTHING_SELECTED }),
  }
}

/** The selection with only what the ride still has; the same selection when that is all of it. */
export function prunedSelection(selection: Selection, ride: Ride): Selection {
  const present = new Set(idsOf(ride))
  const ids = selection.ids.filter((id) => present.has(id))
  const last = ids.at(-1)
  const sectionId = last === undefined ? selection.sectionId : sectionOf(ride, last)!.id
  const next: Selection = {
    sectionId: sectionId !== null && present.has(sectionId) ? sectionId : null,
    ids,
    anchor: selection.anchor !== null && present.has(selection.anchor) ? selection.anchor : (ids[0] ?? null),
  }
  const same = next.sectionId === selection.sectionId && next.anchor === selection.anchor && ids.length === selection.ids.length
  return same ? selection : next
}

/** Ids from one item to another, ends included: parts when both are parts of one set, else whole blocks and sets. */
function rangeBetween(ride: Ride, from: string, to: string): string[] {
  const set = findBlock(ride, from)?.set
  const siblings = set && set === findBlock(ride, to)?.set ? set.parts : ride.sections.flatMap((section) => section.blocks)
  const start = siblings.findIndex((item) => holds(item, from))
  const end = siblings.findIndex((item) => holds(item, to))
  if (start < 0 || end < 0) return [to]
  return siblings.slice(Math.min(start, end), Math.max(start, end) + 1).map((item) => item.id)
}

const holds = (item: Section['blocks'][number], id: string): boolean =>
  item.id === id || (isSet(item) && item.parts.some((part) => part.id === id))

const sectionOf = (ride: Ride, id: string): Section | undefined => (findItem(ride, id) ?? findBlock(ride, id))?.section
