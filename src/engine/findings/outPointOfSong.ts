import type { Finding, Fix } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import type { Section } from '#plan/model.ts'
import { lastCountOf } from '#plan/songs/beatGrid.ts'
import { formatEights } from '#units/formatEights.ts'
import type { Facts } from './facts.ts'
import { ARITHMETIC, atSection, fix, type Noticed, quotedSection } from './finding.ts'

/** In- and out-points that the song does not have, or that leave nothing of it. */
export function outPointOfSong(facts: Facts): Finding[] {
  return facts.ride.sections.flatMap((section, index) => {
    const noticed = judge(facts, section, index)
    return noticed ? [atSection(facts, index, noticed, facts.sections[index]!.to)] : []
  })
}

/** Counts by which a rounded song length may seem to fall short. */
const ROUNDING_COUNTS = 0.05

function judge(facts: Facts, section: Section, index: number): Noticed | undefined {
  const { counts, unit } = facts.sections[index]!
  const song = section.song
  if (!counts || !song?.grid) return undefined
  const end = lastCountOf(song, song.grid)
  const over = counts.out - end
  const name = quotedSection(facts, index)
  if (counts.total === 0) {
    const text = `Nothing of ${name} is left between its in-point and its out-point.`
    const fixes = [end - counts.in >= unit.eight ? dropOut(section) : undefined]
    return { rule: 'nothingRidden', severity: 'problem', text, why: ARITHMETIC, fixes }
  }
  if (over <= ROUNDING_COUNTS) return undefined
  return {
    rule: 'outPastSong',
    severity: 'problem',
    text: `The out-point of ${name} is ${formatEights(Math.max(1, Math.round(over)), unit.eight)} past the end of the song.`,
    why: ARITHMETIC,
    amount: over,
    fixes: [end - counts.in >= unit.eight ? dropOut(section) : undefined],
  }
}

const dropOut = ({ id }: Section): Fix =>
  fix('Move the out-point to the song’s last whole eight', 'Moved the out-point to the song’s last whole eight', (ride) =>
    editSection(ride, id, ({ outCount: _, ...section }) => section),
  )
