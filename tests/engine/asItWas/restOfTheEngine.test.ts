import fc from 'fast-check'
import { expect, it } from 'vitest'
import { onAnotherBike } from '#engine/anotherBike/onAnotherBike.ts'
import { spokenOnBike } from '#engine/anotherBike/spokenOnBike.ts'
import { computeRide } from '#engine/computeRide.ts'
import { easingsOf } from '#engine/easings.ts'
import { nearestFits } from '#engine/fit/nearestFits.ts'
import { rankSongs } from '#engine/fit/rankSongs.ts'
import { replaceSong } from '#engine/fit/replaceSong.ts'
import { fitRide } from '#engine/fit/rideFit.ts'
import { sayMoved } from '#engine/fit/sayMoved.ts'
import { sayRank } from '#engine/fit/sayRank.ts'
import { fitSection } from '#engine/fit/sectionFit.ts'
import { closingWords } from '#engine/leading/closingWords.ts'
import type { LeadEvent } from '#engine/leading/leadLog.ts'
import { ledClass } from '#engine/leading/ledClass.ts'
import { checklist } from '#engine/prepare/checklist.ts'
import { checkpoints } from '#engine/prepare/checkpoints.ts'
import { withoutMusic } from '#engine/prepare/withoutMusic.ts'
import { courseOfRide } from '#engine/rehearsal/courses.ts'
import { rideScore } from '#engine/rehearsal/rideScore.ts'
import { spokenCues } from '#engine/rehearsal/spokenCues.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import type { Ride, Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { arbitraryRide } from '#tests/support/arbitraryRide.ts'
import { LEVELS_BIKE } from '#tests/support/bikes.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { lateLog, leadRide, leadStateAt, logOf, planOf, proposeCuts } from '#tests/support/leading.ts'
import { plausibleRide } from '#tests/support/plausibleRide.ts'
import { aSong } from '#tests/support/smallRide.ts'
import { cameraClass, studioClass } from '#tests/support/soundClasses.ts'
import { told } from '#tests/support/told.ts'
import { sayReport } from './sayReport.ts'

// What the engine makes of a ride beside its report, kept as text like the rest of this folder.

const NONE = new Set<string>()
const pages = (parts: readonly object[], left: ReadonlySet<string> = NONE): string => parts.map((part) => sayReport(part, left)).join('\n')
/** Rides with everything a ride may hold, the same every time. */
const STRANGE = fc.sample(arbitraryRide({ sections: 3, items: 4 }), { seed: 23, numRuns: 6 })

it('what a leader has at hand before a class', async () => {
  const rides = [demoRide('spark'), demoRide('ridge'), { ...plausibleRide(2), room: 'online' as const }, ...STRANGE]
  const prepared = rides.map((ride) => {
    const report = computeRide(ride)
    const easings = easingsOf(ride, report).map((easing) => ({ ...easing, command: undefined }))
    const card = openingCard(ride, report)
    return { list: checklist(ride, report), at: checkpoints(ride, report), plain: withoutMusic(report), card, easings }
  })
  await expect(pages(prepared, new Set(['block', 'set']))).toMatchFileSnapshot('prepared.txt')
})

it('what a class becomes in its slot, and what songs would do for it', async () => {
  const songs: Song[] = [61, 84, 92, 118, 128, 140, 174].map((bpm, i) =>
    aSong(`song${i}`, { title: `song ${bpm}`, grid: gridOfTempo(bpm, i / 4), lengthSeconds: 170 + 11 * i, clean: i % 2 === 0 }),
  )
  const rides: Ride[] = [
    { ...demoRide('ridge'), slotMinutes: 40 },
    { ...cameraClass(), slotMinutes: 18 },
    { ...studioClass(), slotMinutes: 50 },
    demoRide('spark'),
    ...STRANGE,
  ]
  const fitted = rides.map((ride) => {
    const sections = ride.sections.slice(1, 4).map((section) => {
      const ranked = rankSongs(section, songs, { recent: new Set(['song4']), wanted: 4, energies: new Map([['song5', 5]]) })
      const replaced = replaceSong(ride, section.id, songs[4]!)
      return {
        fit: fitSection(ride, section.id),
        near: nearestFits(ride, section.id),
        ranked: ranked.map((one) => ({ ...one, song: one.song.title, words: sayRank(section, one) })),
        replaced: replaced && { ...replaced, moved: sayMoved(ride, replaced.command.apply(ride), section.id) },
      }
    })
    return { whole: fitRide(ride), sections }
  })
  await expect(pages(fitted, new Set(['ride', 'command', 'block', 'set']))).toMatchFileSnapshot('fitted.txt')
})

it('a class as it is led', async () => {
  const plan = planOf(leadRide())
  const acts: LeadEvent[] = [
    { kind: 'one', at: 0.7 },
    { kind: 'next', at: 20 },
    { kind: 'again', at: 110 },
    { kind: 'hold', at: 150 },
    { kind: 'go', at: 158 },
    { kind: 'back', at: 171 },
    { kind: 'skipSong', at: 205 },
  ]
  const states = [5, 30, 64, 97, 112, 140, 152, 175, 200, 210, 240, 262, 285].map((at) => ({
    second: at,
    state: leadStateAt(plan, logOf(...acts), at),
  }))
  const ridge = planOf(demoRide('ridge'))
  const late = ledClass(ridge, lateLog(200))
  const cuts = [0, 700, 1500].map((at) => ({ at, cuts: proposeCuts(late, at) }))
  const led = ledClass(plan, logOf(...acts))
  const left = new Set(['led', 'plan', 'ride', 'report', 'block', 'set', 'section'])
  await expect(pages([{ states }, { cuts }, { led: led.report.overall, closing: closingWords(led) }], left)).toMatchFileSnapshot('led.txt')
})

it('a ride as it is rehearsed', async () => {
  const plan = planOf(demoRide('spark'))
  const { end, clicks, sounding } = rideScore(plan, courseOfRide(plan, 6), { isThere: () => true, clickOver: true, ticks: true })
  const windows = [
    [0, 12],
    [190, 215],
    [600, 618],
    [1100, 1125],
  ] as const
  const heard = windows.map(([from, to]) => ({ clicks: clicks(from, to), sounding: sounding(from, to) }))
  await expect(pages([{ end, heard, spoken: spokenCues(plan, 170, 1.1) }])).toMatchFileSnapshot('rehearsed.txt')
})

it('a ride as it is read on another bike', async () => {
  const read = [demoRide('spark'), STRANGE[2]!].flatMap((ride) => {
    const report = computeRide(ride)
    return [LEVELS_BIKE, { ...LEVELS_BIKE, unit: 'turn', stepsPerUnit: 2, brake: 'magnetic' as const, max: 40 }].map((bike) => {
      const { blocks, findings, cues } = spokenOnBike(onAnotherBike(ride, report, bike), ride)
      return {
        calls: blocks.map(({ ledger: { call, total, change, reading } }) => ({ call, total, change, reading })),
        said: cues.lines.map(({ cue: { text } }) => text),
        shown: findings.flatMap(({ text, shownAs }) => (shownAs ? [`${told(text)} ${told(shownAs)}`] : [])),
      }
    })
  })
  await expect(pages(read)).toMatchFileSnapshot('onAnotherBike.txt')
})
