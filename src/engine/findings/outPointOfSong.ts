import type { Finding, Fix } from '#engine/report.ts'
import { editSection } from '#plan/edits.ts'
import type { Section } from '#plan/model.ts'
import { lastCountOf } from '#plan/songs/beatGrid.ts'
import { say } from '#words/said.ts'
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
  const music = section.song
  if (!counts || !music?.grid) return undefined
  const end = lastCountOf(music, music.grid)
  const over = counts.out - end
  const song = quotedSection(facts, index)
  if (counts.total === 0) {
    const text = say('checksRide.nothingRidden', { song })
    const fixes = [end - counts.in >= unit.eight ? dropOut(section) : undefined]
    return { rule: 'nothingRidden', severity: 'problem', text, why: ARITHMETIC, fixes }
  }
  if (over <= ROUNDING_COUNTS) return undefined
  return {
    rule: 'outPastSong',
    severity: 'problem',
    text: say('checksRide.outPastSong', { song, counts: Math.max(1, Math.round(over)), unit: unit.eight }),
    why: ARITHMETIC,
    amount: over,
    fixes: [end - counts.in >= unit.eight ? dropOut(section) : undefined],
  }
}

const dropOut = ({ id }: Section): Fix =>
  fix(say('checksRide.endAtLastEight'), say('checksRide.endedAtLastEight'), (ride) =>
    editSection(ride, id, ({ outCount: _, ...section }) => section),
  )
