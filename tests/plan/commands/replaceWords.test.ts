import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { refusedTexts, replaceWords } from '#plan/commands/replaceWords.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Cue, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { findWords, occurrences, type Search } from '#plan/texts/findWords.ts'
import { mapTexts } from '#plan/texts/ownTexts.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { aBlock, aSection, aSong, smallRide } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const looking = (words: string, how: Partial<Search> = {}): Search => ({ words, matchCase: false, wholeWords: false, ...how })
const everywhere = (ride: Ride, search: Search, by: string): Parameters<typeof replaceWords>[1] => ({
  search,
  by,
  hits: new Set(findWords(ride, search).map(({ id }) => id)),
})
const cue = (id: string, text: string, moment: Cue['moment'] = 'form'): Cue => ({ id, moment, lead: { counts: 8 }, text })

const wordy: Ride = frozen({
  ...smallRide(),
  title: 'Hill day',
  aim: 'hills',
  privateNotes: 'hill keys at the desk',
  standIn: { room: 'the hill room' },
  avoidMoves: ['hill dips'],
  sections: [
    aSection('s', {
      title: 'Hill song',
      notes: 'hill notes',
      song: aSong('tune', { title: 'hill tune', marks: [{ count: 8, label: 'hill drop' }] }),
      blocks: [
        aBlock('a', {
          label: 'hill',
          feel: 'a hill underfoot',
          easier: { text: 'less hill' },
          move: { name: 'hill press', counts: 8 },
          notes: 'no hill',
          cues: [cue('c1', 'Hill next. One more hill.'), cue('c2', 'Uphill now.')],
        }),
        aBlock('b', { cues: [cue('c3', 'Hill.')] }),
      ],
    }),
  ],
})

describe('where words are found', () => {
  it('is in every text of somebody’s own, in the order of the ride, and not in what songs are called', () => {
    const kinds = findWords(wordy, looking('hill')).map(({ place }) => place.kind)
    expect(new Set(kinds)).toEqual(
      new Set([
        ...['title', 'aim', 'standIn', 'privateNotes', 'avoidMove', 'section', 'mark', 'sectionNotes', 'block', 'cue'],
        ...['feel', 'easier', 'move', 'blockNotes'],
      ]),
    )
    expect(kinds.filter((kind) => kind === 'cue')).toHaveLength(4)
  })

  it('is told apart by capitals and by whole words', () => {
    const texts = (how: Partial<Search>) => occurrences('Hill, uphill, hills. A hill', looking('hill', how)).map(({ from }) => from)
    expect(texts({})).toEqual([0, 8, 14, 23])
    expect(texts({ wholeWords: true })).toEqual([0, 23])
    expect(texts({ matchCase: true })).toEqual([8, 14, 23])
    expect(occurrences('größer', looking('größe', { wholeWords: true }))).toEqual([])
    expect(occurrences('a+b (c)', looking('+b (')).map(({ from }) => from)).toEqual([1])
    expect(occurrences('anything', looking('  '))).toEqual([])
  })
})

describe('replaceWords', () => {
  it('puts words in the place of others as one change, keeps capitals, and says where', () => {
    const command = replaceWords(wordy, everywhere(wordy, looking('hill', { wholeWords: true }), 'climb'))
    const next = command.apply(wordy)
    expect(findBlock(next, 'a')!.block.cues.map(({ text }) => text)).toEqual(['Climb next. One more climb.', 'Uphill now.'])
    expect(next.title).toBe('Climb day')
    expect(next.sections[0]!.song!.title).toBe('hill tune')
    expect(told(command.label)).toBe('Replaced “hill” with “climb” in 15 places')
  })

  it('does it only at the hits that are meant', () => {
    const search = looking('hill')
    const [second] = findWords(wordy, search).filter(({ place, from }) => place.cueId === 'c1' && from > 0)
    const next = replaceWords(wordy, { search, by: 'climb', hits: new Set([second!.id]) }).apply(wordy)
    expect(findBlock(next, 'a')!.block.cues[0]!.text).toBe('Hill next. One more climb.')
    expect(next.title).toBe('Hill day')
    expect(findBlock(next, 'b')!.block).toBe(findBlock(wordy, 'b')!.block)
  })

  it('takes away what is left empty: a cue, a label, an option, and never a count-in', () => {
    const ride: Ride = {
      ...wordy,
      sections: [
        aSection('s', {
          song: aSong('tune'),
          blocks: [aBlock('b', { label: 'Hill', easier: { text: 'hill' }, cues: [cue('c3', 'Hill'), cue('c4', 'Hill', 'countIn')] })],
        }),
      ],
    }
    const { block } = findBlock(replaceWords(ride, everywhere(ride, looking('hill'), '')).apply(ride), 'b')!
    expect(block.cues.map(({ id, text }) => [id, text])).toEqual([['c4', '']])
    expect(block).not.toHaveProperty('label')
    expect(block).not.toHaveProperty('easier')
  })

  it('leaves the ride alone where a text would get too long, or a move nameless, and says which', () => {
    const long = everywhere(wordy, looking('hill', { matchCase: true }), 'h'.repeat(130))
    expect(refusedTexts(wordy, long).map(({ place, problem }) => `${place.kind} ${problem}`)).toContain('block long')
    expect(replaceWords(wordy, long).apply(wordy)).toBe(wordy)
    const nameless = everywhere(wordy, looking('hill press'), '')
    expect(refusedTexts(wordy, nameless)).toEqual([expect.objectContaining({ problem: 'empty' })])
    expect(replaceWords(wordy, nameless).apply(wordy)).toBe(wordy)
  })
})

describe('on any ride', () => {
  const letters = fc.constantFrom('a', 'e', 'Th', ' ', 'zz')

  it('a look changes nothing', () => {
    fc.assert(fc.property(arbitraryRide(), (ride) => void expect(mapTexts(frozen(ride), (text) => text)).toBe(ride)))
  })

  it('a replacement leaves a ride that opens, without the words, and touches nothing but its texts', () => {
    fc.assert(
      fc.property(arbitraryRide(), letters, fc.boolean(), (start, words, wholeWords) => {
        const ride = frozen(start)
        const search = looking(words, { matchCase: true, wholeWords })
        const next = replaceWords(ride, everywhere(ride, search, '#')).apply(ride)
        expect(parseRide(next)).toEqual({ ok: true, ride: next })
        // A word may begin where another was taken out, so only what is no whole word is surely gone.
        if (!wholeWords) expect(findWords(next, search)).toEqual([])
        expect(mapTexts(next, () => '-')).toEqual(mapTexts(ride, () => '-'))
        for (const { place, text, from, to } of findWords(ride, search)) expect(text.slice(from, to), place.key).toBe(words)
      }),
    )
  })

  it('no hits, no change', () => {
    fc.assert(
      fc.property(arbitraryRide(), letters, (ride, words) => {
        expect(replaceWords(ride, { search: looking(words), by: '#', hits: new Set() }).apply(ride)).toBe(ride)
      }),
    )
  })
})
