import type { Constants } from '#engine/constants.ts'
import { countWords } from '#engine/cues/countWords.ts'
import { sectionClock } from '#engine/cues/sectionClock.ts'
import { speechSeconds, wordsPerSecond } from '#engine/cues/speechRate.ts'
import { crowdedWindows, overlap, spokenStretches } from '#engine/cues/talk.ts'
import { utteranceOf } from '#engine/cues/utterance.ts'
import type { PlayedBlock } from '#engine/played.ts'
import type { RideReport } from '#engine/report.ts'
import { strainAt } from '#engine/shape/strainCurve.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import type { Ride } from '#plan/model.ts'
import type { Counts, Seconds, Stretch } from '#units/units.ts'

/** Speech is given this much more time than it is timed at, so that it still fits when it is said more slowly. */
const SLACK = 1.15
/** Silence between two cues. */
const GAP: Seconds = 1
/** Of the talk the studio allows in a window so much is used. */
const SHARE_OF_TALK = 0.85
/** What is needed is held against the talk without all of the slack. */
const NEEDED_SHARE = 1.12
/** Strain from which a leader gets few words out, and how many (as the rule on words when breathless has it). */
const BREATHLESS = 8
const MOST_WORDS = 8

/** Whether words may use all the talk the studio allows, or are said whatever else is. */
type Need = 'needed' | 'always'

/** What is spoken when: takes words where there is room for them, and remembers. */
export interface Mouth {
  /**
   * Says words that end so many counts before a moment of a section, every time it comes; null, and nothing is said, where
   * they do not fit. What is needed may use all the talk the studio allows.
   */
  sayBefore: (text: string, moments: readonly Moment[], counts: Counts, need?: Need) => readonly Stretch[] | null
  /** Seconds of a text that ends about there, with slack. */
  length: (text: string, played: PlayedBlock, at: Seconds) => Seconds
  /** Seconds spoken between two moments. */
  spoken: (stretch: Stretch) => Seconds
  isFree: (stretch: Stretch) => boolean
  /** Takes up time that something else is said in. */
  take: (stretch: Stretch) => void
  /** Gives time back. */
  release: (stretches: readonly Stretch[]) => void
}

/** The end that words lead up to, who rides while they are said, and where they may start. */
export interface Moment {
  played: PlayedBlock
  at: Seconds
  /** Section whose beats are counted. */
  section: number
  earliest: Seconds
}

/** Nothing is spoken yet in the drafted songs; what is said in the others stays. */
export function openMouth(ride: Ride, report: RideReport, rules: Constants): Mouth {
  const clocks = report.sections.map(({ one }, index) => sectionClock(ride.sections[index]!, one))
  const taken: Stretch[] = report.cues.lines.map(({ from, to }) => ({ from, to }))
  const { quiet } = report.cues
  const speech = speechOf(ride)

  const near = (stretch: Stretch, reach: Seconds) => taken.filter(({ from, to }) => to > stretch.from - reach && from < stretch.to + reach)

  function length(text: string, { block }: PlayedBlock, at: Seconds): Seconds {
    const speaker = ride.leaders.find(({ id }) => id === (block.mic ?? block.leader)) ?? ride.leaders[0]!
    const strain = strainNear(block, at)
    return SLACK * speechSeconds(utteranceOf(text, speech), wordsPerSecond(speaker.wordsPerMinute, strain, rules), rules)
  }

  const strainNear = ({ walk, posture }: PlayedBlock['block'], at: Seconds): number =>
    walk || posture === 'offBike' ? 0 : strainAt(report.curves.strain, Math.max(0, at))

  function isFree(stretch: Stretch): boolean {
    const wide = { from: stretch.from - GAP, to: stretch.to + GAP }
    return taken.every((other) => overlap(other, wide) === 0) && quiet.every((other) => overlap(other, stretch) === 0)
  }

  function isTooMuch(stretches: readonly Stretch[], limit: Seconds): boolean {
    return stretches.some((stretch) => {
      const all = [...near(stretch, rules.talkWindow), ...stretches].sort((a, b) => a.from - b.from)
      return crowdedWindows(spokenStretches(all), rules.talkWindow, limit).some((one) => overlap(one, stretch) > 0)
    })
  }

  return {
    length,
    isFree,
    spoken: (stretch) => taken.reduce((sum, other) => sum + overlap(other, stretch), 0),
    take: (stretch) => {
      taken.push(stretch)
    },
    release: (stretches) => {
      for (const stretch of stretches) taken.splice(taken.indexOf(stretch), 1)
    },
    sayBefore: (text, moments, counts, need) => {
      const words = countWords(text, speech)
      const stretches: Stretch[] = []
      for (const { played, at, section, earliest } of moments) {
        const clock = clocks[section]!
        const to = clock.at(clock.countAt(at) - counts)
        if (words > MOST_WORDS && strainNear(played.block, to) >= BREATHLESS - 0.1) return null
        const stretch = { from: to - length(text, played, to), to }
        if (stretch.from < earliest || !isFree(stretch)) return null
        stretches.push(stretch)
      }
      if (need !== 'always' && isTooMuch(stretches, rules.talkSeconds * (need ? NEEDED_SHARE : SHARE_OF_TALK))) return null
      taken.push(...stretches)
      return stretches
    },
  }
}
