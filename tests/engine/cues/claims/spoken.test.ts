import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { claimsIn } from '#engine/cues/claims/claimsOf.ts'
import type { Finding } from '#engine/report.ts'
import type { Block, Cue, CueMoment, Ride } from '#plan/model.ts'
import { told as toldIn } from '#tests/support/told.ts'
import { BREEZY, CALM, CHATTY, CLIPPED } from './spoken/fourMoreVoices.ts'
import { FRESH } from './spoken/freshSentences.ts'
import { FURTHER } from './spoken/furtherSentences.ts'
import { REFERENCE_RIDE } from './spoken/referenceSentences.ts'
import { SPOKEN, type Spoken } from './spoken/sentences.ts'
import { SIBLINGS } from './spoken/siblingSentences.ts'
import { eveningRide, levelRide } from './spoken/spokenRides.ts'
import { FORTY, MORE_STRANGERS, STRANGERS } from './spoken/strangersSentences.ts'
import { BRISK, ENTERED, WARM } from './spoken/twoMoreVoices.ts'
import { VOICES } from './spoken/voices.ts'

/** One sentence at one place of a ride. */
interface Row {
  ride: Ride
  block: string
  moment: CueMoment
  lead: number
  text: string
  right: boolean
  kind: string
}

/** A hundred and fifty-one sentences kept beside the design of the tool, for one ride. */
const REFERENCE: { ride: Ride; rows: (Omit<Row, 'ride' | 'lead'> & { leadCounts: number })[] } = JSON.parse(
  readFileSync(join(import.meta.dirname, 'spoken/spoken-numbers.json'), 'utf8'),
)
const RIDES = { evening: eveningRide(), levels: levelRide(), reference: REFERENCE.ride }

const rowsOf = (fixture: Readonly<Record<string, readonly Spoken[]>>): Row[] =>
  Object.entries(fixture).flatMap(([kind, groups]) =>
    groups.flatMap(({ ride = 'evening', block, moment = 'announce', lead = 4, right = [], wrong = [] }) =>
      [...right.map((text) => ({ text, right: true })), ...wrong.map((text) => ({ text, right: false }))].map((said) => ({
        ...said,
        ride: RIDES[ride],
        block,
        moment,
        lead,
        kind,
      })),
    ),
  )

const referenceRows = (): Row[] => REFERENCE.rows.map(({ leadCounts, ...row }) => ({ ...row, ride: REFERENCE.ride, lead: leadCounts }))

const blocksOf = (ride: Ride): Block[] =>
  ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => ('parts' in item ? item.parts : [item])))

/** The ride with one cue in it, and no other. */
function saying({ ride, block: id, moment, lead, text }: Row): Ride {
  const copy = structuredClone(ride)
  const block = blocksOf(copy).find((one) => one.id === id)!
  const cue: Cue = { id: 'c', moment, lead: 'seconds' in block.length ? { seconds: lead } : { counts: lead }, text }
  Object.assign(block, { cues: [cue] })
  return copy
}

const noticed = (ride: Ride): Finding | undefined => computeRide(ride).findings.find(({ rule }) => rule === 'cueNumbers')

/** Share of what is flagged that is wrong, and share of what is wrong that is flagged. */
function measured(rows: readonly Row[]) {
  const flagged = rows.filter((row) => noticed(saying(row)) !== undefined)
  const wrong = rows.filter(({ right }) => !right)
  const found = flagged.filter(({ right }) => !right)
  return {
    precision: found.length / flagged.length,
    recall: found.length / wrong.length,
    amiss: [...flagged.filter(({ right }) => right), ...wrong.filter((row) => !flagged.includes(row))].map(
      ({ text, block }) => `${block}: ${text}`,
    ),
  }
}

