import type { Command } from '#plan/commands/command.ts'
import { makeCommand } from '#plan/commands/makeCommand.ts'
import { editSection, patched } from '#plan/edits.ts'
import type { Ride, Section } from '#plan/model.ts'
import { sectionName } from '#plan/names.ts'
import { findSection } from '#plan/places.ts'
import { say, type Text } from '#words/said.ts'

/** Fields of a section to replace; a field given as undefined is taken out. */
export type SectionPatch = Partial<Pick<Section, 'title' | 'inCount' | 'outCount' | 'leadInSeconds' | 'lead' | 'notes'>>

/**
 * Replaces fields of a section. Counts are made whole and never negative, the lead-in stays
 * within ten minutes either way; an out-point that is not after the in-point changes nothing.
 */
export function patchSection(ride: Ride, { sectionId, patch }: { sectionId: string; patch: SectionPatch }): Command {
  return makeCommand(labelOf(ride, sectionId, patch), (before) =>
    editSection(before, sectionId, (section) => patched(section, tidy(patch))),
  )
}

const LONGEST_LEAD_IN = 600

function tidy(patch: SectionPatch): SectionPatch {
  const { inCount, outCount, leadInSeconds } = patch
  return {
    ...patch,
    ...(inCount !== undefined && { inCount: wholeCount(inCount) }),
    ...(outCount !== undefined && { outCount: wholeCount(outCount) }),
    ...(leadInSeconds !== undefined && { leadInSeconds: Math.max(-LONGEST_LEAD_IN, Math.min(LONGEST_LEAD_IN, leadInSeconds)) }),
  }
}

const wholeCount = (counts: number): number => Math.max(0, Math.round(counts))

function labelOf(ride: Ride, sectionId: string, patch: SectionPatch): Text {
  const section = findSection(ride, sectionId)
  if (!section) return say('commands.nothingTo', { verb: 'change' })
  const name = sectionName(ride, section)
  const keys = Object.keys(patch) as (keyof SectionPatch)[]
  if (keys.join() === 'title' && patch.title) return say('commands.renamed', { name, to: patch.title })
  return say('commands.changed', { fields: keys.map((field) => say('commands.songField', { field })), name })
}
