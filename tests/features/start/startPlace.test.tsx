// @vitest-environment happy-dom
import { readFileSync } from 'node:fs'
import { act } from 'react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { StartPlace } from '#features/start/StartPlace.tsx'
import { DEMOS, demoRide } from '#features/start/useDemoRides.ts'
import { readSongList } from '#formats/readSongList.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { parseRide } from '#plan/document/parseRide.ts'
import { LIMITS } from '#plan/document/schema.ts'
import { profileOfBike } from '#plan/kept/profile.ts'
import type { SavedRide } from '#plan/kept/savedRide.ts'
import { encodeLink } from '#plan/link/encodeLink.ts'
import type { Ride } from '#plan/model.ts'
import { countsOf } from '#plan/songs/beatGrid.ts'
import type { RideShelf } from '#store/ports.ts'
import { aStore } from '#tests/support/aStore.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { smallRide } from '#tests/support/smallRide.ts'

const NOW = Date.UTC(2026, 4, 20, 12)
let page: Rendered

beforeEach(() => {
  vi.stubGlobal('fetch', async (address: string) => new Response(readFileSync(`public/${address}`)))
})
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

/** A shelf that holds these rides, and one that cannot be read where told. */
function aShelf(rides: Ride[], unreadable: SavedRide[] = []): RideShelf {
  let held = rides
  return {
    list: async () => [
      ...held.map(({ id, title, level, slotMinutes }) => ({ id, title, level, slotMinutes, updated: NOW - 3_600_000 })),
      ...unreadable,
    ],
    load: async (id) => {
      const ride = held.find((other) => other.id === id)
      return ride ? { ok: true, ride } : { ok: false, sentence: 'This saved ride could not be read.', details: [] }
    },
    save: async (ride) => {
      held = [ride, ...held.filter(({ id }) => id !== ride.id)]
    },
    remove: async (id) => {
      held = held.filter((other) => other.id !== id)
    },
  }
}

async function open(shelf: RideShelf | null = aShelf([])) {
  const made = aStore(shelf)
  const onOpenFile = vi.fn()
  const onOpenLink = vi.fn()
  page = rendered(made.store, <StartPlace now={() => NOW} readPlaylist={readSongList} onOpenFile={onOpenFile} onOpenLink={onOpenLink} />)
  await page.settle()
  return { ...made, onOpenFile, onOpenLink }
}

const demo = (title: string) => page.find('button', new RegExp(`^${title}`)) as HTMLButtonElement
const submit = () => page.press(page.find('button[type="submit"]', /./))

describe('the bike of a new ride', () => {
  it('is asked for only where one is kept, and then is the kept one unless another is chosen', async () => {
    const { store, state } = await open()
    expect(page.host.querySelector('.start-form select')).toBeNull()
    act(() => store.setState({ profiles: [profileOfBike({ ...DEFAULT_BIKE, id: 'barn', name: 'the barn', base: 3 })] }))
    expect((page.find('select', 'bike') as HTMLSelectElement).selectedOptions[0]?.textContent).toBe('the barn')
    submit()
    expect(state().ride?.bike).toMatchObject({ id: 'barn', base: 3 })
  })
})

describe('a list longer than a ride can be', () => {
  it('makes a ride of its beginning, which can be opened again, and says so', async () => {
    const { state } = await open()
    page.type(
      page.find('textarea', 'playlist'),
      Array.from({ length: LIMITS.sections + 20 }, (_, i) => `Song ${i + 1}, 3:00, 120`).join('\n'),
    )
    expect(page.text()).toContain(`A ride holds at most ${LIMITS.sections}`)
    page.find('button', `make a ride from the first ${LIMITS.sections} of ${LIMITS.sections + 20} songs`)
    submit()
    expect(state().ride?.sections).toHaveLength(LIMITS.sections)
    expect(parseRide(state().ride).ok).toBe(true)
  })
})