describe('the numbers of a sentence, told right from wrong', () => {
  it.each([
    ['the sentences the grammar was made with', rowsOf(SPOKEN), 0.99, 0.98],
    ['sentences it was tried on afterwards', rowsOf(FURTHER), 0.99, 0.97],
    ['others, for the ride of the reference', rowsOf(REFERENCE_RIDE), 0.99, 0.97],
    ['the sentences of the reference', referenceRows(), 0.98, 0.95],
    ['sentences by somebody who had not seen the grammar', rowsOf(FRESH), 0.99, 0.98],
    ['sentences in ten voices', rowsOf(VOICES), 0.99, 0.96],
    ['a stranger’s sentences', rowsOf(STRANGERS), 0.99, 0.99],
    ['another stranger’s', rowsOf(MORE_STRANGERS), 0.99, 0.98],
    ['forty more', rowsOf(FORTY), 0.99, 0.99],
    ['a brisk voice', rowsOf(BRISK), 0.99, 0.96],
    ['a warm voice', rowsOf(WARM), 0.99, 0.98],
    ['a calm voice', rowsOf(CALM), 0.99, 0.98],
    ['a breezy voice', rowsOf(BREEZY), 0.99, 0.98],
    ['a chatty voice', rowsOf(CHATTY), 0.99, 0.96],
    ['a clipped voice', rowsOf(CLIPPED), 0.99, 0.96],
    ['a class that was entered', rowsOf(ENTERED), 0.99, 0.99],
    ['siblings of what was misread in them', rowsOf(SIBLINGS), 0.99, 0.99],
  ])('in %s', (_, rows, precision, recall) => {
    const figures = measured(rows)
    expect(figures.precision, figures.amiss.join('\n')).toBeGreaterThanOrEqual(precision)
    expect(figures.recall, figures.amiss.join('\n')).toBeGreaterThanOrEqual(recall)
  })

  it('has sentences of every kind, right and wrong', () => {
    const rows = [...rowsOf(SPOKEN), ...rowsOf(FURTHER), ...rowsOf(REFERENCE_RIDE)]
    expect(rows.length).toBeGreaterThan(1100)
    const kinds = Object.keys(SPOKEN).filter((kind) => kind !== 'noClaim')
    for (const kind of kinds) {
      const own = rows.filter((row) => row.kind === kind)
      expect(own.filter(({ right }) => right).length, kind).toBeGreaterThan(9)
      expect(own.filter(({ right }) => !right).length, kind).toBeGreaterThan(9)
    }
    expect(rows.filter(({ kind }) => kind === 'noClaim').length).toBeGreaterThan(100)
  })
})

/** Words a repair may change: numbers, their units and articles, "on" and "off". */
const bare = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[½¼¾\d:./]+/g, ' ')
    .replace(
      /\b(?:a|an|and|of|the|zero|none|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|thirteen|fourteen|fifteen|sixteen|seventeen|eighteen|nineteen|twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety|hundred|half|halves|quarters?|third|thirds|fourth|fifth|eighth|first|second|turns?|seconds?|secs?|min|minutes?|twos|fours|eights|sixteens|on|off|full|whole|push(?:es)?|rounds?|phrases?|times|gears?|dozen|couple|pair|hours?)\b/g,
      ' ',
    )
    .match(/\p{L}+/gu)
    ?.join(' ') ?? ''

