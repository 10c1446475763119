import { paceRange } from '#engine/cadence/paceRange.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import type { PlayedBlock, PlayedCadence } from '#engine/played.ts'
import type { Block, Ride } from '#plan/model.ts'
import { nameOfItem, nameOfSection } from '#plan/names.ts'
import { POSTURE_WORDS } from '#plan/posture.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatEffort } from '#units/formatEffort.ts'
import { formatSettingRange } from '#units/formatSetting.ts'
import { plural } from '#units/plural.ts'
import type { Effort } from '#units/units.ts'
import { countdown } from './countdown.ts'
import type { LeadView, NowSlot } from './view.ts'

interface NowWords {
  texts: Record<NowSlot, string>
  bar: LeadView['bar']
  effort: Effort
  spoken: string
}

const NOTHING: Record<NowSlot, string> = {
  round: '',
  name: '',
  meta: '',
  resistanceLabel: '',
  resistance: '',
  cadenceLabel: '',
  cadence: '',
  upForLabel: '',
  upFor: '',
  feel: '',
  count: '',
  countLabel: '',
}

const NO_BAR: LeadView['bar'] = { done: 0, of: 0 }

/** What is ridden now, in words and numbers. */
export function nowWords(led: LedClass, state: LeadState): NowWords {
  const shown = state.held === undefined ? '' : `holding, ${formatDuration(Math.floor(state.held))}`
  switch (state.phase) {
    case 'block':
      return inBlock(led, state, shown)
    case 'briefing':
      return between(state, shown, 'Briefing', 'The music comes next.')
    case 'leadIn':
      return between(state, shown, nameOf(led.ride, state.section!), leadInMeta(led, state))
    case 'openTail':
      return openTail(led, state, shown)
    case 'clearUp':
      return between(state, shown, 'Off the bikes', 'Wheels stopped, wipe down, water.')
    case 'finished':
      return {
        texts: { ...NOTHING, name: 'That was the class', meta: 'Wheels stopped, both sides equal.' },
        bar: NO_BAR,
        effort: 0,
        spoken: 'End of class.',
      }
  }
}

function inBlock(led: LedClass, state: LeadState, held: string): NowWords {
  const played = led.report.blocks[state.block!]!
  const { block, ledger } = played
  const { eights } = state
  const name = capital(nameOfItem(block))
  return {
    texts: {
      round: [held, leaderWords(led.ride, block), state.round && `round ${state.round.round} of ${state.round.of}`]
        .filter(Boolean)
        .join(' · '),
      name,
      meta: metaOf(played),
      resistanceLabel: resistanceLabel(led, played),
      resistance: ledger.total,
      ...cadenceOf(played.cadence),
      upForLabel: POSTURE_WORDS[block.posture].lasts,
      upFor: formatDuration(countdown(state.postureLeft ?? 0)),
      feel: optionsOf(played),
      ...countOf(state),
    },
    bar: eights ? { done: eights.of - eights.left, of: eights.of } : timedBar(played, state),
    effort: effortAt(played, state),
    spoken: `${name}, ${lengthOf(state)}, ${ledger.call}.`,
  }
}

/** "Remy leads, Odalys speaks": said, as on the sheet, only where it is not the first leader. */
function leaderWords({ leaders }: Ride, block: Block): string {
  const one = (id: string | undefined) => leaders.find((leader) => leader.id === id) ?? leaders[0]!
  const leader = one(block.leader)
  const speaker = one(block.mic ?? block.leader)
  if (leader === leaders[0] && speaker === leaders[0]) return ''
  const [leads, speaks] = [leader, speaker].map(({ name }) => name.split(' ')[0])
  return leads === speaks ? `${leads} leads` : `${leads} leads, ${speaks} speaks`
}

/** "Left foot on the one · standing, hands wide · effort 7" */
function metaOf({ block, foot }: PlayedBlock): string {
  const { from, to } = block.effort
  const effort = from === to ? formatEffort(from) : `${formatEffort(from)} to ${formatEffort(to)}`
  const hands = block.posture === 'offBike' ? '' : `, hands\u00a0${block.hands}`
  return capital(
    [
      foot && `${foot} foot on the one`,
      `${POSTURE_WORDS[block.posture].is}${hands}`,
      `effort\u00a0${effort}`,
      block.allOut && 'all out',
      block.water && 'water',
    ]
      .filter(Boolean)
      // The dot stays at the end of a line, and a number with its word.
      .join('\u00a0· '),
  )
}

