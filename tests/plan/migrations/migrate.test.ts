import { existsSync, readdirSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { migrate } from '#plan/migrations/migrate.ts'
import type { Migration } from '#plan/migrations/migration.ts'
import { MIGRATIONS } from '#plan/migrations/migrations.ts'
import { CURRENT_SCHEMA } from '#plan/model.ts'
import { say } from '#words/said.ts'

/** Three invented steps: a field renamed, a unit changed, a list made of one value. */
const STEPS: Migration[] = [
  { from: 1, apply: ({ name, ...rest }) => ({ ...rest, title: name }) },
  { from: 2, apply: ({ minutes, ...rest }) => ({ ...rest, seconds: Number(minutes) * 60 }) },
  { from: 3, apply: ({ leader, ...rest }) => ({ ...rest, leaders: [leader] }) },
]

describe('a document of an older version', () => {
  it('goes through every step from its own version on, oldest first', () => {
    const first = { schema: 1, name: 'Hill', minutes: 45, leader: 'Ana' }
    const third = { schema: 3, title: 'Hill', seconds: 2700, leader: 'Ana' }
    const document = { schema: 4, title: 'Hill', seconds: 2700, leaders: ['Ana'] }
    expect(migrate(first, STEPS, 4)).toEqual({ ok: true, document })
    expect(migrate(third, STEPS, 4)).toEqual({ ok: true, document })
    expect(migrate(document, STEPS, 4)).toEqual({ ok: true, document })
  })

  it('finds its step whatever the order of the list, and stops at the version asked for', () => {
    const first = { schema: 1, name: 'Hill', minutes: 45, leader: 'Ana' }
    expect(migrate(first, STEPS.toReversed(), 3)).toEqual({
      ok: true,
      document: { schema: 3, title: 'Hill', seconds: 2700, leader: 'Ana' },
    })
  })

  it('is itself left as it was', () => {
    const first = Object.freeze({ schema: 1, name: 'Hill', minutes: 45, leader: 'Ana' })
    migrate(first, STEPS, 4)
    expect(first).toEqual({ schema: 1, name: 'Hill', minutes: 45, leader: 'Ana' })
  })

  it('gets a sentence where a step fails on it', () => {
    const failing: Migration = {
      from: 2,
      apply: () => {
        throw new TypeError('minutes of undefined')
      },
    }
    expect(migrate({ schema: 1, name: 'Hill' }, [STEPS[0]!, failing], 3)).toEqual({
      ok: false,
      text: say('documents.cannotMigrate', { schema: 1 }),
    })
  })

  it('gets no further than the steps there are: a gap is our mistake and throws', () => {
    expect(() => migrate({ schema: 1 }, [STEPS[1]!], 3)).toThrow('no migration from document version 1')
  })
})

describe('the real steps', () => {
  it('lead from every past version to the current one, in order', () => {
    expect(MIGRATIONS.map(({ from }) => from)).toEqual(Array.from({ length: CURRENT_SCHEMA - 1 }, (_, i) => i + 1))
  })

  it('have each a test of their own', () => {
    for (const { from } of MIGRATIONS) expect(existsSync(`tests/plan/migrations/from${from}.test.ts`)).toBe(true)
  })

  it('are kept honest by a saved file and link of every version there has been', () => {
    const saved = readdirSync('tests/plan/saved')
    for (let version = 1; version <= CURRENT_SCHEMA; version++) {
      expect(saved).toContain(`version-${version}.ride.json`)
      expect(saved).toContain(`version-${version}.link.txt`)
    }
  })
})