describe('a repair', () => {
  const wrong = [
    ...[SPOKEN, FURTHER, REFERENCE_RIDE, FRESH, VOICES, STRANGERS, MORE_STRANGERS, FORTY, BRISK, WARM, ENTERED, SIBLINGS].flatMap(rowsOf),
    ...referenceRows(),
  ].filter(({ right }) => !right)
  const repairs = wrong.flatMap((row) => {
    const ride = saying(row)
    return (noticed(ride)?.fixes ?? []).map(({ label: named, command }) => {
      const after = command.apply(ride)
      return { row, label: toldIn(named), after, text: blocksOf(after).flatMap(({ cues }) => cues)[0]!.text }
    })
  })

  it('is there for most of what is wrong', () => {
    expect(repairs.length / wrong.length).toBeGreaterThan(0.8)
  })

  it('leaves a sentence that is right', () => {
    for (const { row, after, text } of repairs) expect(noticed(after), `${row.text} → ${text}`).toBeUndefined()
  })

  it('changes the number and nothing else', () => {
    for (const { row, label, text } of repairs) {
      if (label.startsWith('Say')) expect(bare(text), `${row.text} → ${text}`).toBe(bare(row.text))
    }
  })

  it('leaves a sentence that says the same thing of the same things', () => {
    const meant = (text: string, { bike }: Ride) => claimsIn(text, bike.unit).map(({ meanings: [first] }) => first.about)
    for (const { row, label, text } of repairs) {
      if (label.startsWith('Say')) expect(meant(text, row.ride), `${row.text} → ${text}`).toEqual(meant(row.text, row.ride))
    }
  })

  const at = (block: string, text: string, more: Partial<Row> = {}): Row => ({
    ride: RIDES.evening,
    block,
    text,
    moment: 'announce',
    lead: 4,
    right: false,
    kind: '',
    ...more,
  })
  const inside = (lead: number): Partial<Row> => ({ moment: 'form', lead })

  const told: readonly [Row, string][] = [
    // The form of the number stays: words, figures, fractions, decimals.
    [at('rise', 'A quarter turn on, and rise.'), 'Half a turn on, and rise.'],
    [at('rise', '¾ turn on, up.'), '½ turn on, up.'],
    [at('rise', 'Add 1.5 turns.'), 'Add 0.5 turns.'],
    [at('breathe', 'Take 1 3/4 off.'), 'Take 1 1/4 off.'],
    [at('breathe', '-½ and breathe.'), '-1¼ and breathe.'],
    [at('long', 'Build to three turns over base.'), 'Build to two turns over base.'],
    [at('climb', 'Another half turn on.'), 'Another turn on.'],
    [at('climb', 'Quarter on, find it.'), 'One turn on, find it.'],
    [at('push1', '45 secs.'), '30 secs.'],
    [at('long', '1:30 of climbing.'), '2:00 of climbing.'],
    [at('push1', 'Twenty on, forty off.'), 'Thirty on, sixty off.'],
    // Its unit, article and noun agree with it.
    [at('push1', 'A minute of work.'), 'Thirty seconds of work.'],
    [at('push3', 'Half a minute, everything.'), 'Forty-five seconds, everything.'],
    [at('rest2', 'Two full minutes of nothing.'), 'One full minute of nothing.'],
    [at('rise', 'A one-minute climb.'), 'A thirty-second climb.'],
    [at('long', 'A ninety-second climb.'), 'A two-minute climb.'],
    [at('push1', 'You’re at a four out of ten.'), 'You’re at an eight out of ten.'],
    [at('lean', 'An eight count.'), 'A four count.'],
    [at('long', 'Two phrases left.', inside(32)), 'One phrase left.'],
    [at('rest2', 'Three pushes left.'), 'One push left.'],
    // Each of several numbers is put right by itself, at the moment it is said.
    [at('long', 'One minute down, thirty seconds to go.', inside(120)), 'One minute down, sixty seconds to go.'],
    [at('long', 'One minute down, one minute to go.', inside(80)), 'Eighty seconds down, forty seconds to go.'],
    [at('rest1', 'Two down, one to go.'), 'One down, two to go.'],
    [at('push3', 'Second and last.'), 'Third and last.'],
    [at('hop', 'Up for four, down for four.'), 'Up for eight, down for eight.'],
    [at('climb', 'It’s 6:45, we climb.'), 'It’s 6:34, we climb.'],
    [at('push3', '7/10 here.'), '9/10 here.'],
  ]
  it.each(told.map(([row, text]) => [row.text, text, row] as const))('of %j says %j', (_, text, row) => {
    const ride = saying(row)
    const found = noticed(ride)
    expect(
      found?.fixes.map(({ label }) => toldIn(label)),
      row.text,
    ).toEqual([`Say “${text}”`])
    expect(noticed(found!.fixes[0]!.command.apply(ride))).toBeUndefined()
  })

  const none: readonly [Row, string][] = [
    [at('push2', 'Last one.'), 'one left after it'],
    [at('push3', 'One more after this.'), 'none left'],
    [at('heavy', 'Somewhere between five and six turns.'), 'three to four'],
    [at('long', 'Halfway there.', inside(60)), '74% done'],
    [at('roll', 'Half a turn on and roll.'), 'all off'],
    [at('ready', 'Half a turn on, get ready.'), 'same resistance'],
    [at('climb', 'A quarter on, and another quarter.'), 'one turn on'],
    [at('push1', 'Two phrases, go.'), 'eighty counts'],
  ]
  it.each(none.map(([row, plan]) => [row.text, plan, row] as const))('of %j there is none, and the plan has %j', (_, plan, row) => {
    const found = noticed(saying(row))
    expect(toldIn(found!.text)).toContain(`where the plan is “${plan}”`)
    expect(found?.fixes).toEqual([])
  })
})