/** "turns · +¾ · be at 3–4"; on another bike the feel, since the reading is only about right. */
function resistanceLabel({ ride, report: { shownOn } }: LedClass, played: PlayedBlock): string {
  const { change, reading } = played.ledger
  const { unit } = shownOn?.bike ?? ride.bike
  return `${unit}s · ${reading ? reading.feel : change}${checkpointOf(ride, played)}`
}

function checkpointOf({ bike }: Ride, { ledger: { checkpoint, reading } }: PlayedBlock): string {
  if (reading?.checkpoint) return ` · be at ${reading.checkpoint}`
  return checkpoint ? ` · be at ${formatSettingRange(checkpoint, bike.stepsPerUnit)}` : ''
}

function cadenceOf(cadence: PlayedCadence): Pick<NowWords['texts'], 'cadence' | 'cadenceLabel'> {
  if (cadence.kind === 'unknown') return { cadenceLabel: '', cadence: '' }
  if (cadence.kind === 'still') return { cadenceLabel: 'legs', cadence: 'still' }
  const [from, to] = paceRange(cadence).map(Math.round) as [number, number]
  return { cadenceLabel: 'cadence', cadence: from === to ? `${from}` : `${from} to ${to}` }
}

/** "Heavy, smooth · easier: stay seated" */
const optionsOf = ({ block: { feel, easier, harder } }: PlayedBlock): string =>
  [feel && `feels ${feel}`, easier && `easier: ${easier.text}`, harder && `harder: ${harder.text}`].filter(Boolean).join(' · ')

/**
 * The largest thing on the screen: eights left, without beats the time left. Under eights the time as
 * well: for "last ten seconds", and to lead on by when the music fails.
 */
function countOf({ eights, secondsLeft, phase }: LeadState): Pick<NowWords['texts'], 'count' | 'countLabel'> {
  const left = countdown(secondsLeft)
  if (eights)
    return { count: `${eights.left}`, countLabel: `${eights.left === 1 ? 'last eight' : 'eights left'}\u00a0· ${formatDuration(left)}` }
  const label = phase === 'leadIn' ? 'to the one' : 'left'
  return left < 60
    ? { count: `${left}`, countLabel: phase === 'leadIn' ? 'seconds to the one' : 'seconds left' }
    : { count: formatDuration(left), countLabel: label }
}

function timedBar({ from, to }: PlayedBlock, { secondsLeft }: LeadState): LeadView['bar'] {
  return { done: to - from - secondsLeft, of: to - from }
}

/** On a ramp the effort of the moment. */
function effortAt({ block: { effort }, from, to }: PlayedBlock, { secondsLeft }: LeadState): Effort {
  const share = to > from ? 1 - secondsLeft / (to - from) : 0
  return effort.from + (effort.to - effort.from) * Math.min(1, Math.max(0, share))
}

const lengthOf = ({ eights, secondsLeft }: LeadState): string =>
  eights ? plural(eights.left, 'eight') : formatDuration(countdown(secondsLeft))

/** Time between blocks: a name, what to know, and how long. */
function between(state: LeadState, held: string, name: string, meta: string): NowWords {
  return {
    texts: { ...NOTHING, round: held, name, meta, ...countOf(state) },
    bar: NO_BAR,
    effort: 0,
    spoken: `${name}.`,
  }
}

function leadInMeta({ report }: LedClass, { next }: LeadState): string {
  const foot = next && report.blocks[next.block]!.foot
  return foot ? `Next song. ${capital(foot)} foot on the one.` : 'Next song.'
}

function openTail(led: LedClass, state: LeadState, held: string): NowWords {
  const before = led.report.blocks[led.report.sections[state.section!]!.blocks.to - 1]
  return between(
    state,
    held,
    'The song plays on',
    before ? `Nothing planned: stay in ${nameOfItem(before.block)}, or go on.` : 'Nothing planned.',
  )
}

const nameOf = (ride: Ride, section: number): string => `${nameOfSection(ride, ride.sections[section]!)}`

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1)
