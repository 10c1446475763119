import { describe, expect, it } from 'vitest'
import { readRepositoryFile, repositoryFiles } from '#tests/support/repositoryFiles.ts'
import { type Mutant, mutantsOf } from './mutantsOf.ts'
import { overlap, planted, SWITCH } from './planted.ts'

const changesOf = (code: string) => mutantsOf('code.ts', code).map(({ was, becomes }) => `${was} → ${becomes}`)

describe('mistakes', () => {
  it.each([
    ['a < b', ['a < b → a <= b', 'a < b → a > b']],
    ['a === b', ['a === b → a !== b']],
    ['a + b', ['a + b → a - b']],
    ['a ?? 5', ['a ?? 5 → a', '5 → 6', '5 → 4']],
    ['a || !b', ['a || !b → a && !b', '!b → b']],
    ['a ? b : c', ['a → !(a)']],
    ['0.8', ['0.8 → 1']],
    ['true', ['true → false']],
    ['Math.min(a, b)', ['Math.min(a, b) → Math.max(a, b)']],
    ['list.filter(f).some(g)', ['list.filter(f).some(g) → list.filter(f).every(g)', 'list.filter(f) → list']],
    ['list.slice(a)', ['list.slice(a) → list.slice((a) + 1)']],
    ['list.slice(1)', ['1 → 2', '1 → 0']],
    ['a += i++', ['a += i++ → a -= i++', 'i++ → i--']],
    [`{ kind: 'keep' }`, [`'keep' → 'another'`]],
    [`['keep', 'all']`, [`'keep' → 'all'`, `'all' → 'keep'`]],
  ])('of %s', (code, changes) => {
    expect(changesOf(`const x = ${code}`)).toEqual(changes)
  })

  it('leave statements out: calls, assignments, and ways out of a function', () => {
    expect(changesOf('function f() { if (a) return 7; b(); c = d }')).toEqual([
      'a → !(a)',
      'if (a) return 7; → ',
      '7 → 8',
      '7 → 6',
      'b(); → ',
      'c = d → ',
    ])
  })

  it('leave alone what does nothing, and what people read', () => {
    const code = [
      `'use strict'`,
      `import { a } from './a.ts'`,
      '/** 1 < 2 */',
      `type T = 1 | 'two' // true`,
      `interface I { three: 3 }`,
      `const text = 'Two words' + \`in \${b} sentences\``,
      'const named = { true: b, 4: b }',
      'const chained = b?.min(c).max(d)',
    ]
    expect(changesOf(code.join('\n'))).toEqual([])
  })
})

describe('planted', () => {
  const code = `export function f(n: number): string {\n  if (n < 0) return 'below'\n  return n === 3 ? 'three' : 'other'\n}\n`
  const mutants = mutantsOf('f.ts', code)
  const apart = mutants.filter((mutant, i) => !mutants.slice(0, i).some((other) => overlap(mutant, other)))

  it('are asleep until one is switched on', async () => {
    const all = apart.map((mutant, i) => ({ ...mutant, id: i + 1 }))
    const module = `data:text/javascript,${encodeURIComponent(planted(code, all).replace(/: number|: string/g, ''))}`
    const { f } = (await import(/* @vite-ignore */ module)) as { f: (n: number) => string }
    const answers = (active: number) => {
      Object.assign(globalThis, { [SWITCH]: (id: number) => id === active })
      return [-1, 0, 3, 4].map(f)
    }
    expect(answers(0)).toEqual(['below', 'other', 'three', 'other'])
    for (const { id } of all) expect(answers(id), apart[id - 1]!.was).not.toEqual(answers(0))
  })

  it.each([
    ['a row after one without a semicolon', 'let sum = n\n  sum += 1\n  return sum', 3],
    ['what an else belongs to', 'const out = []\n  if (n > 3) out.push(1)\n  else out.push(2)\n  return out[0]', 2],
  ])('leave the code around them as it was: %s', async (_, body, answer) => {
    const text = `export function f(n) {\n  ${body}\n}`
    Object.assign(globalThis, { [SWITCH]: () => false })
    for (const [i, mutant] of mutantsOf('f.ts', text).entries()) {
      const module = `data:text/javascript,${encodeURIComponent(planted(text, [{ ...mutant, id: i + 1 }]))}`
      const { f } = (await import(/* @vite-ignore */ module)) as { f: (n: number) => unknown }
      expect(f(2), mutant.was).toBe(answer)
    }
  })

  it('leave every file of the pure folders one that can be parsed', () => {
    const files = ['src/engine', 'src/plan', 'src/formats'].flatMap((folder) => repositoryFiles(folder))
    for (const path of files.filter((_, i) => i % 40 === 0)) {
      const text = readRepositoryFile(path)
      for (const parity of [0, 1]) {
        const taken: Mutant[] = []
        for (const [i, mutant] of mutantsOf(path, text).entries()) {
          if (i % 2 === parity && !taken.some((other) => overlap(mutant, other))) taken.push(mutant)
        }
        const sown = planted(text, taken.map((mutant, i) => ({ ...mutant, id: i + 1 }))) // biome-ignore format: one row
        expect(() => mutantsOf(path, sown), path).not.toThrow()
      }
    }
  })
})
