import type { Resistance } from '#plan/model.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import type { KnobSteps, StepRange } from '#units/units.ts'
import { isMark, itemsOf, type LineItem, numberIn } from './items.ts'
import type { Lexicon, LineMove, Mark } from './lexicon.ts'
import type { Block, LineContext, LineProblem, Strikes } from './lineTypes.ts'
import type { Span } from './tokens.ts'

/** What the words of a line say, before a pattern fills in what they leave out. */
export interface Said {
  terrain?: Block['terrain']
  posture?: Block['posture']
  hands?: Block['hands']
  length?: Block['length']
  resistance?: Resistance
  effort?: Block['effort']
  cadence?: NonNullable<Block['cadence']> | 'none'
  strikesPerBeat?: Strikes
  lead?: NonNullable<Block['lead']>
  move?: LineMove | 'none'
  moveCounts?: number
  /** Times the move is done: the length, where none is said. */
  times?: number
  side?: 'left' | 'right'
  then?: 'alternate'
  allOut?: true
  water?: true
  walk?: true
  /** What is said before the block, then in it. */
  cues?: readonly string[]
}

/** A line is read up to here; what stands behind is named as a problem. */
const LONGEST_LINE = 600

/**
 * Reads the words of one line. What is not understood is named with its place, and the rest is taken all the same.
 *
 * "8" is eights, "20s" and "1:30" time, "to 5" the knob at 5, "half on" or "add half" a change from where it stood,
 * "effort 5 to 8" a ramp, "jumps on 4" the counts of a move, and "x8" how often a move is done, or eights where there is none.
 */
