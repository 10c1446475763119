import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { COMMON, RARER } from '#plan/link/format1/tradeWords.ts'
import { isSet, type Ride } from '#plan/model.ts'

const RIDES: Ride[] = ['twenty-minute-spark', 'ridge-and-return'].map((name) =>
  JSON.parse(readFileSync(`public/demo/${name}.ride.json`, 'utf8')),
)
const entries = [...COMMON, ...RARER]

describe('the words of a link', () => {
  it('fit the codes there are, each once', () => {
    expect(COMMON.length).toBeLessThanOrEqual(156)
    expect(RARER.length).toBeLessThanOrEqual(512)
    expect(new Set(entries).size).toBe(entries.length)
    for (const entry of entries) expect(entry).toMatch(/^[a-z]+(?:[ '-][a-z]+)*$/)
  })

  it('are the trade’s: no name and no sentence of the demo rides is among them', () => {
    const plain = (text: string) => text.toLowerCase().trim()
    const blocks = RIDES.flatMap(({ sections }) =>
      sections.flatMap((section) => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item]))),
    )
    const sentences = blocks.flatMap(({ cues }) => cues.flatMap(({ text }) => text.split(/[.!?]\s*/)))
    const names = RIDES.flatMap(({ title, leaders, sections, bike }) => [
      title,
      bike.name,
      ...leaders.flatMap(({ name }) => [name, ...name.split(/[ -]/)]),
      ...sections.flatMap(({ song }) => (song ? [song.title, song.artist ?? ''] : [])),
    ])
    for (const name of names) expect(entries).not.toContain(plain(name))
    for (const sentence of sentences.filter((text) => text.includes(' '))) expect(entries).not.toContain(plain(sentence))
  })
})
