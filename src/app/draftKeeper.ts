import type { AppStore } from '#store/state.ts'
import type { DraftKeeper } from '#ui/draftKeeping.ts'
import { isTyping } from '#ui/isTyping.ts'
import { words } from '#words/words.ts'
import type { NotePad } from './journal.ts'
import type { Notes } from './leavingNotes.ts'
import type { SavingWorld } from './saving.ts'

/** Text in a field, what it was typed over, and where that was. */
interface DraftNote {
  field: string
  over: string
  text: string
  rideId: string | null
  sectionId: string | null
  ids: readonly string[]
}

const PREFIX = 'ridewright.drafts.'
const SECOND = 'drafts.'
/** Notes kept at most; the latest stay. */
const MOST = 20
/** Milliseconds between two writings at least. */
const BETWEEN = 250

interface DraftWorld extends SavingWorld {
  notes: Notes | null
  pad: NotePad | null
  /** A name no other window has. */
  window: string
}

/** Keeps what stands in the fields of this window at every key, and tells the store that words are waiting. */
export function createDraftKeeper(store: AppStore, left: readonly DraftNote[], world: DraftWorld): DraftKeeper {
  const kept = new Map(left.map((note) => [note.field, note]))
  const onPage = new Set<string>()
  let isWaiting = false

  const write = () => {
    isWaiting = false
    const text = kept.size === 0 ? null : JSON.stringify([...kept.values()].slice(-MOST))
    world.pad?.noteDown(SECOND + world.window, text).catch(() => undefined)
    try {
      if (text === null) world.notes?.removeItem(PREFIX + world.window)
      else world.notes?.setItem(PREFIX + world.window, text)
    } catch {
      // Full or refused: the other copy stands.
    }
  }
  const writeSoon = () => {
    if (isWaiting) return
    isWaiting = true
    world.later(write, BETWEEN)
  }
  // After the fields have all had their say: one that is drawn anew leaves and comes back.
  const tell = () => queueMicrotask(() => store.getState().setTyping(onPage.size > 0))
  world.onLeaving(write)
  if (left.length > 0) write()

  return {
    left: (field, over) => {
      const note = onPage.has(field) ? undefined : kept.get(field)
      return note?.over === over ? note.text : null
    },
    note: (field, over, text) => {
      const { ride, selection } = store.getState()
      kept.delete(field)
      kept.set(field, { field, over, text, rideId: ride?.id ?? null, sectionId: selection.sectionId, ids: selection.ids })
      onPage.add(field)
      writeSoon()
      tell()
    },
    drop: (field) => {
      onPage.delete(field)
      if (kept.delete(field)) writeSoon()
      tell()
    },
    leave: (field) => {
      onPage.delete(field)
      tell()
    },
  }
}

/** Takes the notes of windows that are no more, from both places; those of windows that are open stay theirs. */
export async function takeLeftDrafts(
  notes: Notes | null,
  pad: (NotePad & { notesUnder: (prefix: string) => Promise<{ name: string; text: string }[]> }) | null,
  isOpen: (window: string) => boolean,
): Promise<DraftNote[]> {
  const keys = Array.from({ length: notes?.length ?? 0 }, (_, index) => notes!.key(index)).filter((key) => key?.startsWith(PREFIX))
  const first = keys.map((key) => ({ window: key!.slice(PREFIX.length), text: notes!.getItem(key!) }))
  const second = (await pad?.notesUnder(SECOND).catch(() => [])) ?? []
  const found = [...second.map(({ name, text }) => ({ window: name.slice(SECOND.length), text })), ...first]
  const left = found.filter(({ window }) => !isOpen(window))
  for (const { window } of left) {
    notes?.removeItem(PREFIX + window)
    await pad?.noteDown(SECOND + window, null).catch(() => undefined)
  }
  return left.flatMap(({ text }) => readNotes(text))
}

/** Chooses again what was being typed about when the page ended, so that its field is on the page with the words in it. */
export function backToDraft(store: AppStore, left: readonly DraftNote[]): void {
  const { ride, received, selectItems, selectSection, notify } = store.getState()
  const note = left.findLast(({ rideId }) => rideId !== null && rideId === ride?.id)
  if (!note || received) return
  if (note.ids.length > 0) selectItems(note.ids)
  else if (note.sectionId !== null) selectSection(note.sectionId)
  notify({
    kind: 'info',
    sentence: words.app.backToDraft,
  })
}

/** Has the field that is being typed in take its words when the page is left, also by Back: a field that merely goes is left by nobody. */
export function takeWordsOnLeaving(page: Window): void {
  const leave = () => {
    const { activeElement } = page.document
    if (activeElement instanceof HTMLElement && isTyping(activeElement)) activeElement.blur()
  }
  // Before those who save what there is then.
  for (const sign of ['pagehide', 'popstate']) page.addEventListener(sign, leave, { capture: true })
}

function readNotes(text: string | null): DraftNote[] {
  try {
    const value: unknown = JSON.parse(text ?? 'null')
    return Array.isArray(value) ? value.filter(isNote) : []
  } catch {
    return []
  }
}

function isNote(value: unknown): value is DraftNote {
  const { field, over, text, rideId, sectionId, ids } = Object(value) as Record<string, unknown>
  const isText = (each: unknown) => typeof each === 'string'
  const isId = (each: unknown) => each === null || isText(each)
  return [field, over, text].every(isText) && isId(rideId) && isId(sectionId) && Array.isArray(ids) && ids.every(isText)
}