export function saidIn(line: string, lexicon: Lexicon, { ride, section }: LineContext): { said: Said; problems: LineProblem[] } {
  const { stepsPerUnit } = ride.bike
  const eight = eightOf(section.song?.grid)
  const counted = section.song?.grid !== undefined
  const items = itemsOf(line.slice(0, LONGEST_LINE), lexicon)
  const said: Said = {}
  const problems: LineProblem[] = []
  let checkpoint: StepRange | undefined
  let aim: KnobSteps | undefined
  let atLeast = false
  let at = 0
  const jumps: { terrain: Block['terrain']; move: LineMove | 'none'; span: Span }[] = []

  type Simple = 'unknown' | 'twice' | 'needsNumber' | 'noKind' | 'howLong' | 'onOrOff' | 'needsMove' | 'tooLong'
  type Outside = 'effortOutside' | 'rpmOutside' | 'countsOutside' | 'lengthOutside'
  const wrong = (kind: Simple | Outside, span: Span) =>
    problems.push({ kind, from: span.from, to: span.to, word: line.slice(span.from, span.to) })
  const spanTo = (first: LineItem): Span => ({ from: first.from, to: items[at - 1]?.to ?? first.to })

  function put<K extends keyof Said>(field: K, value: Said[K], span: Span) {
    if (field in said) wrong('twice', span)
    else said[field] = value
  }
  const skipFiller = () => {
    while (isMark(items[at], 'filler')) at += 1
  }
  /** Steps over one of these, also behind words that add nothing: "half a turn". */
  const take = (...marks: readonly Mark[]): boolean => {
    let next = at
    while (isMark(items[next], 'filler')) next += 1
    if (!isMark(items[next], ...marks)) return false
    at = next + 1
    return true
  }
  /** A number in figures or words with what is added to it: "1½", "half", "two and a half". */
  const quantity = (): number | undefined => {
    const before = at
    skipFiller()
    let value = numberIn(items[at])
    if (value === undefined) {
      at = before
      return undefined
    }
    at += 1
    // "three quarters", "1 half": a whole number times a fraction in words.
    const fraction = numberIn(items[at])
    if (Number.isInteger(value) && value > 0 && items[at]?.kind === 'said' && fraction !== undefined && fraction > 0 && fraction < 1) {
      value *= fraction
      at += 1
    }
    const more = numberIn(items[at], 'addition')
    if (more !== undefined) {
      value += more
      at += 1
    }
    return value
  }
  const signed = (): number | undefined => {
    const item = items[at]
    if (item?.kind !== 'sign') return quantity()
    at += 1
    const value = quantity()
    if (value === undefined) at -= 1
    return value === undefined ? undefined : item.sign === '-' ? -value : value
  }
  /** The end of a range after its beginning, if there is one: "–8", "to 8". */
  const rangeEnd = (withTo: boolean): number | undefined => {
    const before = at
    const item = items[at]
    if ((item?.kind === 'sign' && item.sign === '-') || (withTo && isMark(item, 'to'))) {
      at += 1
      const value = signed()
      if (value !== undefined) return value
      at = before
    }
    return undefined
  }
  const steps = (value: number, span: Span): KnobSteps | undefined => {
    const exact = value * stepsPerUnit
    const nearest = Math.round(exact) + 0
    // Settings are written with at most three decimals.
    if (Math.abs(exact - nearest) <= 0.000_6 * stepsPerUnit || isRounded(value, nearest / stepsPerUnit)) return nearest
    const word = line.slice(span.from, span.to)
    problems.push({ kind: 'noSuchStep', ...span, word, low: Math.floor(exact), high: Math.ceil(exact), stepsPerUnit })
    return undefined
  }
  /** "to 3", "to 3–4", "to 3 or more", from behind the word that leads it. */
  const place = (first: LineItem): StepRange | undefined => {
    const from = signed()
    if (from === undefined) {
      wrong('needsNumber', first)
      return undefined
    }
    take('unit')
    const to = rangeEnd(true)
    take('unit')
    const orMore = to === undefined && take('orMore')
    const low = steps(from, spanTo(first))
    const high = to === undefined ? low : steps(to, spanTo(first))
    if (low === undefined || high === undefined) return undefined
    return { from: Math.min(low, high), to: Math.max(low, high), ...(orMore && { orMore: true as const }) }
  }
  const change = (value: number, first: LineItem) => {
    take('unit')
    const size = steps(value, spanTo(first))
    const mode = take('ifYouHaveIt') ? 'ifYouHaveIt' : take('orMore') || atLeast ? 'atLeast' : 'exact'
    atLeast = false
    if (size !== undefined) put('resistance', { kind: 'change', mode, steps: size }, spanTo(first))
  }
  const seconds = (value: number, first: LineItem) => {
    if (value > 0 && value <= 21_600) put('length', { seconds: value }, spanTo(first))
    else wrong('lengthOutside', spanTo(first))
  }
  const counts = (value: number, first: LineItem) => {
    const span = spanTo(first)
    const whole = Number(value.toFixed(6))
    if (!Number.isInteger(whole)) problems.push({ kind: 'partOfCount', ...span, word: line.slice(span.from, span.to), unit: eight })
    else if (whole < 1 || whole > 20_000) wrong('lengthOutside', span)
    else put('length', { counts: whole }, span)
  }
  const cadence = (rpm: number, rampTo: number | undefined, first: LineItem) => {
    const inside = [rpm, rampTo ?? rpm].every((pace) => pace >= 1 && pace <= 250)
    if (inside) put('cadence', { rpm, ...(rampTo !== undefined && { rampTo }) }, spanTo(first))
    else wrong('rpmOutside', spanTo(first))
  }
  const effort = (from: number, to: number, first: LineItem) => {
    if ([from, to].every((level) => level >= 0 && level <= 10)) put('effort', { from, to }, spanTo(first))
    else wrong('effortOutside', spanTo(first))
  }
  /** What a number is about stands behind it, else it is eights. */
  const bareNumber = (first: LineItem) => {
    const value = quantity()!
    if (isMark(items[at], 'effort') && numberIn(items[at + 1]) === undefined) {
      at += 1
      return effort(value, value, first)
    }
    const isFigure = first.kind === 'number' && Number.isInteger(value)
    const before = at
    const unit = take('unit')
    // "8 on 4" is eights and the counts of a move; "half on" and "one turn on" are the knob.
    if (isMark(items[at], 'on', 'off') && !(isFigure && !unit && isMark(items[at], 'on') && numberIn(items[at + 1]) !== undefined)) {
      const down = isMark(items[at], 'off')
      at += 1
      return change(down ? -value : value, first)
    }
    if (unit) return wrong('onOrOff', spanTo(first))
    at = before
    if (take('seconds')) return seconds(value, first)
    if (take('minutes')) {
      const then = at
      const rest = quantity()
      if (rest !== undefined && take('seconds')) return seconds(value * 60 + rest, first)
      at = then
      return seconds(value * 60, first)
    }
    if (take('rpm')) return cadence(value, undefined, first)
    if (take('counts')) return counts(value, first)
    if (take('phrases')) return counts(value * eight * 4, first)
    const end = rangeEnd(true)
    if (end !== undefined && take('rpm')) return cadence(value, end, first)
    at = before
    take('eights')
    if (
      items[at]?.kind === 'sign' &&
      (items[at] as { sign: string }).sign === '+' &&
      (items[at]!.tight || isMark(items[at - 1], 'eights'))
    ) {
      const sign = at
      at += 1
      const rest = quantity()
      if (rest !== undefined) {
        take('counts')
        return counts(value * eight + rest, first)
      }
      at = sign
    }
    if (isMark(items[at], 'times') && numberIn(items[at + 1]) === undefined) {
      at += 1
      return put('times', value, spanTo(first))
    }
    if (!counted && !isMark(items[at - 1], 'eights')) return wrong('howLong', spanTo(first))
    counts(value * eight, first)
  }

  while (at < items.length) {
    const item = items[at]!
    if (item.kind === 'stop') at += 1
    else if (item.kind === 'word') {
      at += 1
      wrong('unknown', item)
    } else if (item.kind === 'clock') {
      at += 1
      seconds(item.seconds, item)
    } else if (item.kind === 'quoted') {
      at += 1
      said.cues = [...(said.cues ?? []), item.text]
    } else if (item.kind === 'sign') {
      at += 1
      const value = quantity()
      if (value === undefined) {
        if (!item.tight) wrong('needsNumber', item)
      } else change(item.sign === '-' ? -value : value, item)
    } else if (numberIn(item) !== undefined) bareNumber(item)
    else if (item.kind === 'said') {
      at += 1
      saidItem(item)
    }
  }

  function saidItem(item: Extract<LineItem, { kind: 'said' }>) {
    const mark = item.meanings.find((meaning) => meaning.field === 'mark')?.value
    switch (mark) {
      case 'filler':
        return
      case 'effort': {
        const from = quantity()
        if (from === undefined) return wrong('needsNumber', item)
        return effort(from, rangeEnd(true) ?? from, item)
      }
      case 'to': {
        const range = place(item)
        if (range) put('resistance', { kind: 'total', ...range }, spanTo(item))
        return
      }
      case 'byFeel': {
        take('to')
        const range = place(item)
        if (range) put('resistance', { kind: 'byFeel', ...range }, spanTo(item))
        return
      }
      case 'check': {
        checkpoint = place(item) ?? checkpoint
        return
      }
      case 'aim': {
        const value = signed()
        if (value === undefined) return wrong('needsNumber', item)
        aim = steps(value, spanTo(item))
        return
      }
      case 'atLeast':
        atLeast = true
        return
      case 'add':
      case 'takeOff': {
        take('off', 'on')
        const value = quantity()
        if (value === undefined) return wrong('needsNumber', item)
        take('unit')
        if (!(isMark(items[at], 'on') && numberIn(items[at + 1]) !== undefined)) take('on', 'off')
        return change(mark === 'add' ? value : -value, item)
      }
      case 'stay':
        return put('resistance', { kind: 'keep' }, item)
      case 'allOff':
        return put('resistance', { kind: 'allOff' }, item)
      case 'on':
      case 'moveOn': {
        const value = quantity()
        if (value === undefined) return wrong('needsNumber', item)
        if (Number.isInteger(value) && value >= 1 && value <= 1_024) return put('moveCounts', value, spanTo(item))
        return wrong('countsOutside', spanTo(item))
      }
      case 'times': {
        const value = quantity()
        if (value === undefined) return wrong('needsNumber', item)
        return put('times', value, spanTo(item))
      }
      case undefined:
        return word(item)
      default:
        return wrong('needsNumber', item)
    }
  }

  /** A word by itself. "Jumps" is terrain and move at once, and only the move where another terrain is named. */
  function word({ meanings, ...span }: Extract<LineItem, { kind: 'said' }>) {
    const terrain = meanings.find((meaning) => meaning.field === 'terrain')
    const move = meanings.find((meaning) => meaning.field === 'move')
    if (terrain && move) {
      jumps.push({ terrain: terrain.value, move: move.value, span })
      return
    }
    const [meaning] = meanings
    if (meaning && meaning.field !== 'mark' && meaning.field !== 'number' && meaning.field !== 'addition')
      put(meaning.field, meaning.value as never, span)
    else wrong('unknown', span)
  }

  for (const { terrain, move, span } of jumps) {
    if (said.terrain === undefined) {
      said.terrain = terrain
      if (said.move === undefined) said.move = move
    } else if (said.move === undefined) said.move = move
    else wrong('twice', span)
  }
  if (line.length > LONGEST_LINE) wrong('tooLong', { from: LONGEST_LINE, to: line.length })
  const { resistance } = said
  if (resistance?.kind === 'total' && aim !== undefined) said.resistance = { ...resistance, aim }
  if (checkpoint && said.resistance && said.resistance.kind !== 'byFeel' && said.resistance.kind !== 'allOff')
    said.resistance = { ...said.resistance, checkpoint }
  return { said, problems }
}

/** A third written 0.333 means its step. */
const isRounded = (written: number, step: number): boolean =>
  [2, 3].some((places) => Number(written.toFixed(places)) === written && Number(step.toFixed(places)) === written && written % 0.1 !== 0)
