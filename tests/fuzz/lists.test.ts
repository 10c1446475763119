import { expect, it } from 'vitest'
import { readSongList } from '#formats/readSongList.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { blankRide } from '#plan/newRide.ts'
import { sectionsFromPlaylist } from '#plan/songs/sectionsFromPlaylist.ts'
import { listOnShelf, readShelfSong, writeShelfSong } from '#plan/songs/shelfSong.ts'
import { SEED } from '#tests/support/seed.ts'
import { countedIds } from '#tests/support/smallRide.ts'
import { told } from '#tests/support/told.ts'
import { chanceOf } from './chance.ts'
import { hostileList } from './hostileList.ts'

const CASES = 1500

it('hostile lists give songs that a shelf and a ride can hold, and a sentence for what is none', () => {
  const broken: { seed: number; what: string }[] = []
  let songsRead = 0
  for (let seed = SEED; seed < SEED + CASES; seed++) {
    const { songs, problems } = readSongList(hostileList(chanceOf(seed)))
    songsRead += songs.length
    for (const { sentence } of problems) if (!/\.$/.test(told(sentence))) broken.push({ seed, what: told(sentence) })
    const unreadable = listOnShelf(songs, [], countedIds('s')).filter((kept) => readShelfSong(writeShelfSong(kept)) === null)
    if (unreadable.length > 0) broken.push({ seed, what: `no song of a shelf: ${JSON.stringify(unreadable[0]).slice(0, 200)}` })
    const newId = countedIds('r')
    const ride = blankRide({ newId, title: 'A list', level: 'mixed', slotMinutes: 45, bike: DEFAULT_BIKE })
    const parsed = parseRide({ ...ride, sections: sectionsFromPlaylist(songs.slice(0, LIMITS.sections), newId) })
    if (!parsed.ok) broken.push({ seed, what: told(parsed.problems[0]!.text) })
  }
  expect(broken).toEqual([])
  expect(songsRead).toBeGreaterThan(CASES)
})

// Each of these takes hours, or for ever, where an end is looked for anew from every place something begins.
it.each([
  ['comments before the root', `${'<!---->'.repeat(5_000)}x`],
  ['comments that never end', `<playlist>${'<!--'.repeat(400_000)}`],
  ['tracks that never end', `<playlist>${'<track>'.repeat(400_000)}`],
  ['tags that never end', `<playlist>${'<track '.repeat(400_000)}`],
  ['titles that never end', `<playlist><track>${'<title>'.repeat(400_000)}</track></playlist>`],
  ['sections that never end', `<playlist><track><title>${'<![CDATA['.repeat(300_000)}</title></track></playlist>`],
  ['spaces in a line of a playlist', `#EXTM3U\n#EXTINF:225,Salt${' '.repeat(2_000_000)}Lantern\n`],
  ['spaces in many lines', `#EXTM3U\n${`a${' '.repeat(990)}-b\n`.repeat(4_000)}`],
  ['separators in many lines', `a${'– '.repeat(490)}b\n`.repeat(4_000)],
])('a list with %s is read in one go', (_what, text) => {
  const { songs, problems } = readSongList(text)
  expect(songs.length + problems.length).toBeLessThanOrEqual(6_000)
})