describe('the moment a number is said', () => {
  const form = (text: string, lead: number) => ({
    ride: RIDES.evening,
    block: 'long',
    moment: 'form' as const,
    lead,
    text,
    right: true,
    kind: '',
  })

  it('makes the same words right in one place and wrong in another', () => {
    expect(noticed(saying(form('Forty seconds to go.', 80)))).toBeUndefined()
    expect(noticed(saying(form('Forty seconds to go.', 160)))).toBeDefined()
    expect(noticed(saying(form('Halfway.', 120)))).toBeUndefined()
    expect(noticed(saying(form('Halfway.', 40)))).toBeDefined()
  })

  it('is later further on in the sentence', () => {
    const far = 'Long back, light hands, breathe from low down, shoulders away from the ears and the eyes far up the road'
    // Told first, a minute is left; told after nine seconds of form, fifty seconds are.
    const text = (first: boolean) => (first ? `Sixty seconds left. ${far}.` : `${far}. Fifty seconds left.`)
    const wrong = (words: string) => words.replace('Sixty', 'Forty').replace('Fifty', 'Seventy')
    for (const first of [true, false]) {
      expect(noticed(saying(form(text(first), 100)))).toBeUndefined()
      expect(noticed(saying(form(wrong(text(first)), 100)))).toBeDefined()
    }
  })

  it('before a change may be of what riders are in, or of what they are about to be in', () => {
    const said = (text: string) => noticed(saying({ ...form(text, 4), block: 'rest1', moment: 'announce' }))
    expect(said('Last eight.')).toBeUndefined()
    expect(said('Sixty seconds to go.')).toBeUndefined()
    expect(said('Thirty seconds to go.')).toBeDefined()
  })
})

describe('bars', () => {
  const said = (beatsPerBar: 3 | 4 | 6, text: string): Finding | undefined => {
    const ride = structuredClone(REFERENCE.ride)
    Object.assign(ride.sections[0]!.song!.grid!, { beatsPerBar })
    // Sixty counts.
    return noticed(saying({ ride, block: 'p3', moment: 'announce', lead: 4, text, right: true, kind: '' }))
  }

  it('are as many counts as the song has in one', () => {
    expect(said(4, 'Fifteen bars.')).toBeUndefined()
    expect(said(4, 'Twenty bars.')?.fixes.map(({ label }) => toldIn(label))).toEqual(['Say “Fifteen bars.”'])
    expect(said(3, 'Twenty bars.')).toBeUndefined()
    expect(said(3, 'Fifteen bars.')?.fixes.map(({ label }) => toldIn(label))).toEqual(['Say “Twenty bars.”'])
  })

  it('of six beats, which are counted in two ways, are left alone', () => {
    expect(said(6, 'Thirty bars.')).toBeUndefined()
  })
})
