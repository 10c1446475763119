// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { taughtOf } from '#engine/log/taughtOf.ts'
import { LogPlace } from '#features/log/LogPlace.tsx'
import { writeCsv } from '#formats/csv/writeCsv.ts'
import { readTaught, type TaughtClass, writeTaught } from '#plan/kept/taught.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { TaughtShelf } from '#store/ports.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { countedIds } from '#tests/support/smallRide.ts'
import { daysAfter } from '#units/day.ts'

const NOW = new Date(2026, 10, 25, 19, 30).getTime()
const spark = { ...demoRide('spark'), location: 'Studio B, Quay Street' }

let page: Rendered
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

/** A log that keeps texts, as the real one does. */
function aLog(...texts: string[]) {
  const held = new Map(texts.map((text) => [readTaught(text)!.id, text]))
  const shelf: TaughtShelf = {
    list: async () => [...held.values()].map((text) => readTaught(text)!).sort((a, b) => (a.day < b.day ? 1 : -1)),
    save: async (entry) => void held.set(entry.id, writeTaught(entry)),
    remove: async (id) => void held.delete(id),
  }
  return { shelf, held }
}

async function open(log = aLog(), ride: typeof spark | null = spark) {
  const store = createAppStore({ newId: countedIds('log'), shelf: null, taught: log.shelf })
  if (ride) store.getState().openRide(ride, 'log')
  const saved: Blob[] = []
  const createObjectURL = (blob: Blob) => {
    saved.push(blob)
    return 'blob:x'
  }
  vi.stubGlobal('URL', Object.assign(URL, { createObjectURL, revokeObjectURL: () => undefined }))
  page = rendered(store, <LogPlace now={() => NOW} writeTable={async (rows) => writeCsv(rows)} />)
  await page.settle()
  return { store, log, saved, entries: () => store.getState().taught }
}

const press = (name: string | RegExp) => page.press(page.find('button', name))
const type = (label: string | RegExp, text: string) => {
  const field = page.find('input, textarea', label)
  page.type(field, text)
  page.key(field, 'Enter')
}
const choose = (label: string, value: string) => page.choose(page.find('select', label) as HTMLSelectElement, value)

async function logOne(change: () => void = () => undefined): Promise<void> {
  press(/as taught/)
  change()
  press(/^save (to log|changes)/)
  await page.settle()
}

/** Leads the ride of a store from its first one to its end. */
function lead(store: Awaited<ReturnType<typeof open>>['store'], at: number): void {
  act(() => {
    store.getState().readyClass(at)
    store.getState().startClass(at, null)
    store.getState().endClass()
  })
}

describe('a class that was led', () => {
  const startedAt = () => (page.find('input', /actual start/) as HTMLInputElement).value

  it('has its entry opened where that is asked for, whatever place the log is asked from', async () => {
    const { store } = await open()
    lead(store, NOW - 3_600_000)
    act(() => store.getState().askForEntry())
    expect(startedAt()).toMatch(/^6:30\sPM$/)
    expect(store.getState().entryAsked).toBe(false)
    expect(store.getState().place).toBe('log')
  })

  it('is logged once: the next entry is another class, and the offer to log it goes', async () => {
    const { store, entries } = await open()
    lead(store, NOW - 3_600_000)
    const offer = { label: 'log this class', place: 'log' as const, entry: true as const }
    act(() => store.getState().notify({ kind: 'info', sentence: 'It is over.', offer }))
    await logOne()
    expect(entries()[0]).toMatchObject({ startedAt: '18:30' })
    expect(store.getState().notice).toBeNull()
    expect(store.getState().lastLed).toBeNull()
    press(/as taught/)
    expect(startedAt()).toMatch(/^12:10\sPM$/)
  })

  it('still waits when an entry of another day is put right', async () => {
    const { store } = await open()
    await logOne()
    lead(store, NOW - 3_600_000)
    press(/^edit/)
    press(/^save (to log|changes)/)
    await page.settle()
    expect(store.getState().lastLed).not.toBeNull()
  })
})

