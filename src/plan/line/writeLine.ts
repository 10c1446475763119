import { sameValue } from '#plan/edits.ts'
import type { Block, Resistance, Ride } from '#plan/model.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { formatSetting } from '#units/formatSetting.ts'
import type { StepRange } from '#units/units.ts'
import type { Lexicon } from './lexicon.ts'
import { LINE_FIELDS, type LineContext } from './lineTypes.ts'
import { lineMoveOf, patternOf, resolved } from './resolved.ts'
import { saidIn } from './saidIn.ts'

/** Fields of a block that no line says, and that a line leaves as they are. */
const UNSAID = [
  'label',
  'ownTotal',
  'easier',
  'harder',
  'feel',
  'cues',
  'leader',
  'mic',
  'locked',
  'minEights',
  'maxEights',
  'notes',
] as const satisfies readonly (keyof Block)[]

type LeftField = (typeof UNSAID)[number] | (typeof LINE_FIELDS)[number]

/** A block as a line, and what of it the line does not say. */
interface WrittenLine {
  readonly text: string
  /** Fields of the block that have a value the line does not tell; an edit of the line leaves them alone. */
  readonly left: readonly LeftField[]
}

/**
 * A block as it would be typed: kind, length, knob, effort, then what differs from the pattern of that kind.
 * Every line is read again before it is given, so that what does not come back as it was counts as left out.
 */
export function writeLine(block: Block, lexicon: Lexicon, context: LineContext): WrittenLine {
  const text = wordsOf(block, lexicon, context)
  const back = resolved(saidIn(text, lexicon, context).said, context)
  const lost = LINE_FIELDS.filter((field) => !sameValue(plainField(block, field), back?.[field]))
  const unsaid = UNSAID.filter((field) => (field === 'cues' ? block.cues.length > 0 : block[field] !== undefined))
  return { text, left: [...lost, ...unsaid] }
}

/** A flag that is off is as one that is not there. */
const plainField = (block: Block, field: (typeof LINE_FIELDS)[number]) => (block[field] === false ? undefined : block[field])

/** Said of climbs, flats, and surges, since those are ridden either way. */
const inSeveralPostures = (terrain: Block['terrain']): boolean =>
  new Set(PATTERNS.filter((pattern) => pattern.terrain === terrain).map(({ posture }) => posture)).size > 1

function wordsOf(block: Block, lexicon: Lexicon, context: LineContext): string {
  const { terrain, posture, hands, effort, cadence, strikesPerBeat, lead, move } = block
  const { ride } = context
  const own = move && lineMoveOf(move.name, ride)
  const kind = { terrain, ...(move ? own && { move: own, moveCounts: move.counts } : { move: 'none' as const }) }
  const pattern = patternOf({ ...kind, posture })!
  const made = resolved({ terrain, posture, ...(own ? { move: own } : {}) }, context)
  // "Jumps" says the terrain and the move in one word.
  const inOne = terrain === 'jumps' && own === 'jump'
  const parts = [
    (posture !== patternOf(kind)!.posture || inSeveralPostures(terrain)) && lexicon.posture[posture][0],
    !inOne && lexicon.terrain[terrain][0],
    own && move && `${lexicon.moves[own][0]} ${lexicon.marks.moveOn[0]} ${move.counts}`,
    move?.side && own && lexicon.side[move.side][0],
    move?.then && own && lexicon.alternate[0],
    move === undefined && (terrain === 'jumps' || made?.move !== undefined) && lexicon.noMove[0],
    hands !== pattern.hands && lexicon.hands[hands][0],
    lengthWords(block, lexicon, context),
    knobWords(block.resistance, lexicon, ride),
    `${lexicon.marks.effort[0]} ${range(effort.from, effort.to === effort.from ? undefined : effort.to, lexicon)}`,
    cadence === undefined && made?.cadence !== undefined && lexicon.noCadence[0],
    cadence === 'legsStill' && lexicon.legsStill[0],
    cadence !== undefined && cadence !== 'legsStill' && `${range(cadence.rpm, cadence.rampTo, lexicon)} ${lexicon.marks.rpm[0]}`,
    strikesPerBeat !== undefined && lexicon.strikes[STRIKES.get(strikesPerBeat)!][0],
    lead && lexicon.lead[lead][0],
    block.allOut && lexicon.allOut[0],
    block.water && lexicon.water[0],
    block.walk && lexicon.walk[0],
  ]
  return parts.filter(Boolean).join(' ')
}

const STRIKES = new Map([
  [0.5, 'half'],
  [1, 'one'],
  [2, 'double'],
  [null, 'off'],
] as const)

/** At most three decimals: nobody types more, and what is finer is left as it is. */
const plain = (value: number, { point }: Lexicon): string => String(Number(value.toFixed(3))).replace('.', point)

/** "7", "5–8". */
const range = (from: number, to: number | undefined, lexicon: Lexicon): string =>
  to === undefined ? plain(from, lexicon) : `${plain(from, lexicon)}–${plain(to, lexicon)}`

function lengthWords({ length }: Block, lexicon: Lexicon, { section }: LineContext): string {
  if ('seconds' in length) return `${plain(length.seconds, lexicon)}${lexicon.marks.seconds[0]}`
  const eight = eightOf(section.song?.grid)
  const whole = Math.trunc(length.counts / eight)
  const rest = length.counts - whole * eight
  if (whole === 0) return `${rest} ${lexicon.marks.counts[0]}`
  return rest === 0 ? `${whole}` : `${whole}+${rest}`
}

function knobWords(call: Resistance, { marks }: Lexicon, { bike: { stepsPerUnit } }: Ride): string {
  const size = (steps: number) => formatSetting(Math.abs(steps), stepsPerUnit)
  const at = (steps: number) => `${steps < 0 ? '−' : ''}${size(steps)}`
  const place = ({ from, to, orMore }: StepRange) => `${at(from)}${from === to ? '' : `–${at(to)}`}${orMore ? ` ${marks.orMore[0]}` : ''}`
  const check = 'checkpoint' in call && call.checkpoint ? ` ${marks.check[0]} ${place(call.checkpoint)}` : ''
  switch (call.kind) {
    case 'keep':
      return `${marks.stay[0]}${check}`
    case 'allOff':
      return marks.allOff[0]
    case 'byFeel':
      return `${marks.byFeel[0]} ${place(call)}`
    case 'total':
      return `${marks.to[0]} ${place(call)}${call.aim === undefined ? '' : ` ${marks.aim[0]} ${at(call.aim)}`}${check}`
    case 'change': {
      const asked = call.mode === 'atLeast' ? `${marks.atLeast[0]} ` : ''
      const way = call.steps < 0 ? marks.takeOff[0] : marks.add[0]
      return `${asked}${way} ${size(call.steps)}${call.mode === 'ifYouHaveIt' ? ` ${marks.ifYouHaveIt[0]}` : ''}${check}`
    }
  }
}
