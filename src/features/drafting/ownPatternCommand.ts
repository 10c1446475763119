import { laySection } from '#engine/timeline/laySection.ts'
import type { Command } from '#plan/commands/command.ts'
import { insertItems } from '#plan/commands/insertItems.ts'
import type { NewId } from '#plan/copies.ts'
import type { ProfileOf } from '#plan/kept/profile.ts'
import type { Ride, Section } from '#plan/model.ts'
import { usePattern as patternAt } from '#plan/patterns/usePattern.ts'
import type { AppState } from '#store/state.ts'
import { words } from '#words/words.ts'

export type Own = ProfileOf<'pattern'>

/** The patterns kept on this device, by name. */
export const ownPatternsIn = ({ profiles }: Pick<AppState, 'profiles'>): readonly Own[] =>
  profiles.filter((profile): profile is Own => profile.kind === 'pattern')

/** Adding what is kept as a pattern: the ids it will have, and what had to be changed for it to fit, in sentences. */
interface OwnPatternCommand {
  ids: string[]
  command: Command
  note?: string
}

/** Puts an own pattern at `index` of a section, whole: its lengths are somebody's own, so they are never cut to a gap. */
export function ownPatternCommand(
  ride: Ride,
  { own, section, index, newId }: { own: Own; section: Section; index: number; newId: NewId },
): OwnPatternCommand {
  const { items, measured, lifted } = patternAt(own.pattern, ride, section, index, newId)
  const command = insertItems(ride, { sectionId: section.id, index, items, name: own.name })
  const longer = laySection({ ...section, blocks: [...section.blocks, ...items] }).seconds - laySection(section).seconds
  const notes = [
    ...(measured ? [words.ownPatterns[measured]] : []),
    ...(lifted === 0 ? [] : [lifted < 0 ? words.ownPatterns.lowered : words.ownPatterns.raised]),
    ...(section.song && longer > 0 ? [words.drafting.runsPast({ name: own.name, over: longer })] : []),
  ]
  return { ids: items.map(({ id }) => id), command, ...(notes.length > 0 && { note: notes.join(' ') }) }
}
