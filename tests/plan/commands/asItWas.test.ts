import fc from 'fast-check'
import { expect, it } from 'vitest'
import type { Ride } from '#plan/model.ts'
import { sayReport } from '#tests/engine/asItWas/sayReport.ts'
import { arbitraryRecipes, commandOf } from '#tests/support/arbitraryCommand.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'

const linesOf = (ride: Ride): string[] => sayReport(ride, new Set()).trim().split('\n')

// What each kind of command changes, kept as text: whether it is right is the other tests' business; `-u` keeps the new text
// once it was read. The same commands every time, whatever the seed of a run.
it('commands change what they did', async () => {
  const recipes = fc.sample(arbitraryRecipes(1), { seed: 7, numRuns: 260 }).map(([recipe]) => recipe!)
  const done = recipes.map((recipe, i) => {
    const ride = plausibleRide((i % 5) + 1)
    const command = commandOf(recipe, ride, countedIds('new-'))
    const [before, after] = [linesOf(ride), linesOf(command.apply(ride))]
    const gone = before.filter((line) => !after.includes(line)).length
    const come = after.filter((line) => !before.includes(line))
    return [`${told(command.label)} (${gone} lines gone, ${come.length} come)`, ...come.slice(0, 4).map((line) => `  ${line}`)].join('\n')
  })
  await expect(`${done.join('\n')}\n`).toMatchFileSnapshot('commands.txt')
})
