import { isSet, type Ride } from '#plan/model.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { words } from '#words/words.ts'

/** Who leads a block: a letter to be seen, and words to be heard. */
export interface LeaderMark {
  letter: string
  spoken: string
}

/**
 * The marks of a class that two share, by block id; none while nothing is given to the second
 * leader. A letter of the name each, two where one is shared; who speaks, where that is the other, after a stroke.
 */
export function leaderMarks(ride: Ride): ReadonlyMap<string, LeaderMark> {
  const [first, second] = ride.leaders
  const marks = new Map<string, LeaderMark>()
  if (!first || !second) return marks
  const blocks = ride.sections.flatMap(({ blocks }) => blocks.flatMap((item) => (isSet(item) ? item.parts : [item])))
  const isShared = blocks.some((block) => Object.values(rolesOf(ride, block)).includes(second.id))
  if (!isShared) return marks
  const letters = lettersOf(first.name, second.name)
  const [letterOf, nameOf] = [
    (id: string) => (id === first.id ? letters[0] : letters[1]),
    (id: string) => (id === first.id ? first.name : second.name),
  ]
  for (const block of blocks) {
    const { leads, speaks } = rolesOf(ride, block)
    const isApart = leads !== speaks
    marks.set(block.id, {
      letter: isApart ? `${letterOf(leads)}/${letterOf(speaks)}` : letterOf(leads),
      spoken: isApart
        ? words.drafting.leadsAndSpeaks({ leads: nameOf(leads), speaks: nameOf(speaks) })
        : words.drafting.leads({ name: nameOf(leads) }),
    })
  }
  return marks
}

/** "O" and "R"; "Re" and "Ro" of two who begin alike; "1" and "2" where nothing tells them apart. */
function lettersOf(first: string, second: string): [string, string] {
  for (const length of [1, 2]) {
    const [one, other] = [start(first, length), start(second, length)]
    if (one !== other && one && other) return [one, other]
  }
  return ['1', '2']
}

const start = (name: string, length: number): string => {
  const [letter = '', ...rest] = [...name.trim()].slice(0, length)
  return letter.toUpperCase() + rest.join('')
}
