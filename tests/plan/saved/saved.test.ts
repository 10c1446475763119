import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { parseRide } from '#plan/document/parseRide.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { shareable } from '#plan/link/shareable.ts'
import { CURRENT_SCHEMA, isSet, type Ride } from '#plan/model.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { told } from '#tests/support/told.ts'

/**
 * One real file and link of every version there has been, and of every field that came to one. They are
 * never written anew: what opened once opens for ever. A new document version or link format adds its own pair.
 */
const FOLDER = 'tests/plan/saved'
const files = readdirSync(FOLDER).filter((name) => name.endsWith('.ride.json'))
const read = (name: string) => readFileSync(`${FOLDER}/${name}`, 'utf8')

const opened = (parsed: ReturnType<typeof parseRide>): Ride => {
  if (!parsed.ok) throw new Error(parsed.problems.map(({ text }) => told(text)).join('\n'))
  return parsed.ride
}

describe.each(files)('%s', (name) => {
  const ride = opened(parseRide(JSON.parse(read(name))))
  const link = read(name.replace('.ride.json', '.link.txt'))

  it('opens as a ride of today', () => {
    expect(ride.schema).toBe(CURRENT_SCHEMA)
  })

  it('opens from its link as the same ride', () => {
    expect(opened(decodeLink(link))).toStrictEqual(shareable(ride))
  })

  it('is written to the same link as it was: what the format gained changes no ride without it', () => {
    expect(encodeLink(ride)).toBe(link.trim().split('#').at(-1))
  })

  it('has kept what was dear: every section, block and cue', () => {
    const items = ride.sections.flatMap((section) => section.blocks)
    const blocks = items.flatMap((item) => (isSet(item) ? item.parts : [item]))
    const inFile = (key: string) => read(name).split(`"${key}":`).length - 1
    expect(ride.sections).toHaveLength(inFile('leadInSeconds'))
    expect(items.filter(isSet)).toHaveLength(inFile('rounds'))
    expect(blocks).toHaveLength(inFile('terrain'))
    expect(blocks.flatMap(({ cues }) => cues)).toHaveLength(inFile('moment'))
  })
})

it('between them the fixtures hold every field a ride can have, so that no place in a link goes untested', () => {
  const names = new Set<string>()
  const collect = (schema: unknown): void => {
    if (typeof schema !== 'object' || schema === null) return
    if ('properties' in schema) for (const name of Object.keys(schema.properties as object)) names.add(name)
    for (const inner of Object.values(schema)) collect(inner)
  }
  collect(JSON.parse(readFileSync('public/ride.schema.json', 'utf8')))
  const held = files.map(read).join('\n')
  expect(names.size).toBeGreaterThan(80)
  expect([...names].filter((name) => !held.includes(`"${name}":`))).toEqual([])
})
