import { describe, expect, it } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { roughIn } from '#engine/roughIn/roughIn.ts'
import { seededRandom } from '#engine/roughIn/seededRandom.ts'
import { writeWords } from '#engine/roughIn/words/writeWords.ts'
import { isSet } from '#plan/model.ts'
import { draftTasks } from '#tests/support/drafts/draftPlaylists.ts'
import { distinctShare, falseNames, misfits, spokenFaults, untaught, type Worded, withoutOption } from '#tests/support/drafts/draftWords.ts'
import { told } from '#tests/support/told.ts'

/** A part of the 360 classes of a set, every level, length, and make among them. */
const DRAFTS: readonly Worded[] = draftTasks(8_1)
  .filter((_, index) => index % 9 === 4)
  .map(({ ride, seed, drives }) => {
    const drafted = roughIn(ride, { seed, drives })!
    return {
      ride: drafted.ride,
      report: computeRide(drafted.ride),
      songs: drafted.songs.map((song) => ({ ...song, text: told(song.text) })),
    }
  })

describe('the words of drafts', () => {
  it('fit the load of what they are said of: nothing is heavy at effort four, and nothing easy at eight', () => {
    expect(DRAFTS.flatMap(misfits)).toEqual([])
  })

  it('repeat themselves in a third at most', () => {
    for (const { ride } of DRAFTS) {
      expect(distinctShare(ride).all).toBeGreaterThanOrEqual(2 / 3)
      expect(distinctShare(ride).worded).toBeGreaterThanOrEqual(2 / 3)
    }
  })

  it('call blocks and songs what is ridden in them', () => {
    expect(DRAFTS.flatMap(falseNames)).toEqual([])
  })

  it('speak no number the plan does not have, fit where they stand, and leave quiet what is quiet', () => {
    expect(DRAFTS.flatMap(spokenFaults)).toEqual([])
  })

  it('say how each move is done the first time it is shown, and offer an easier way', () => {
    expect(DRAFTS.flatMap(untaught)).toEqual([])
    expect(DRAFTS.flatMap(withoutOption)).toEqual([])
  })

  it('say in three sentences why the draft is as it is', () => {
    const task = draftTasks(8_1)[9]!
    const { arc } = roughIn(task.ride, { seed: task.seed })!
    expect(arc.length).toBeGreaterThanOrEqual(3)
    for (const sentence of arc) expect(told(sentence)).toMatch(/^[A-Z].*\.$/)
  })
})

describe('writing words', () => {
  const { ride } = DRAFTS[4]!
  const roles = { places: ride.sections.map(() => ({ role: 'work' as const, intensity: 1 })) }
  const sections = new Set(ride.sections.map(({ id }) => id))
  const again = (seed: number) => writeWords(ride, sections, seededRandom(seed), roles)

  it('gives the same words for the same number and others for another', () => {
    expect(again(5)).toEqual(again(5))
    expect(JSON.stringify(again(5))).not.toBe(JSON.stringify(again(6)))
  })

  it('changes nothing but words, and leaves songs that were not drafted as they are', () => {
    const [first] = ride.sections
    const written = writeWords(ride, new Set([...sections].slice(1)), seededRandom(1), roles)
    expect(written.sections[0]).toBe(first)
    const bare = (one: typeof ride) =>
      one.sections.flatMap(({ blocks }) =>
        blocks
          .flatMap((item) => (isSet(item) ? item.parts : [item]))
          .map(({ label: _, cues: __, feel: ___, easier: ____, harder: _____, ...rest }) => rest),
      )
    expect(bare(written)).toEqual(bare(ride))
  })
})
