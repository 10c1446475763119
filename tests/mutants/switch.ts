import { appendFileSync } from 'node:fs'
import process from 'node:process'
import { afterAll, expect } from 'vitest'
import { SWITCH } from './planted.ts'

/** The mistake that is made in this run; none while it is only noted which of them each file of tests comes by. */
const active = Number(process.env.MUTANT ?? 0)
const notes = process.env.MUTANT_NOTES

const seen = new Set<number>()
Object.assign(globalThis, {
  [SWITCH]: notes === undefined ? (id: number) => id === active : (id: number) => seen.add(id).has(0),
})

if (notes !== undefined) {
  const from = performance.now()
  afterAll(() => {
    const note = { file: expect.getState().testPath, seen: [...seen], milliseconds: performance.now() - from }
    appendFileSync(notes, `${JSON.stringify(note)}\n`)
  })
}
