import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Command } from '#plan/commands/command.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { arbitraryRecipes, commandOf } from '#tests/support/arbitraryCommand.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { frozen } from '#tests/support/frozen.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

describe('any command on any ride', () => {
  it('leaves a ride that opens again, and the one it was given as it was', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryRecipes(), (start, recipes) => {
        const newId = countedIds('new-')
        let ride = frozen(start)
        for (const recipe of recipes) {
          ride = frozen(commandOf(recipe, ride, newId).apply(ride))
          expect(parseRide(ride)).toEqual({ ok: true, ride })
        }
      }),
      { numRuns: 150 },
    )
  })

  it('does the same thing whenever it is applied', () => {
    fc.assert(
      fc.property(arbitraryRide(), arbitraryRecipes(1), (start, [recipe]) => {
        const command: Command = commandOf(recipe!, start, countedIds('new-'))
        expect(command.apply(start)).toEqual(command.apply(start))
        expect(told(command.label)).toMatch(/^[A-Z][a-z]+ .+/)
      }),
      { numRuns: 150 },
    )
  })

  it('keeps the sections it does not touch', () => {
    fc.assert(
      fc.property(arbitraryRide({ sections: 5 }), arbitraryRecipes(1), (start, [recipe]) => {
        const after = commandOf(recipe!, start, countedIds('new-')).apply(start)
        for (const section of after.sections) {
          const before = start.sections.find(({ id }) => id === section.id)
          if (before && before !== section) expect(section, 'a section that says the same is the same object').not.toEqual(before)
        }
      }),
      { numRuns: 300 },
    )
  })
})