describe('the start', () => {
  it('leads a newcomer somewhere: no list of nothing, two demo rides, a form that is ready', async () => {
    const { state } = await open()
    expect(() => page.find('h2', 'your rides')).toThrow()
    for (const { title } of DEMOS) await vi.waitFor(() => expect(demo(title).disabled).toBe(false))
    submit()
    expect(state().ride).toMatchObject({ title: 'New ride', level: 'mixed', slotMinutes: 45 })
    expect(state().place).toBe('draft')
  })

  it('makes a demo ride a copy that knows where it came from', async () => {
    const { state } = await open()
    const { name, title } = DEMOS[1]
    await vi.waitFor(() => expect(demo(title).disabled).toBe(false))
    page.press(demo(title))
    const { id } = JSON.parse(readFileSync(`public/demo/${name}.ride.json`, 'utf8'))
    expect(state().isDemo).toBe(true)
    expect(state().ride).toMatchObject({ title, parent: { rideId: id } })
    expect(state().ride!.id).not.toBe(id)
  })

  it('knows the demo rides by their ids', async () => {
    for (const { id, title } of DEMOS) expect(await demoRide(id)).toMatchObject({ id, title })
    expect(await demoRide('another')).toBeNull()
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('offline')))
    expect(await demoRide(DEMOS[0].id)).toBeNull()
  })

  it('works on without the demo rides when they cannot be fetched', async () => {
    vi.stubGlobal('fetch', () => Promise.reject(new TypeError('offline')))
    await open()
    expect(page.text()).toContain('This sample ride couldn’t be loaded.')
    expect(demo('Ridge and Return').disabled).toBe(true)
  })

  it('shows the cautions of the trade', async () => {
    await open()
    for (const word of ['medical clearance', 'chest pain', 'no resistance', 'muscle breakdown', 'Water', 'estimates'])
      expect(page.text()).toContain(word)
  })

  it('starts all the same where nothing can be kept', async () => {
    const { state } = await open(null)
    submit()
    expect(state().ride).not.toBeNull()
  })
})

describe('the form of a new ride', () => {
  it('takes what stands in its fields, left or not', async () => {
    const { state } = await open()
    page.type(page.find('input', 'title'), '  Thursday Hills ')
    page.press(page.find('input[type="radio"]', 'other'))
    page.type(page.find('input', 'other length'), '50 min')
    submit()
    expect(state().ride).toMatchObject({ title: 'Thursday Hills', slotMinutes: 50 })
  })

  it('says what a slot is made of and goes nowhere without one', async () => {
    const { state } = await open()
    page.press(page.find('input[type="radio"]', 'other'))
    for (const text of ['', 'an hour', '0', '241', '4.5', '-20']) {
      page.type(page.find('input', 'other length'), text)
      expect(page.text()).toContain('Write whole minutes from 1 to 240')
      submit()
      expect(state().ride).toBeNull()
      expect(document.activeElement).toBe(page.find('input', 'other length'))
    }
  })
})