describe('logging a class', () => {
  it('starts from the plan and keeps what was put right, song by song; the plan stays as it is', async () => {
    const { store, entries } = await open()
    await logOne(() => {
      type('head count', '17')
      type('actual start', '12.14')
      choose('3 Tin Orchard Run: how it went', 'skipped')
      choose('1 Paper Comets over Harbour Nine: stars', '5')
      type('2 Brickworks Elevator: what changed', 'fours became eights')
    })
    expect(entries()).toHaveLength(1)
    expect(entries()[0]).toMatchObject({
      rideId: 'spark',
      day: '2026-11-25',
      bookedAt: '12:10',
      startedAt: '12:14',
      headCount: 17,
      room: 'Studio B, Quay Street',
    })
    expect(entries()[0]!.sections.map(({ outcome, stars, change }) => [outcome, stars, change])).toEqual([
      ['taught', 5, undefined],
      ['taught', undefined, 'fours became eights'],
      ['skipped', undefined, undefined],
      ...Array(3).fill(['taught', undefined, undefined]),
    ])
    expect(store.getState().ride).toBe(spark)
    expect(page.text()).toMatch(/started 12:14\sPM, scheduled 12:10\sPM/)
    expect(page.text()).toContain('17 riders')
    expect(page.text()).toContain('five stars for “Paper Comets over Harbour Nine”')
  })

  it('says what cannot be, and keeps the text in its field', async () => {
    await open()
    press(/as taught/)
    type('head count', 'many')
    expect(page.text()).toContain('Write how many rode as a whole number.')
    type('actual start', 'later')
    expect(page.text()).toContain('Write the time of day as 6:30 pm or 18:30.')
  })

  it('marks a block that was skipped as a change, and a song taken back is as long as it was', async () => {
    const { entries } = await open()
    await logOne(() => {
      page.press(page.find('input[type="checkbox"]', 'push 3, 0:21'))
      choose('3 Tin Orchard Run: how it went', 'skipped')
      choose('3 Tin Orchard Run: how it went', 'taught')
    })
    const [, , third, fourth] = entries()[0]!.sections
    expect(fourth!.outcome).toBe('changed')
    expect(fourth!.blocks.filter(({ skipped }) => skipped).map(({ name }) => name)).toEqual(['push 3'])
    expect(third!.seconds).toBeCloseTo(230.886, 2)
  })

  it('begins with the class as it was led, when it was led from the screen, after its end too', async () => {
    const { store, entries } = await open()
    const { readyClass, startClass, lead, endClass } = store.getState()
    const start = new Date(2026, 10, 24, 12, 13).getTime()
    readyClass(start)
    startClass(start, new Date(2026, 10, 24, 12, 10).getTime())
    lead({ kind: 'cut', cuts: [{ kind: 'song', section: 3 }] }, start + 60_000)
    endClass()
    await logOne()
    expect(entries()[0]).toMatchObject({ day: '2026-11-24', startedAt: '12:13' })
    expect(entries()[0]!.sections.map(({ outcome }) => outcome)).toEqual(['taught', 'taught', 'taught', 'skipped', 'taught', 'taught'])
  })

  it('an entry can be changed, deleted and put back', async () => {
    const { entries } = await open()
    await logOne()
    press('edit Twenty-Minute Spark of Nov 25, 2026')
    type('private note', 'fan broken')
    const note = page.find('textarea', 'private note')
    act(() => {
      note.focus()
      note.blur()
    })
    press('save changes')
    await page.settle()
    expect(entries().map(({ note: kept }) => kept)).toEqual(['fan broken'])
    press('delete Twenty-Minute Spark of Nov 25, 2026')
    await page.settle()
    expect(entries()).toEqual([])
    press('restore')
    await page.settle()
    expect(entries()).toHaveLength(1)
  })
})

describe('what the log tells', () => {
  const onDay = (entry: TaughtClass, day: string) => writeTaught({ ...entry, id: day, day })
  async function withWeeks(...days: string[]) {
    const first = await open()
    await logOne()
    const [entry] = first.entries()
    page.close()
    return open(aLog(...days.map((day) => onDay(entry!, day))))
  }

  it('how new the ride is to the people of its slot, and what to let rest', async () => {
    await withWeeks('2026-11-18', '2026-11-11', '2026-11-17')
    expect(page.text()).toContain('0% new for anyone who took the last 2 classes.')
    expect(page.host.querySelectorAll('.log-songs li')).toHaveLength(6)
    expect(page.text()).toContain('rest this song')
    choose(
      'compare with recent classes at',
      [...page.host.querySelectorAll('option')].find(({ textContent }) => textContent!.startsWith('Tuesday'))!.value,
    )
    expect(page.text()).toContain('the last class.')
  })

  it('the leader’s own week, with a word where a day has three classes', async () => {
    await withWeeks('2026-11-24', '2026-11-25')
    expect(page.text()).toContain('2 classes, load 203')
    expect(page.text()).toContain('Foster 1998')
    await logOne()
    await logOne()
    expect(page.text()).toContain('3 classes on Wednesday: save your voice and legs')
    expect(page.text()).toContain('“flush”')
    press('previous week')
    expect(page.text()).toContain('No class in this week.')
  })

  it('a long log by its last ten classes, and any of it by a word', async () => {
    const sample = taughtOf({ ride: spark, report: computeRide(spark) }, { id: 'one', day: '2026-01-01' })
    const entries = Array.from({ length: 40 }, (_, i) => ({
      ...sample,
      id: `class ${i}`,
      day: daysAfter('2026-11-24', -7 * i),
      ...(i === 33 && { note: 'The café’s fan is broken.' }),
      sections: sample.sections.map((section, n) => (i === 20 && n === 0 ? { ...section, title: 'Only Then' } : section)),
    }))
    await open(aLog(...entries.map(writeTaught)))
    const listed = () => page.host.querySelectorAll('.log-list li').length
    const find = (words: string) => page.type(page.find('input', 'find'), words)
    expect(listed()).toBe(10)
    press('show all 40')
    expect(listed()).toBe(40)
    press('only the last 10')
    expect(listed()).toBe(10)
    find('cafe FAN')
    expect(page.host.querySelector('.log-list')!.textContent).toContain('The café’s fan is broken.')
    expect(listed()).toBe(1)
    find('only then')
    expect(listed()).toBe(1)
    find('tuesday march')
    expect(listed()).toBe(5)
    find('no such thing')
    expect(listed()).toBe(0)
    expect(page.text()).toContain('No class in the log has “no such thing” in it.')
  })

  it('the songs used, as a table and as CSV', async () => {
    const { saved } = await withWeeks('2026-11-24', '2026-10-30')
    expect(page.text()).toContain('6 songs played from Nov 1, 2026 to Nov 25, 2026')
    press('save as CSV')
    await page.settle()
    const lines = (await saved[0]!.text()).trim().split('\r\n')
    expect(lines).toHaveLength(7)
    expect(lines[1]).toBe(
      '2026-11-24,12:10,"Studio B, Quay Street",Twenty-Minute Spark,Paper Comets over Harbour Nine,The Velvet Odometers,145,',
    )
    expect(page.text()).toContain('differs by country')
  })

  it('is there without a ride', async () => {
    await open(aLog(), null)
    expect(page.text()).toContain('Nothing yet.')
    expect(page.text()).not.toContain('compare with recent classes')
  })
})
