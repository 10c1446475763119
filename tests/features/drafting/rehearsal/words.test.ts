import { describe, expect, it } from 'vitest'
import { ledClass } from '#engine/leading/ledClass.ts'
import { stateOf } from '#engine/leading/stateOf.ts'
import { rehearsalView } from '#features/drafting/rehearsal/rehearsalView.ts'
import { addCues } from '#plan/commands/addCues.ts'
import { leadRide, logOf, planOf } from '#tests/support/leading.ts'

describe('the words of the bar', () => {
  const ride = leadRide()
  const announced = addCues([{ blockId: 'b', cue: { id: 'c', moment: 'announce', lead: { counts: 8 }, text: 'Up for sixteen' } }]).apply(
    ride,
  )
  const led = ledClass(planOf({ ...announced, briefingSeconds: 10 }), logOf())
  const at = (seconds: number) => rehearsalView(led, stateOf(led, seconds)).texts

  it('count in eights under a song, name the block and what comes, and say what is due', () => {
    expect(at(10)).toMatchObject({
      song: 'first',
      count: '1',
      eight: 'eight 1 of 8',
      name: 'a',
      next: 'then b, stay, in 64 counts',
      say: '',
    })
    expect(at(37.6)).toMatchObject({ count: '8', eight: 'eight 7 of 8', say: 'Up for sixteen', next: 'then b, stay, in 9 counts' })
    expect(at(10).call).toContain('seated')
  })

  it('count seconds where there is no beat, and name what is no block', () => {
    expect(at(4)).toMatchObject({ name: 'welcome', call: '', count: '6', eight: 'seconds left', clock: '0:04 of 4:56' })
    expect(at(107)).toMatchObject({ name: 'before beat 1', count: '1', next: 'then push, stay, in 1 s' })
    expect(at(210)).toMatchObject({ name: 'x', count: '24', eight: 'seconds left', next: 'then y, stay, in 24 s' })
    expect(at(400)).toMatchObject({ name: 'the end', count: '', eight: '', next: '' })
  })

  it('are told apart for those who hear them', () => {
    const spoken = [4, 12, 60, 107].map((second) => rehearsalView(led, stateOf(led, second)).spoken)
    expect(new Set(spoken).size).toBe(4)
  })
})