describe('a pasted playlist', () => {
  const paste = (text: string) => page.type(page.find('textarea', 'playlist'), text)

  it('is read while it is typed, in the order of its lines, against the slot', async () => {
    await open()
    paste('title;length;bpm\nOne;3:00;128\nTwo;3:75;130\n\nThree;40:00;')
    const rows = [...page.host.querySelectorAll('tbody tr')].map((row) => row.textContent)
    expect(rows[0]).toBe('One 3:00128 bpm64 rpm')
    expect(rows[1]).toContain('line 3')
    expect(rows[2]).toBe('Three 40:00not given')
    expect(page.text()).toContain('43:02 of 45:00 · 1:58 left (2 s between songs)')
    paste('One 50:00 128 bpm')
    expect(page.text()).toContain('50:00 of 45:00 · 5:00 over')
  })

  it('keeps a line that was not understood, with its sentence, until it is mended or taken out', async () => {
    const { state } = await open()
    paste('One 3:00\nTwo 3:75\nThree 3:80')
    const second = page.find('input', 'line 2')
    page.type(second, 'Two 3:57')
    expect(page.text()).toContain('Read as Two, 3:57.')
    expect(page.find('input', 'line 2')).toBe(second)
    page.key(second, 'Enter')
    expect(() => page.find('input', 'line 2')).toThrow()
    expect((page.find('textarea', 'playlist') as HTMLTextAreaElement).value).toBe('One 3:00\nTwo 3:57\nThree 3:80')
    const third = page.find('input', 'line 3')
    page.type(third, 'Three 3:90')
    page.key(third, 'Enter')
    expect(page.text()).toContain('3:90 has more than 59 seconds')
    expect(page.text()).toContain('1 line is skipped.')
    submit()
    expect(state().ride!.sections.map((section) => section.song?.title)).toEqual(['One', 'Two'])
  })

  it('is read as M3U too, and a line of it can be mended', async () => {
    const { state } = await open()
    paste('#EXTM3U\n#EXTINF:215,Nine Tin Kites - Brickworks Elevator\na.mp3\n#EXTINF:-1,Salt Lantern - Low Tide\nb.mp3')
    const rows = [...page.host.querySelectorAll('tbody tr')].map((row) => row.textContent)
    expect(rows).toEqual(['Brickworks Elevator Nine Tin Kites3:35not given', 'Low Tide Salt Lanternnot givennot given'])
    submit()
    expect(state().ride!.sections.map((section) => section.song?.title)).toEqual(['Brickworks Elevator', 'Low Tide'])
  })

  it('is read as XSPF too, where an entry that is no song is named and left out', async () => {
    const { state } = await open()
    const track = (inside: string) => `  <track>\n${inside}\n  </track>`
    paste(
      `<playlist version="1">\n<trackList>\n${track('<title>Low Tide</title><duration>198000</duration>')}\n${track('<creator>nobody</creator>')}\n${track('<title>Late</title>')}\n</trackList></playlist>`,
    )
    const rows = [...page.host.querySelectorAll('tbody tr')].map((row) => row.textContent)
    expect(rows[0]).toBe('Low Tide 3:18not given')
    expect(rows[1]).toMatch(/^2\. “a track without a title” is skipped: .+\.$/)
    expect(rows[2]).toBe('Late not givennot given')
    // The text has no line for it, so there is nothing to write in but the text itself.
    expect(page.host.querySelectorAll('tbody input')).toHaveLength(0)
    submit()
    expect(state().ride!.sections.map((section) => section.song?.title)).toEqual(['Low Tide', 'Late'])
  })

  it('becomes sections measured as its songs allow', async () => {
    const { state } = await open()
    paste('With tempo 4:00 120 bpm\nWithout 3:00')
    submit()
    const [counted, timed] = state().ride!.sections
    expect(countsOf(counted!)).toBe(480)
    expect(countsOf(timed!)).toBeNull()
    expect(timed!.song!.lengthSeconds).toBe(180)
  })
})

