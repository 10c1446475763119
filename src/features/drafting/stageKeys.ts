import type { KeyboardEvent } from 'react'
import type { Command } from '#plan/commands/command.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart, type PartTarget } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { isSet, type Ride, type Section, type SetBlock } from '#plan/model.ts'
import { findBlock, findItem, findSet } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { AppStore } from '#store/state.ts'
import type { Effort, Seconds } from '#units/units.ts'
import { runAndSay } from './draftActions.ts'
import { actOnItem, actOnSection, type ItemAction, type StageTools } from './stageActions.ts'

/** Seconds a timed block grows by at one press. */
const TIMED_STEP: Seconds = 5
/** What the letters do, and the keys that delete. */
const ACTIONS: Readonly<Record<string, ItemAction>> = {
  d: 'duplicate',
  s: 'split',
  j: 'join',
  g: 'group',
  u: 'ungroup',
  c: 'section',
  Delete: 'delete',
  Backspace: 'delete',
}

interface KeyTools extends StageTools {
  readOnly: boolean
  openDetails: () => void
  fitRide: () => void
  fitSection: (sectionId: string) => void
}

/**
 * Keys pressed on the stage. Returns true when the key was one of the stage's. The stop under the focus
 * (a block, a set's bracket, a song's head) says what the key is about.
 */
export function stageKey(event: KeyboardEvent, tools: KeyTools): boolean {
  const stop = (event.target as Element).closest<HTMLElement>('[data-stage-stop]')
  const id = stop?.dataset.id
  if (!stop || !id || event.ctrlKey || event.metaKey) return false
  const kind = stop.dataset.stageStop
  if (view(event, id, kind, tools)) return true
  if (kind === 'section') return sectionKey(event, id, stop, tools)
  return itemKey(event, id, kind === 'set', stop, tools)
}

function view(event: KeyboardEvent, id: string, kind: string | undefined, { store, fitRide, fitSection, openDetails }: KeyTools): boolean {
  if (event.altKey) return false
  const sectionId = kind === 'section' ? id : store.getState().selection.sectionId
  if (event.key === '0') fitRide()
  else if (event.key.toLowerCase() === 'f' && sectionId) fitSection(sectionId)
  else if (event.key === 'Enter') {
    choose(id, kind, store)
    openDetails()
  } else if (event.key === 'Escape') {
    if (store.getState().previewing !== null) return false
    store.getState().clearSelection()
  } else return false
  return true
}

/** The focus may have come to a stop that is not the one chosen: what is done next is about where the focus is. */
function choose(id: string, kind: string | undefined, store: AppStore): void {
  const { selection, selectSection, selectItem } = store.getState()
  if (kind !== 'section') {
    if (!selection.ids.includes(id)) selectItem(id)
  } else if (selection.ids.length > 0 || selection.sectionId !== id) selectSection(id)
}

function sectionKey(event: KeyboardEvent, id: string, stop: HTMLElement, tools: KeyTools): boolean {
  const { store, readOnly, focus } = tools
  const state = store.getState()
  const { ride } = state
  const step = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0
  if (step !== 0 && !event.altKey) return goTo(stop, 'section', step, (next) => state.selectSection(next))
  if (event.key === 'Home' || event.key === 'End')
    return goTo(stop, 'section', event.key === 'Home' ? -1e9 : 1e9, (next) => state.selectSection(next))
  if (event.key === ' ') {
    state.selectSection(id)
    return true
  }
  if (event.key === 'ArrowDown' && !event.altKey) {
    const first = state.shown?.sections.find((section) => section.id === id)?.blocks[0]
    const target = first && isSet(first) ? first.parts[0]?.id : first?.id
    if (target) {
      state.selectItem(target)
      focus(target)
    }
    return true
  }
  if (!ride || readOnly) return false
  const index = ride.sections.findIndex((section) => section.id === id)
  if (step !== 0 && event.altKey) {
    runAndSay(store, moveSection(ride, { sectionId: id, index: Math.max(0, index + step) }), id)
    focus(id)
    return true
  }
  const action = actionOf(event)
  if (action !== 'duplicate' && action !== 'delete') return false
  actOnSection(tools, action, id)
  return true
}

function itemKey(event: KeyboardEvent, id: string, isSetHead: boolean, stop: HTMLElement, tools: KeyTools): boolean {
  const { store, readOnly, focus } = tools
  const state = store.getState()
  const { ride } = state
  const step = event.key === 'ArrowLeft' ? -1 : event.key === 'ArrowRight' ? 1 : 0
  if (step !== 0 && !event.altKey) {
    if (event.shiftKey) choose(id, 'item', store)
    return goTo(stop, isSetHead ? 'set' : 'block', step, (next) => (event.shiftKey ? state.selectRange(next) : state.selectItem(next)))
  }
  if (event.key === 'Home' || event.key === 'End') {
    return goTo(stop, 'block', event.key === 'Home' ? -1e9 : 1e9, (next) => state.selectItem(next))
  }
  if (event.key === ' ') {
    state.toggleItem(id)
    return true
  }
  if (event.key === 'ArrowUp' && !event.altKey) {
    const set = ride && !isSetHead ? findBlock(ride, id)?.set : undefined
    const up = set?.id ?? state.selection.sectionId
    if (set) state.selectItem(set.id)
    else if (up) state.selectSection(up)
    if (up) focus(up)
    return true
  }
  if (event.key === 'ArrowDown' && !event.altKey) {
    const first = ride && isSetHead ? findSet(ride, id)?.set.parts[0]?.id : undefined
    if (first) {
      state.selectItem(first)
      focus(first)
    }
    return true
  }
  if (!ride || readOnly) return false
  const action = actionOf(event)
  if (action) {
    actOnItem(tools, action, id)
    return true
  }
  const command = measureCommand(event, ride, id, step)
  if (!command) return false
  runAndSay(store, command, id)
  focus(id)
  return true
}

