import { describe, expect, it } from 'vitest'
import { rideCaptions } from '#app/exports/captionsOf.ts'
import { csvOf } from '#app/exports/csvOf.ts'
import { listingOf } from '#app/exports/listingOf.ts'
import { computeRide } from '#engine/computeRide.ts'
import { inSpokenOrder, linesByBlock } from '#engine/cues/spokenOrder.ts'
import { spokenCues } from '#engine/rehearsal/spokenCues.ts'
import { sheetContents } from '#features/sheet/contents/sheetContents.ts'
import { writeText } from '#formats/listing/writeText.ts'
import { writeWebVtt } from '#formats/webvtt/writeWebVtt.ts'
import { startLead } from '#plan/cueStart.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'

const cue = (id: string, moment: Cue['moment'], counts: number, text: string): Cue => ({ id, moment, lead: { counts }, text })

/** Written in an order that is neither theirs in time nor that of their leads. */
const CUES: Cue[] = [
  cue('late', 'form', 16, 'Sixth, shoulders down.'),
  { id: 'start', moment: 'story', lead: startLead('counts'), text: 'Fourth, a story.' },
  cue('call', 'announce', 8, 'Second, half turn on.'),
  cue('middle', 'form', 120, 'Fifth, long back.'),
  cue('preview', 'preview', 32, 'First, a hill comes.'),
  cue('go', 'action', 0, 'Third, go.'),
]
const IN_ORDER = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth']

const ride = (cues: Cue[] = CUES): Ride => ({
  ...smallRide(),
  sections: [
    aSection('s', {
      song: aSong('tune'),
      blocks: [aBlock('a', { length: { counts: 128 } }), aBlock('b', { length: { counts: 256 }, cues })],
    }),
  ],
})
/** The ordinals in a text, in the order they stand. */
const ordinals = (text: string): string[] => text.match(/First|Second|Third|Fourth|Fifth|Sixth/g) ?? []

describe('the words of a block stand in the order they are spoken', () => {
  const report = computeRide(ride())

  it('on the ride clock', () => {
    expect(report.cues.lines.map(({ cue: { text } }) => ordinals(text)[0])).toEqual(IN_ORDER)
    expect(inSpokenOrder(CUES, linesByBlock(report)[1]!).flatMap(({ text }) => ordinals(text))).toEqual(IN_ORDER)
  })

  it('on every sheet, whose rows are the same', () => {
    const { bands } = sheetContents(ride(), report, { date: '1', songClock: 'left' })
    expect(ordinals(bands[0]!.rows[1]!.words)).toEqual(IN_ORDER)
    expect(ordinals(bands[0]!.rows[1]!.shortWords)).toEqual(IN_ORDER)
  })

  it('in the sheet as text and as tables, in CSV and in captions', () => {
    expect(ordinals(writeText(listingOf(ride(), report, '1')))).toEqual(IN_ORDER)
    expect(ordinals(csvOf(ride(), report))).toEqual(IN_ORDER)
    expect(ordinals(writeWebVtt(rideCaptions(ride(), report)))).toEqual(IN_ORDER)
  })

  it('in the rehearsal', () => {
    expect(spokenCues({ ride: ride(), report }, 180, 1).flatMap(({ text }) => ordinals(text))).toEqual(IN_ORDER)
  })

  it('with the longer one last of those that start together, and of equally long ones the one written last', () => {
    const together = (texts: readonly string[]) =>
      texts.map((text, i): Cue => ({ id: `${i}`, moment: 'form', lead: startLead('counts'), text }))
    const texts = ['Second is a longer one than that', 'Third is written after the second one', 'First short']
    const both = computeRide(ride(together(texts)))
    expect(new Set(both.cues.lines.map(({ from }) => from)).size).toBe(1)
    const order = ['First', 'Second', 'Third']
    expect(both.cues.lines.flatMap(({ cue: { text } }) => ordinals(text.split(' ')[0]!))).toEqual(order)
    expect(writeWebVtt(rideCaptions(ride(together(texts)), both)).match(/^(?:First|Second|Third)/gm)).toEqual(order)
  })

  it('with what has no words, and so is not spoken, at the end', () => {
    const silent = cue('silent', 'form', 60, '')
    const cues = [silent, ...CUES]
    const order = inSpokenOrder(cues, computeRide(ride(cues)).cues.lines)
    expect(order.at(-1)).toBe(silent)
    expect(order).toHaveLength(7)
  })
})
