import type { Counts, Seconds } from '#units/units.ts'
import { shortPoints, type Wording } from './announcing.ts'
import { callBarely, callFully, note } from './calling.ts'
import { insideWords, type SectionState, type Wish } from './insideWords.ts'
import type { Passage } from './passage.ts'
import { previewing } from './previewing.ts'
import type { Speaking } from './speaking.ts'

/** Of a song of work no more than this share is talked through, besides what has to be said (common practice: under half, and a chorus free). */
const MOST_TALK = 0.36
/** What ranks from here on is said however much is said already, and before calls are said more fully. */
const NEEDED = 6.5
/** What ranks from here on may use all the talk the studio allows. */
const PRESSING = 8
/** What ranks from here on is said wherever it fits between other words: how a new move is done. */
const ALWAYS = 10
/** A song is told of while riders ride at least so long on easily, about so long before it. */
const AHEAD: Readonly<{ least: Seconds; about: Seconds }> = { least: 20, about: 15 }

/**
 * Everything that is said: calls in their barest words, then what riders have to be told, then the calls as fully as there
 * is room for, and then what may be said besides.
 */
export function speak(speaking: Speaking): void {
  const { mine, deck, voice } = speaking
  const called = callBarely(speaking)
  const states = new Map<number, SectionState>(mine.map(({ section }) => [section, { seatOffered: false }]))
  const wishes = mine.flatMap((passage) => insideWords(passage, states.get(passage.section)!, deck, voice)).sort((a, b) => b.rank - a.rank)
  for (const wish of wishes) if (wish.rank >= NEEDED) inside(wish, speaking)
  for (const passage of mine) {
    if (passage.opens === 'section') preview(passage, speaking)
    else if (passage.times.length > 1 && passage.times[0]!.set?.part === 1) tellRounds(passage, speaking)
  }
  callFully(called, speaking)
  for (const wish of wishes) if (wish.rank < NEEDED) inside(wish, speaking)
  for (const passage of mine) if (passage.isNew && passage.block.move) countInWithPoint(passage, speaking)
}

/** Where the call of a new move has no room for how it is done, its count-in ends on that: "four, three, land soft". */
function countInWithPoint({ block }: Passage, { spoken, deck, voice }: Speaking): void {
  const own = spoken.filter(({ blockId }) => blockId === block.id)
  const [point] = deck.order(shortPoints(block, voice))
  if (own.some(({ cue: { moment, text } }) => moment === 'announce' && voice.tells.form.test(text))) return
  const count = own.find(({ cue }) => cue.moment === 'countIn')
  if (count) spoken[spoken.indexOf(count)] = { ...count, cue: { ...count.cue, text: point! } }
}

/** Before the song while riders still ride the last one easily; else in its first seconds. */
function preview(passage: Passage, speaking: Speaking): void {
  const { mine, rules, mouth, clocks, deck, voice, isCountedIn, keep } = speaking
  const song = mine.filter(({ section }) => section === passage.section)
  const before = passage.before!
  const isEasy = Math.max(before.block.effort.from, before.block.effort.to) < rules.workEffort
  if (isEasy && before.to - before.from >= AHEAD.least && passage.times.length === 1) {
    const clock = clocks[passage.section]!
    const { from: at } = passage.times[0]!
    const moment = { played: before, at, section: passage.section, earliest: before.from + 4 }
    for (const wording of previewing(song, true, deck, voice)) {
      const seconds = mouth.length(wording.text, before, before.to - AHEAD.about) / 1.3
      const starts = Math.ceil(rules.previewCounts - (clock.countAt(at) - clock.countAt(at - seconds)))
      const first = 2 * Math.ceil(Math.max(starts, 12) / 2)
      for (let counts: Counts = first; counts <= first + rules.previewCounts; counts += isCountedIn(passage) ? 2 : 4) {
        if (!mouth.sayBefore(wording.text, [moment], counts)) continue
        keep(passage, { moment: 'preview', counts, text: wording.text, order: -counts })
        note(wording, deck)
        return
      }
    }
  }
  const host = passage.times.length === 1 ? passage : mine.find(({ block }) => block.id === before.block.id)
  if (!host || host.times.length > 1) return
  const next = host === passage ? song[1] : undefined
  if (next && next.times.length === 1 && tellAhead(host, next, previewing(song, false, deck, voice), speaking)) return
  // Of numbers in the middle of a block riders would think that they are its own.
  const plain = previewing(song, host !== passage, deck, voice).filter(({ text }) => !voice.tells.numbers.test(text))
  const place = host === passage ? { at: 11, reach: 9 } : { at: Math.max(8, host.seconds - 14), reach: 12 }
  inside({ passage: host, wordings: plain, rank: NEEDED, ...place }, speaking)
}

