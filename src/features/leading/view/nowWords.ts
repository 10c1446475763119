import { paceRange } from '#engine/cadence/paceRange.ts'
import type { LeadState } from '#engine/leading/leadState.ts'
import type { LedClass } from '#engine/leading/ledClass.ts'
import type { PlayedBlock, PlayedCadence } from '#engine/played.ts'
import type { Block, Ride } from '#plan/model.ts'
import { itemName, sectionName } from '#plan/names.ts'
import type { Effort } from '#units/units.ts'
import { capitalized, duration, number } from '#words/forms.ts'
import { tell, words } from '#words/words.ts'
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
  const shown = state.held === undefined ? '' : words.leading.holding({ seconds: Math.floor(state.held) })
  switch (state.phase) {
    case 'block':
      return inBlock(led, state, shown)
    case 'briefing':
      return between(state, shown, words.leading.welcome, words.leading.musicNext)
    case 'leadIn':
      return between(state, shown, tell(sectionName(led.ride, led.ride.sections[state.section!]!)), leadInMeta(led, state))
    case 'openTail':
      return openTail(led, state, shown)
    case 'clearUp':
      return between(state, shown, words.leading.offTheBikes, words.leading.wipeDown)
    case 'finished':
      return {
        texts: { ...NOTHING, name: words.leading.thatIsClass, meta: words.leading.stretch },
        bar: NO_BAR,
        effort: 0,
        spoken: words.leading.endOfClass,
      }
  }
}

function inBlock(led: LedClass, state: LeadState, held: string): NowWords {
  const played = led.report.blocks[state.block!]!
  const { block, ledger } = played
  const { eights } = state
  const name = capitalized(tell(itemName(block)))
  return {
    texts: {
      round: [held, leaderWords(led.ride, block), state.round && words.leading.round(state.round)].filter(Boolean).join(' · '),
      name,
      meta: metaOf(played),
      resistanceLabel: resistanceLabel(led, played),
      resistance: tell(ledger.total),
      ...cadenceOf(played.cadence),
      upForLabel: words.names.posture(block),
      upFor: duration(countdown(state.postureLeft ?? 0)),
      feel: optionsOf(played),
      ...countOf(state),
    },
    bar: eights ? { done: eights.of - eights.left, of: eights.of } : timedBar(played, state),
    effort: effortAt(played, state),
    spoken: words.leading.spoken({ name, length: lengthOf(state), call: ledger.call }),
  }
}

/** "Remy leads, Odalys speaks": said, as on the sheet, only where it is not the first leader. */
function leaderWords({ leaders }: Ride, block: Block): string {
  const one = (id: string | undefined) => leaders.find((leader) => leader.id === id) ?? leaders[0]!
  const leader = one(block.leader)
  const speaker = one(block.mic ?? block.leader)
  if (leader === leaders[0] && speaker === leaders[0]) return ''
  const [leads, speaks] = [leader, speaker].map(({ name }) => name.split(' ')[0]!) as [string, string]
  return leads === speaks ? words.leading.leads({ name: leads }) : words.leading.leadsAndSpeaks({ leads, speaks })
}

/** "Left foot on beat 1 · standing, hands wide · effort 7" */
function metaOf({ block, foot }: PlayedBlock): string {
  const posture = words.names.posture(block)
  return capitalized(
    [
      foot && words.leading.footOnOne({ foot }),
      block.posture === 'offBike' ? posture : words.leading.bodyWithHands({ posture, hands: block.hands }),
      words.leading.effort(block.effort),
      block.allOut && words.leading.allOut,
      block.water && words.leading.water,
    ]
      .filter(Boolean)
      // The dot stays at the end of a line, and a number with its word.
      .join('\u00a0· '),
  )
}

/** "turns on · +¾ · be at 3–4"; on another bike the feel, since the reading is only about right. */
function resistanceLabel({ ride, report: { shownOn } }: LedClass, played: PlayedBlock): string {
  const { change, reading } = played.ledger
  const { unit } = shownOn?.bike ?? ride.bike
  const label = words.leading.resistance({ turns: unit === 'turn', change: tell(reading ? reading.feel : change) })
  return `${label}${checkpointOf(ride, played)}`
}

function checkpointOf({ bike }: Ride, { ledger: { checkpoint, reading } }: PlayedBlock): string {
  const range = reading?.checkpoint ? tell(reading.checkpoint) : checkpoint && words.measures.settingRange(checkpoint, bike.stepsPerUnit)
  return range === undefined ? '' : ` · ${words.leading.beAt({ range })}`
}

function cadenceOf(cadence: PlayedCadence): Pick<NowWords['texts'], 'cadence' | 'cadenceLabel'> {
  if (cadence.kind === 'unknown') return { cadenceLabel: '', cadence: '' }
  if (cadence.kind === 'still') return { cadenceLabel: words.leading.wheel, cadence: words.leading.stopped }
  const [from, to] = paceRange(cadence).map(Math.round) as [number, number]
  return { cadenceLabel: words.leading.cadence, cadence: words.leading.cadenceOf({ from, to }) }
}

/** "Heavy, smooth · easier: stay seated" */
const optionsOf = ({ block: { feel, easier, harder } }: PlayedBlock): string =>
  [feel && words.leading.feels({ feel }), easier && words.leading.easier(easier), harder && words.leading.harder(harder)]
    .filter(Boolean)
    .join(' · ')

/**
 * The largest thing on the screen: eights left, without beats the time left. Under eights the time as
 * well: for "last ten seconds", and to lead on by when the music fails.
 */
function countOf({ eights, secondsLeft, phase }: LeadState): Pick<NowWords['texts'], 'count' | 'countLabel'> {
  const left = countdown(secondsLeft)
  if (eights) return { count: number(eights.left), countLabel: words.leading.eightsLeft({ eights: eights.left, seconds: left }) }
  const { toOne, left: label, secondsToOne, secondsLeft: secondsLabel } = words.leading
  return left < 60
    ? { count: number(left), countLabel: phase === 'leadIn' ? secondsToOne : secondsLabel }
    : { count: duration(left), countLabel: phase === 'leadIn' ? toOne : label }
}

function timedBar({ from, to }: PlayedBlock, { secondsLeft }: LeadState): LeadView['bar'] {
  return { done: to - from - secondsLeft, of: to - from }
}

/** On a ramp the effort of the moment. */
function effortAt({ block: { effort }, from, to }: PlayedBlock, { secondsLeft }: LeadState): Effort {
  const share = to > from ? 1 - secondsLeft / (to - from) : 0
  return effort.from + (effort.to - effort.from) * Math.min(1, Math.max(0, share))
}

const lengthOf = ({ eights, beat, secondsLeft }: LeadState): string => {
  const { unit = 8 } = beat ?? {}
  return eights ? words.measures.eights(unit * eights.left, unit) : duration(countdown(secondsLeft))
}

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
  return foot ? words.leading.nextSongFoot({ foot }) : words.leading.nextSong
}

function openTail(led: LedClass, state: LeadState, held: string): NowWords {
  const before = led.report.blocks[led.report.sections[state.section!]!.blocks.to - 1]
  return between(
    state,
    held,
    words.leading.playsOn,
    before ? words.leading.stayIn({ block: tell(itemName(before.block)) }) : words.leading.nothingPlanned,
  )
}
