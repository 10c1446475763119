import { describe, expect, it } from 'vitest'
import { completeCue, type TradeCue } from '#engine/cues/completion/completeCue.ts'
import { type SaidCue, saidIn } from '#engine/cues/completion/saidIn.ts'
import type { Cue } from '#plan/model.ts'
import { aBlock, aSection, aSet, smallRide } from '#tests/support/smallRide.ts'

const here = aBlock('here', { terrain: 'hill', move: { name: 'press', counts: 8 } })
const said = (text: string, change: Partial<SaidCue> = {}): SaidCue => ({
  ...{ text, moment: 'form', language: 'en', rideId: 'this', blockId: 'b', terrain: 'flat', posture: 'seated' },
  ...change,
})
const offered = (typed: string, cues: readonly SaidCue[], trade: readonly TradeCue[] = [], callsKnob = (_: string) => false) =>
  completeCue(typed, here, cues, trade, callsKnob).map(({ text }) => text)

describe('what typing is completed to', () => {
  it('has every typed word as the beginning of one of its own, in their order, whatever the capitals and accents', () => {
    const cues = [said('Heavy legs, light hands.'), said('Hands light.'), said('Über den Berg.')]
    expect(offered('li ha', cues)).toEqual(['Heavy legs, light hands.'])
    expect(offered('uber', cues)).toEqual(['Über den Berg.'])
    expect(offered('ight', cues)).toEqual([])
  })

  it('is each text once, and none that the block says already', () => {
    const own: Cue = { id: 'c', moment: 'form', lead: { counts: 0 }, text: 'Long back!' }
    const cues = [said('Long back.'), said('long back'), said('Long spine.'), said('LONG SPINE')]
    expect(completeCue('long', { ...here, cues: [own] }, cues, [], () => false).map(({ text }) => text)).toEqual(['Long spine.'])
  })

  it('puts first what was said oftener, later, at the same terrain, and with the same move', () => {
    expect(offered('', [said('Once.'), said('Often.'), said('Often.'), said('Often.')])[0]).toBe('Often.')
    expect(offered('', [said('Old.', { rideId: 'x' }), said('Lately.', { rideId: 'y' })].toReversed())[0]).toBe('Lately.')
    expect(offered('', [said('Flat.'), said('Hill.', { terrain: 'hill' })])[0]).toBe('Hill.')
    expect(offered('', [said('Hill.', { terrain: 'hill' }), said('Press.', { move: 'press' })])[0]).toBe('Press.')
  })

  it('puts a text that begins so before one that has it inside', () => {
    expect(offered('light', [said('Hands light.', { terrain: 'hill' }), said('Light hands.')])[0]).toBe('Light hands.')
  })

  it('puts the trade after what was said, and the block’s own call before the knob of another', () => {
    const trade: TradeCue[] = [
      { text: 'Add a quarter.', moment: 'announce', fits: 8 },
      { text: 'Add some calm.', moment: 'form', fits: 1 },
    ]
    const cues = [said('Add half a turn.', { terrain: 'hill' }), said('Add a smile.')]
    const callsKnob = (text: string) => /turn|quarter/.test(text)
    expect(offered('add', cues, trade, callsKnob)).toEqual(['Add a quarter.', 'Add a smile.', 'Add some calm.', 'Add half a turn.'])
  })
})

describe('what was said in a ride', () => {
  it('is every cue with words, of sets too, and where', () => {
    const cue = (text: string): Cue => ({ id: `c${text.length}`, moment: 'announce', lead: { counts: 8 }, text })
    const ride = {
      ...smallRide(),
      language: 'de' as const,
      sections: [
        aSection('s', { blocks: [aBlock('a', { cues: [cue(' Berg. '), cue('')] }), aSet('set', [aBlock('p', { cues: [cue('Los!')] })])] }),
      ],
    }
    expect(saidIn(ride).map(({ text, blockId, language }) => [text, blockId, language])).toEqual([
      ['Berg.', 'a', 'de'],
      ['Los!', 'p', 'de'],
    ])
  })
})