/** In the song's first seconds, as words about what comes next in it. */
function tellAhead(
  host: Passage,
  next: Passage,
  wordings: readonly Wording[],
  { mouth, clocks, deck, rules, isCountedIn, keep }: Speaking,
): boolean {
  const clock = clocks[host.section]!
  const { from: at } = next.times[0]!
  const played = host.times[0]!
  const moment = { played, at, section: host.section, earliest: played.from + 1.5 }
  for (const wording of wordings) {
    const seconds = mouth.length(wording.text, played, played.from + 8)
    for (const start of [3, 5, 8, 12]) {
      const counts = 2 * Math.floor((clock.countAt(at) - clock.countAt(played.from + start + seconds)) / 2)
      const ahead = counts + (clock.countAt(at) - clock.countAt(at - seconds / 1.3))
      if (counts < 2 || ahead < rules.previewCounts || !mouth.sayBefore(wording.text, [moment], counts)) continue
      keep(next, { moment: 'preview', counts: isCountedIn(host) ? counts : 2 * Math.round(counts / 2), text: wording.text, order: -counts })
      note(wording, deck)
      return true
    }
  }
  return false
}

/** How many rounds are coming, in the block before them. */
function tellRounds(passage: Passage, speaking: Speaking): void {
  const { mine, deck, voice } = speaking
  const host = mine.find(({ block, times }) => block.id === passage.before?.block.id && times.length === 1)
  if (!host) return
  const rounds = mine.filter(({ section, times }) => section === passage.section && times.length > 1)
  const wordings = previewing(rounds, true, deck, voice).map(({ text }) => ({ text: voice.previews.ofRounds(text) }))
  inside({ passage: host, wordings, at: Math.max(6, host.seconds - 13), reach: 14, rank: NEEDED }, speaking)
}

/** Says one thing inside a block where it is wished, or as near to it as may be; the wording that was said least first. */
function inside({ passage, wordings, at, reach, rank }: Wish, { report, mouth, clocks, deck, isCountedIn, keep }: Speaking): void {
  const counted = isCountedIn(passage)
  const clock = clocks[passage.section]!
  const { from: start, to: stop } = report.sections[passage.section]!
  if (rank < NEEDED && passage.load.to > 5 && mouth.spoken({ from: start, to: stop }) > MOST_TALK * (stop - start)) return
  const first = passage.times[0]!
  const countsOf = (seconds: Seconds): Counts => clock.countAt(first.to) - clock.countAt(first.from + seconds)
  const moments = passage.times.map((played) => ({
    played,
    at: played.to,
    section: played.section,
    earliest: played.from + (rank >= ALWAYS ? 0.3 : 1.2),
  }))
  for (const { text, left } of wordings.toSorted((a, b) => deck.uses(a.text) - deck.uses(b.text))) {
    // A number is true about when it is heard.
    const end = left === undefined ? at : passage.seconds - left + 0.4 * mouth.length(text, first, first.from + at)
    for (const shift of shifts(left === undefined ? reach : 1.2, rank >= ALWAYS ? 0.5 : 2)) {
      const counts = counted ? Math.round(countsOf(end + shift)) : 2 * Math.round(countsOf(end + shift) / 2)
      if (counts < 0 || !mouth.sayBefore(text, moments, counts, rank >= ALWAYS ? 'always' : rank >= PRESSING ? 'needed' : undefined))
        continue
      keep(passage, { moment: 'form', counts, text, order: end + shift })
      deck.use(text)
      return
    }
  }
}

/** Where else words may be tried, the nearest first. */
function shifts(reach: Seconds, by: Seconds): Seconds[] {
  const all: Seconds[] = [0]
  for (let step = by; step <= reach; step += by) all.push(step, -step)
  return all
}
