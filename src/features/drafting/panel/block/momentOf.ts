import { constantsOf } from '#engine/constants.ts'
import { usualCount, usualLead } from '#engine/cues/usualPlace.ts'
import type { RideReport } from '#engine/report.ts'
import { isInside } from '#plan/cueStart.ts'
import { patched } from '#plan/edits.ts'
import type { Cue, CueMoment, Ride } from '#plan/model.ts'

/** Words that lead up to a change and may stand anywhere before it. */
const AHEAD: ReadonlySet<CueMoment> = new Set(['preview', 'announce'])

/**
 * A cue at another moment, where the studio's rules have that moment: an announcement an eight ahead, a count-in on the
 * change, form as the block begins. A lead that was set by hand stays where it still means the same.
 */
export function atMoment(ride: Ride, report: RideReport, blockId: string, cue: Cue, moment: CueMoment): Cue {
  const rules = constantsOf(ride)
  const played = report.blocks.find(({ block }) => block.id === blockId)
  const counted = played ? report.sections[played.section]!.bpm !== undefined : 'counts' in cue.lead
  const wordsEnd = report.cues.changes.find(({ block }) => block === played?.index)?.wordsEnd
  const usual = (one: CueMoment) => usualLead(one, rules, counted, wordsEnd)
  const means = (AHEAD.has(moment) && AHEAD.has(cue.moment)) || (isInside({ moment }) && isInside(cue))
  const keeps = means && JSON.stringify(cue.lead) !== JSON.stringify(usual(cue.moment))
  return patched(cue, {
    moment,
    lead: keeps ? cue.lead : usual(moment),
    count: moment === 'countIn' ? (cue.count ?? usualCount(rules)) : undefined,
  })
}

/** The lead a cue inside a block has when it begins with the block, in the unit of the block; undefined for other cues. */
export function beginsAt({ cues, blocks, sections }: RideReport, cueId: string): number | undefined {
  const line = cues.lines.find(({ cue }) => cue.id === cueId)
  if (!line || !isInside(line)) return undefined
  const played = blocks[line.block]!
  const inBlock = Math.max(0, played.to - played.from - (line.to - line.from))
  const { bpm } = sections[played.section]!
  return Math.floor('counts' in played.block.length && bpm !== undefined ? (inBlock * bpm) / 60 : inBlock)
}
