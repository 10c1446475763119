import { capital } from '#engine/roughIn/words/capital.ts'
import type { PostureWords, Voice } from '#engine/roughIn/words/voice.ts'
import { calls as spoken } from '#engine/speech/english/calls.ts'
import { sizeWords } from '#engine/speech/english/settingWords.ts'
import type { Posture } from '#plan/model.ts'
import { plural } from './names.ts'
import { bareSeconds, sayEffort, sayLength } from './numbers.ts'

const COUNT_WORDS: Readonly<Record<number, string>> = {
  2: 'two',
  4: 'four',
  6: 'six',
  8: 'eight',
  12: 'twelve',
  16: 'sixteen',
  24: 'twenty-four',
  32: 'thirty-two',
}
const sayCounts = (counts: number): string => COUNT_WORDS[counts] ?? String(counts)

const ORDINALS = ['', 'First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth']
const CARDINALS = ['', 'one', 'two', 'three', 'four', 'five', 'six']

const TALL_AGAIN: PostureWords = {
  alone: ['Stand tall.', 'And rise.', 'Up tall.'],
  after: [', then stand tall.', ' and rise.', ', up tall.'],
  first: false,
}

const POSTURES: Readonly<Record<Posture, PostureWords>> = {
  seated: {
    alone: ['Sit.', 'Have a seat.', 'Back to the saddle.', 'Take a seat.', 'And sit.'],
    after: [' and sit.', ', back to the saddle.', ', then have a seat.'],
    first: true,
  },
  standing: {
    alone: ['Up out of the saddle.', 'And rise.', 'Stand tall.', 'Come on up.', 'Up we go.', 'Rise up tall.'],
    after: [', then up.', ' and rise.', ' and stand tall.', ', then stand.', ', then come on up.', ', up out of the saddle.'],
    first: false,
  },
  hovering: {
    alone: ['Hips just off the saddle.', 'Hover low.'],
    after: [', then hover low.', ', hips just off the saddle.'],
    first: false,
  },
  offBike: { alone: ['Off the bike.'], after: ['. Off the bike.'], first: false },
}

export const calls: Voice['calls'] = {
  bases: ['Find your base.', 'Start at your base.', 'Base first.', 'Set your base.'],
  begins: {
    push: ['Push now.', 'Here is the push.', 'And push.'],
    surge: ['Surge now.', 'Here is the surge.', 'And surge.'],
    hold: ['Hold now.', 'Here is the hold.'],
    tempo: ['Tempo now.', 'Same gear.'],
    climb: ['Same gear.', 'Stay on the hill.'],
  },
  size: sizeWords,
  turned: (way, steps, bike) => {
    const size = sizeWords(steps, bike)
    const Size = capital(size)
    return way === 'up'
      ? [`${Size} on`, `Add ${size}`, `${Size} more`, `Turn it up ${size}`]
      : [`${Size} off`, `Take ${size} off`, `Back it off ${size}`, `Drop ${size}`]
  },
  takenTo: (state, bike, datum) => {
    const total = spoken.total(state, bike, datum)
    return [`Take it ${total}`, `Knob ${total}`]
  },
  posture: (to, from) => (to === 'standing' && from === 'hovering' ? TALL_AGAIN : POSTURES[to]),
  jumps: (counts) => {
    if (counts === undefined) return ['Jumps.', 'Into the jumps.', 'Time to jump.']
    const said = sayCounts(counts)
    return [
      `Jumps, ${said} up, ${said} down.`,
      `Jumps on ${plural(said)}.`,
      `${capital(said)} up, ${said} down.`,
      `Up for ${said}, down for ${said}.`,
    ]
  },
  move: ({ name, counts, bothSides, first }) => {
    const said = sayCounts(counts)
    const names = plural(name)
    if (!bothSides)
      return [`${capital(names)} on ${plural(said)}.`, `${capital(names)}, every ${said} counts.`, `Into ${names}, on ${plural(said)}.`]
    const [one, other] = first === 'right' ? ['right', 'left'] : ['left', 'right']
    return [
      `${capital(names)}, ${said} ${one}, ${said} ${other}.`,
      `${capital(said)} ${one}, ${said} ${other}.`,
      `${capital(names)} on ${plural(said)}.`,
    ]
  },
  held: (move, point) => `${capital(plural(move))}, ${point.charAt(0).toLowerCase()}${point.slice(1)}`,
  swapFoot: ['Swap the lead foot.', 'Switch your lead foot.'],
  swapFootTo: (foot) => [`${capital(foot)} foot leads now.`, `Switch to the ${foot} foot.`, `Now the ${foot} foot leads.`],
  footLeads: (foot) => [
    `${capital(foot)} foot leads.`,
    `${capital(foot)} foot on beat one.`,
    `${capital(foot)} foot takes the downbeat.`,
    `Lead with the ${foot}.`,
    `Find the beat, ${foot} foot first.`,
    `${capital(foot)} foot first.`,
  ],
  lengths: ({ seconds, effort: level, builds, counts }) => {
    const length = sayLength(seconds)
    const effort = sayEffort(level)
    if (builds) return [`${capital(length)}, building to ${effort} out of ten.`, `Build it for ${length}, up to ${effort} out of ten.`]
    return [
      `${capital(length)}, ${effort} out of ten.`,
      `${capital(length)} at ${effort} out of ten.`,
      `Hold it ${length}, ${effort} out of ten.`,
      ...(seconds < 58 ? [`${capital(effort)} out of ten for ${length}.`] : []),
      ...(counts === 32 || counts === 64 ? [`${counts === 32 ? 'Thirty-two' : 'Sixty-four'} counts, ${effort} out of ten.`] : []),
    ]
  },
  plainLengths: (seconds) => [`${capital(sayLength(seconds))}.`, `Hold it ${sayLength(seconds)}.`],
  builds: (effort) => [
    `Build it, up to ${sayEffort(effort)} out of ten.`,
    'Let it build with the music.',
    'A little more every phrase.',
    `Build to ${sayEffort(effort)} out of ten.`,
    'Hold back, then let it go.',
    'Grow with the song.',
  ],
  placeOf: (place, of, seconds) => {
    const length = sayLength(seconds)
    if (place === of) return [`Last one, ${length}.`, 'Last one of these.']
    return [`${ORDINALS[place]} of ${CARDINALS[of] ?? String(of)}, ${length}.`]
  },
  lastUp: (seconds) => [`Last time up, ${sayLength(seconds)}.`],
  rests: (seconds) => {
    const length = sayLength(seconds)
    return seconds < 57
      ? [`${capital(length)} easy.`, `You get ${length}.`, `Take ${bareSeconds(seconds)} easy seconds.`]
      : [`${capital(length)} easy.`]
  },
  countsLeft: [
    [16, ['Last sixteen.', 'Sixteen more.', 'Last two eights.', 'Two eights left.']],
    [24, ['Three eights left.', 'Last three eights.']],
    [8, ['Last eight.', 'Eight more.']],
  ],
  secondsLeft: (left) => {
    const number = bareSeconds(left)
    return [
      `${capital(number)} seconds.`,
      `${capital(number)} more seconds.`,
      `${capital(number)} seconds left.`,
      `Last ${number} seconds.`,
    ]
  },
  standSoon: (left) => {
    const number = bareSeconds(left)
    return [
      `${capital(number)} more seconds, then we stand.`,
      `${capital(number)} seconds, then out of the saddle.`,
      `In ${number} seconds we rise.`,
    ]
  },
}
