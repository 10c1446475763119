import { countingUnit } from '#engine/timeline/countingUnit.ts'
import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection } from '#plan/edits.ts'
import type { Ride } from '#plan/model.ts'
import { quotedSectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { countsOf, lastCountOf } from '#plan/songs/beatGrid.ts'
import type { Counts } from '#units/units.ts'
import { say, type Text } from '#words/said.ts'
import { type LengthChange, lengthsFor, withLengths } from './sectionFit.ts'

/** A stretch of the song next to the one ridden that the blocks can fill. */
interface NearFit {
  /** Counts ridden then. */
  counts: Counts
  changes: LengthChange[]
  /** "End the song after 24 eights". */
  label: Text
  command: Command
}

/**
 * Where the blocks of a section cannot fill its song: the nearest stretches that they can
 * fill, the song ending there, the shorter one first. A longer one only while the song lasts.
 */
export function nearestFits(ride: Ride, sectionId: string): NearFit[] {
  const section = findSection(ride, sectionId)
  const counts = section && countsOf(section)
  const grid = section?.song?.grid
  if (!section || !grid || counts === null || counts === undefined) return []
  const found = lengthsFor(section, counts)
  if (found.ok) return []
  const from = section.inCount ?? 0
  const lasts = Math.floor(lastCountOf(section.song!, grid)) - from
  const { eight } = countingUnit(section)
  return (found.nearest ?? []).flatMap((near) => {
    const fitted = near > 0 && near <= lasts ? lengthsFor(section, near) : undefined
    if (!fitted?.ok) return []
    const label = say('fit.fittedSectionTo', { section: quotedSectionName(ride, section), counts: near, unit: eight })
    const command = makeCommand(label, (before) =>
      editSection(before, sectionId, (one) => ({ ...withLengths(one, fitted.lengths), outCount: from + near })),
    )
    return [{ counts: near, changes: fitted.changes, label: say('fit.endAfter', { counts: near, unit: eight }), command }]
  })
}