/** The letters mean the same in capitals, which a locked key makes of them. */
function actionOf({ key, altKey }: KeyboardEvent): ItemAction | undefined {
  return altKey ? undefined : ACTIONS[key.length === 1 ? key.toLowerCase() : key]
}

/** Where a block stands, how long it is and how hard. */
function measureCommand(event: KeyboardEvent, ride: Ride, id: string, step: number): Command | null {
  if (event.altKey) {
    if (step !== 0) return event.shiftKey ? moveToNextSection(ride, id, step) : moveByOne(ride, id, step)
    if (event.key === 'ArrowUp') return effortBy(ride, id, 1)
    if (event.key === 'ArrowDown') return effortBy(ride, id, -1)
  }
  switch (event.key) {
    case '+':
    case '=':
      return resizeBy(ride, id, 1, event.altKey)
    case '-':
    case '−':
      return resizeBy(ride, id, -1, event.altKey)
    default:
      return null
  }
}

/** One place on among its neighbours, as a drag would: into a set and out of it, and over a song's edge into the next song. */
function moveByOne(ride: Ride, id: string, step: number): Command | null {
  const place = findBlock(ride, id) ?? findItem(ride, id)
  if (!place) return null
  const index = place.index + step
  if ('set' in place && place.set) {
    const { parts } = place.set
    return index >= 0 && index < parts.length
      ? movePart(ride, { blockId: id, to: { setId: place.set.id, index } })
      : movePart(ride, { blockId: id, to: besideSet(ride, place.section, place.set, step) })
  }
  const neighbour = place.section.blocks[index]
  if (!neighbour) return moveToNextSection(ride, id, step)
  if ('block' in place && isSet(neighbour))
    return movePart(ride, { blockId: id, to: { setId: neighbour.id, index: step > 0 ? 0 : neighbour.parts.length } })
  return moveItem(ride, { itemId: id, sectionId: place.section.id, index })
}

/** Before or behind a set, for one of its parts: a set that it leaves empty goes, and stands for no place. */
function besideSet(ride: Ride, section: Section, set: SetBlock, step: number): PartTarget {
  const { index } = findItem(ride, set.id)!
  return { sectionId: section.id, index: step > 0 && set.parts.length > 1 ? index + 1 : index }
}

function moveToNextSection(ride: Ride, id: string, step: number): Command | null {
  const place = findBlock(ride, id) ?? findItem(ride, id)
  if (!place) return null
  const target = ride.sections[ride.sections.indexOf(place.section) + step]
  if (!target) return null
  const to = { sectionId: target.id, index: step > 0 ? 0 : target.blocks.length }
  return 'set' in place && place.set ? movePart(ride, { blockId: id, to }) : moveItem(ride, { itemId: id, ...to })
}

function resizeBy(ride: Ride, id: string, steps: number, fine: boolean): Command | null {
  const place = findBlock(ride, id)
  if (!place) return null
  const { length } = place.block
  if ('seconds' in length) {
    const step = fine ? 1 : TIMED_STEP
    return resizeBlock(ride, { blockId: id, length: { seconds: Math.max(step, length.seconds + steps * step) } })
  }
  const step = fine ? 1 : eightOf(place.section.song?.grid)
  return resizeBlock(ride, { blockId: id, length: { counts: Math.max(step, length.counts + steps * step) } })
}

function effortBy(ride: Ride, id: string, step: number): Command | null {
  const block = findBlock(ride, id)?.block
  if (!block) return null
  const to = (effort: Effort) => Math.min(10, Math.max(0, effort + step))
  return patchBlock(ride, { blockId: id, patch: { effort: { from: to(block.effort.from), to: to(block.effort.to) } } })
}

function goTo(stop: HTMLElement, kind: string, step: number, select: (id: string) => void): boolean {
  const stops = stopsOf(stop, kind)
  const next = stops[Math.min(stops.length - 1, Math.max(0, stops.indexOf(stop) + step))]
  if (next?.dataset.id) {
    select(next.dataset.id)
    next.focus()
  }
  return true
}

/** The stops of a kind in the order of the ride, which for rounds is not the order of their ids. */
function stopsOf(stop: HTMLElement, kind: string): HTMLElement[] {
  const stage = stop.closest('.stage-content')
  return [...(stage?.querySelectorAll<HTMLElement>(`[data-stage-stop="${kind}"]`) ?? [])]
}
