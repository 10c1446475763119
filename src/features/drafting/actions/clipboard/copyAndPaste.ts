import { carryOut } from '#features/drafting/actions/changing/carryOut.ts'
import { carryOutOnSection } from '#features/drafting/actions/changing/carryOutOnSection.ts'
import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { copyOf, copyOfCue } from '#features/drafting/clipboard/copying.ts'
import { type How, paste } from '#features/drafting/clipboard/pasting.ts'
import { fetchCarried, give } from '#features/drafting/clipboard/system.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import type { Carried } from '#store/clipSlice.ts'
import { say, type Text } from '#words/said.ts'
import { tell } from '#words/words.ts'

const isSomething = ({ target }: DraftGround): boolean => target.kind !== 'ride'

/** Copies the target, and takes it out where it is cut. The one who calls brings it to the system's clipboard. */
export function take(on: DraftGround, how: 'copy' | 'cut'): Carried | null {
  const { store, target } = on
  const copied = copyOf(on)
  if (!copied) return null
  store.getState().keepCopied(copied.carried)
  if (how === 'copy') tellCopied(on, say('clipboard.copied', { name: copied.name }))
  else takeOut(on, target, say('clipboard.cutDone', { name: copied.name }))
  return copied.carried
}

/** Copies one cue, and takes it out where it is cut. */
export function takeCue(on: Pick<DraftGround, 'store' | 'tools'>, cueId: string, how: 'copy' | 'cut'): Carried | null {
  const { store } = on
  const copied = copyOfCue(store, cueId)
  if (!copied) return null
  store.getState().keepCopied(copied.carried)
  if (how === 'copy') tellCopied(on, say('clipboard.copied', { name: copied.name }))
  else {
    const { ride, run } = store.getState()
    const change =
      ride && patchBlock(ride, { blockId: copied.block.id, patch: { cues: copied.block.cues.filter(({ id }) => id !== cueId) } })
    if (change) run({ ...change, label: say('clipboard.cutDone', { name: copied.name }) })
  }
  return copied.carried
}

export function copyCue(on: Pick<DraftGround, 'store' | 'tools'>, cueId: string): void {
  const carried = takeCue(on, cueId, 'copy')
  if (carried) void give(on.store, carried)
}

/** Says it, and shows it for as long as the ride stays as it is: else a copy would show nothing. */
function tellCopied({ store, tools }: Pick<DraftGround, 'store' | 'tools'>, copied: Text): void {
  tools.note(tell(copied))
  store.getState().announce(tell(copied))
}

function takeOut(on: DraftGround, target: DraftGround['target'], label: Text): void {
  const { ride } = on.store.getState()
  if (!ride || target.kind === 'ride') return
  if (target.kind === 'section') {
    const command = deleteSection(ride, { sectionId: target.id })
    carryOutOnSection(on, target.id, { ...command, label }, 'neighbour')
  } else carryOut(on, { ...deleteItems(ride, target.ids), label }, 'neighbour')
}

const takeByHand = (how: 'copy' | 'cut') => (on: DraftGround) => {
  const carried = take(on, how)
  if (carried) void give(on.store, carried)
}

const pasteByHand = (how: How) => async (on: DraftGround) => {
  const carried = await fetchCarried(on.store)
  if (carried) paste(on, carried, how)
}

// The browser makes events of their keys, which bring the clipboard along without asking; so the keys are not heard here.
const byEvent = { byBrowser: true, keyOnly: true, inMenu: true } as const

export const CUT: DraftAction = {
  id: 'clipboard.cut',
  name: say('clipboard.cut'),
  does: say('clipboard.cutDo'),
  keys: ['Mod+X'],
  writes: true,
  ...byEvent,
  can: isSomething,
  do: takeByHand('cut'),
}

export const COPY: DraftAction = {
  id: 'clipboard.copy',
  name: say('clipboard.copy'),
  does: say('clipboard.copyDo'),
  keys: ['Mod+C'],
  ...byEvent,
  can: isSomething,
  do: takeByHand('copy'),
}

export const PASTE: DraftAction = {
  id: 'clipboard.paste',
  name: say('clipboard.paste'),
  does: say('clipboard.pasteDo'),
  keys: ['Mod+V'],
  writes: true,
  ...byEvent,
  do: pasteByHand('all'),
}

const only = { writes: true, keyOnly: true, inMenu: true, can: isSomething } as const

export const PASTE_BLOCKS: DraftAction = {
  id: 'clipboard.onlyBlocks',
  name: say('clipboard.onlyBlocks'),
  does: say('clipboard.onlyBlocksDo'),
  ...only,
  do: pasteByHand('blocks'),
}

export const PASTE_CUES: DraftAction = {
  id: 'clipboard.onlyCues',
  name: say('clipboard.onlyCues'),
  does: say('clipboard.onlyCuesDo'),
  ...only,
  do: pasteByHand('cues'),
}

export const PASTE_RESISTANCE: DraftAction = {
  id: 'clipboard.onlyResistance',
  name: say('clipboard.onlyResistance'),
  does: say('clipboard.onlyResistanceDo'),
  ...only,
  do: pasteByHand('resistance'),
}
