import type { RideReport } from '#engine/report.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { carryClip } from '#plan/clip/carriedClip.ts'
import { blocksOf, type Clip, clipOf } from '#plan/clip/clip.ts'
import { writeItem } from '#plan/line/writeItems.ts'
import type { Block } from '#plan/model.ts'
import { itemsText, sectionName } from '#plan/names.ts'
import { findBlock, findSection } from '#plan/places.ts'
import type { Carried } from '#store/clipSlice.ts'
import type { AppStore } from '#store/state.ts'
import { say, type Text } from '#words/said.ts'
import { tell, words } from '#words/words.ts'

/** What is copied, as the system's clipboard takes it, and what it is called. */
interface Copied {
  carried: Carried
  name: Text
}

/** What the target is, as something to be pasted elsewhere; null where that is the ride as a whole. */
export function copyOf({ store, target }: DraftGround): Copied | null {
  const { shown, shownReport } = store.getState()
  if (!shown || !shownReport || target.kind === 'ride') return null
  if (target.kind !== 'section') {
    const clip = clipOf(shown, { ids: target.ids }, totalBefore(shownReport, new Set(target.ids)))
    return clip && { carried: carriedOf(clip), name: itemsText(shown, target.ids) }
  }
  const section = findSection(shown, target.id)
  if (!section) return null
  const ids = new Set(blocksOf(section.blocks).map(({ id }) => id))
  const clip = clipOf(shown, { sectionIds: [target.id] }, totalBefore(shownReport, ids))
  return clip && { carried: carriedOf(clip), name: sectionName(shown, section) }
}

/** A cue of a block; null where there is none of that id. */
export function copyOfCue(store: AppStore, cueId: string): (Copied & { block: Block }) | null {
  const { shown, shownReport } = store.getState()
  const clip = shown && shownReport && clipOf(shown, { cueIds: [cueId] }, 0)
  if (!clip) return null
  const [copied] = clip.ride.sections.flatMap(({ blocks }) => blocksOf(blocks))
  const { block } = findBlock(shown, copied!.id)!
  return { carried: carriedOf(clip), name: say('names.quoted', { name: copied!.cues[0]!.text }), block }
}

/** The total riders have when they come to the first of some blocks or sets. */
function totalBefore(report: RideReport, ids: ReadonlySet<string>): number {
  const first = report.blocks.find(({ block, set }) => ids.has(block.id) || (set !== undefined && ids.has(set.set.id)))
  return first ? Math.round(first.ledger.before.nominal) : 0
}

function carriedOf(clip: Clip): Carried {
  const text = linesOf(clip).join('\n')
  return { html: carryClip(clip, text), text }
}

/** What was copied, to be read by people, and to be typed: each block or set as its line. */
function linesOf({ kind, ride }: Clip): string[] {
  if (kind === 'cues') return ride.sections.flatMap(({ blocks }) => blocksOf(blocks).flatMap(({ cues }) => cues.map(({ text }) => text)))
  return ride.sections.flatMap((section) => {
    const lines = section.blocks.map((item) => writeItem(item, words.lineWords, { ride, section }))
    return kind === 'sections' ? [tell(sectionName(ride, section)), ...lines] : lines
  })
}
