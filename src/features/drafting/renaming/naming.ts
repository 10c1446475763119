import type { Command } from '#plan/commands/command.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import { patchSet } from '#plan/commands/patchSet.ts'
import { setSong } from '#plan/commands/setSong.ts'
import type { Ride } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { findBlock, findSection, findSet } from '#plan/places.ts'
import { tell, words } from '#words/words.ts'

/** How one thing of the stage is called, and how it is called something else. */
interface Naming {
  /** What it is called now, in a sentence. */
  name: string
  /** What stands in the field to begin with. */
  value: string
  /** What it is called without a name of its own. */
  placeholder: string
  /** Why it cannot be left empty; absent where it can. */
  required?: string
  /** Longest name kept, in characters. */
  longest: number
  command: (ride: Ride, name: string) => Command
}

/** The longest a label may be, and a title. */
const LONGEST = { label: 120, title: 300 } as const

/**
 * What of the stage bears the name that is seen there: a block's label, a set's, a song's title, and the title of a section
 * without a song. A block that is given the name it has anyway has none of its own; null for nothing of the ride.
 */
export function namingOf(ride: Ride, id: string): Naming | null {
  const block = findBlock(ride, id)?.block
  if (block) {
    const own = tell(itemName({ ...block, label: undefined }))
    const name = tell(itemName(block))
    const label = (text: string) => (text === '' || text === own ? undefined : text)
    return {
      ...{ name, value: name, placeholder: own, longest: LONGEST.label },
      command: (now, text) => patchBlock(now, { blockId: id, patch: { label: label(text) } }),
    }
  }
  const set = findSet(ride, id)?.set
  if (set) {
    return {
      ...{ name: tell(itemName(set)), value: set.label ?? '', longest: LONGEST.label },
      placeholder: tell(itemName({ ...set, label: undefined })),
      command: (now, text) => patchSet(now, { setId: id, patch: { label: text || undefined } }),
    }
  }
  const section = findSection(ride, id)
  if (!section) return null
  const { song } = section
  const title = song?.title ?? section.title ?? ''
  return {
    ...{ name: title || words.drafting.noSong, value: title, placeholder: song ? '' : words.drafting.noSong, longest: LONGEST.title },
    ...(song && { required: words.renaming.titleNeeded }),
    command: (now, text) => {
      const songNow = findSection(now, id)?.song
      return songNow
        ? setSong(now, { sectionId: id, song: { ...songNow, title: text } })
        : patchSection(now, { sectionId: id, patch: { title: text || undefined } })
    },
  }
}