describe('a link', () => {
  const link = encodeLink(smallRide())
  const field = () => page.find('textarea', 'link, or the message it came in')
  const said = () => page.host.querySelector('.start-link [role="status"]')!.textContent

  it('is opened out of the message it came in, by its button and by Enter', async () => {
    const { onOpenLink } = await open()
    const message = `Here is my ride:\n> https://rides.example/#${link}\n\nsee you`
    page.type(field(), message)
    expect(said()).toBe(`“${smallRide().title}”, mixed, 45 min.`)
    page.press(page.find('button', 'open'))
    page.key(field(), 'Enter')
    expect(onOpenLink.mock.calls).toEqual([[message], [message]])
  })

  it('that cannot be opened is said to be so, what was pasted stays, and nothing else happens', async () => {
    const { onOpenLink } = await open()
    const rideRefused = encodeLink({ ...smallRide(), slotMinutes: 100_000 })
    for (const [text, sentence] of [
      ['see you at six', 'There’s no ride link in this text.'],
      [link.slice(0, -40), 'The end of this link is missing: 40 of its '],
      [link.slice(0, 50) + (link[50] === 'A' ? 'B' : 'A') + link.slice(51), 'This link is damaged'],
      [link.replace('r1.', 'r2.'), 'This link was made with a newer version'],
      [rideRefused, 'The ride in this link can’t be opened. The class length must be between'],
    ] as const) {
      page.type(field(), text)
      expect(said()).toContain(sentence)
      page.press(page.find('button', 'open'))
      expect(document.activeElement).toBe(field())
      expect((field() as HTMLTextAreaElement).value).toBe(text)
    }
    expect(onOpenLink).not.toHaveBeenCalled()
  })

  it('may be the text of a file as well', async () => {
    const { onOpenFile } = await open()
    page.type(field(), JSON.stringify(smallRide()))
    page.press(page.find('button', 'open'))
    expect(JSON.parse(await onOpenFile.mock.calls[0]![0].text())).toEqual(smallRide())
  })

  it('in the field for songs is no song', async () => {
    const { state, onOpenLink } = await open()
    const songs = page.find('textarea', 'playlist')
    page.type(songs, `Try this\nhttps://rides.example/#${link}`)
    expect(page.text()).toContain(`That’s a link to a ride: “${smallRide().title}”, mixed, 45 min. Open it?`)
    expect(page.host.querySelector('table')).toBeNull()
    page.press(page.find('button', 'open it'))
    expect(onOpenLink).toHaveBeenCalledWith(`Try this\nhttps://rides.example/#${link}`)
    expect(state().ride).toBeNull()
    page.type(songs, `https://rides.example/#${link.slice(0, 80)}`)
    expect(page.text()).toContain('The end of this link is missing')
    expect(page.host.querySelector('table')).toBeNull()
    page.type(songs, 'R1. Night Market 3:05')
    expect(page.host.querySelector('table')!.textContent).toContain('Night Market')
  })
})

describe('saved rides', () => {
  const mine: Ride = { ...smallRide(), title: 'Mine' }

  it('are listed with level, slot and age, and open', async () => {
    const { state } = await open(aShelf([mine]))
    expect(page.host.querySelector('.start-ride')!.textContent).toContain('mixed · 45 min · changed 1 hour ago')
    page.press(page.find('a', 'Mine'))
    await page.settle()
    expect(state()).toMatchObject({ ride: mine, place: 'draft' })
  })

  it('go back to the ride that is open without ending its way back', async () => {
    const { state } = await open(aShelf([mine]))
    state().openRide(mine)
    state().run({ label: 'Renamed', apply: (ride) => ({ ...ride, title: 'Renamed' }) })
    state().setPlace('start')
    await page.settle()
    page.press(page.find('a', 'Mine'))
    await page.settle()
    expect(state().past).toHaveLength(1)
    expect(state().place).toBe('draft')
  })

  it('are deleted so that they can be put back', async () => {
    const { state } = await open(aShelf([mine]))
    page.press(page.find('button', 'delete Mine'))
    await page.settle()
    expect(() => page.find('a', 'Mine')).toThrow()
    expect(state().removed).toEqual([mine])
  })

  it('that cannot be read say why, are kept, and are deleted only when it is meant', async () => {
    const { state } = await open(aShelf([], [{ id: 'x', title: 'Old one', updated: 0, problem: 'This saved ride could not be read.' }]))
    expect(page.text()).toContain('This saved ride could not be read.')
    expect(() => page.find('a', 'Old one')).toThrow()
    const removeSaved = vi.spyOn(state(), 'removeSaved')
    page.press(page.find('button', 'delete Old one'))
    expect(removeSaved).not.toHaveBeenCalled()
    expect(page.text()).toContain('Delete “Old one” for good?')
    page.press(page.find('button', 'cancel'))
    expect(page.text()).not.toContain('for good?')
  })
})
