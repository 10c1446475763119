import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { cueOffers } from '#features/drafting/panel/block/cueOffers.ts'
import type { Block, Cue, Ride } from '#plan/model.ts'
import { aBlock, aSection, aSong, inSeconds, smallRide } from '#tests/support/smallRide.ts'

const BANK = ['Light hands.', 'Long back.', 'Drop the shoulders.']
const rideOf = (blocks: Block[], counted = true): Ride => ({
  ...smallRide(),
  sections: [aSection('s', { blocks, ...(counted && { song: aSong('tune') }) })],
})
const offers = (ride: Ride, id: string, turn = 0) => cueOffers(ride, computeRide(ride), id, BANK, turn)
const add: Block['resistance'] = { kind: 'change', mode: 'exact', steps: 3 }
const cue = (moment: Cue['moment'], text: string): Cue => ({ id: `${moment}-cue`, moment, lead: { counts: 8 }, text })

describe('the call that is offered', () => {
  it('is in the ledger’s words where nothing is said, an eight ahead', () => {
    const ride = rideOf([aBlock('a'), aBlock('b', { resistance: add, posture: 'standing' })])
    expect(offers(ride, 'b').call).toEqual({ cue: { moment: 'announce', lead: { counts: 8 }, text: 'Three quarters on. Up.' } })
    expect(offers(ride, 'a').call).toBeUndefined()
  })

  it('goes before words that turn no knob, in their place', () => {
    const ride = rideOf([aBlock('a'), aBlock('b', { resistance: add, cues: [cue('announce', 'Here comes the hill.')] })])
    expect(offers(ride, 'b').call).toMatchObject({ cue: { text: 'Three quarters on. Here comes the hill.' }, replaces: 'announce-cue' })
  })

  it('is none where the words say it, rightly or not', () => {
    for (const text of ['Three quarters on.', 'Half a turn on, hill one.', 'Up to two and a half turns.']) {
      expect(offers(rideOf([aBlock('a'), aBlock('b', { resistance: add, cues: [cue('announce', text)] })]), 'b').call).toBeUndefined()
    }
  })

  it('is in seconds without a song', () => {
    const ride = rideOf([aBlock('a', inSeconds(60)), aBlock('b', { ...inSeconds(60), resistance: add })], false)
    expect(offers(ride, 'b').call?.cue.lead).toEqual({ seconds: 8 })
  })
})

describe('a count-in', () => {
  it('is offered once, on the beat, and not for the very start', () => {
    const ride = rideOf([aBlock('a'), aBlock('b'), aBlock('c', { cues: [cue('countIn', '')] })])
    expect(offers(ride, 'b').countIn?.cue).toMatchObject({ moment: 'countIn', count: 4 })
    expect(offers(ride, 'a').countIn).toBeUndefined()
    expect(offers(ride, 'c').countIn).toBeUndefined()
    expect(offers(rideOf([aBlock('a', inSeconds(9)), aBlock('b', inSeconds(9))], false), 'b').countIn).toBeUndefined()
  })
})

describe('a form point', () => {
  const long = { length: { counts: 128 } }

  it('is offered on longer holds, another for each, going round the bank', () => {
    const ride = rideOf([aBlock('a', long), aBlock('short'), aBlock('b', long), aBlock('c', long)])
    expect(['a', 'short', 'b', 'c'].map((id) => offers(ride, id).form?.cue.text)).toEqual([BANK[0], undefined, BANK[1], BANK[2]])
    expect([1, 2, 3].map((turn) => offers(ride, 'b', turn).form?.cue.text)).toEqual([BANK[2], BANK[0], BANK[1]])
  })

  it('is none where one is said, or the bank is empty', () => {
    const ride = rideOf([aBlock('a', { ...long, cues: [cue('form', 'Breathe.')] })])
    expect(offers(ride, 'a').form).toBeUndefined()
    expect(cueOffers(rideOf([aBlock('a', long)]), computeRide(rideOf([aBlock('a', long)])), 'a', []).form).toBeUndefined()
  })
})

describe('a story', () => {
  it('is always offered, and says where riders cannot listen', () => {
    const easy = aBlock('a', { length: { counts: 128 }, effort: { from: 2, to: 2 } })
    expect(offers(rideOf([easy]), 'a').story).toMatchObject({ from: 0, to: 64 })
    expect(offers(rideOf([{ ...easy, cues: [cue('story', 'Once.')] }]), 'a').story).toBeDefined()
    const hard = aBlock('b', { length: { counts: 128 }, effort: { from: 9, to: 9 } })
    expect(offers(rideOf([hard, { ...hard, id: 'c' }]), 'c').story).toMatchObject({ lacks: 'calm' })
  })
})

it('offers nothing for a block that is not there', () => {
  expect(offers(smallRide(), 'nobody')).toEqual({})
})
