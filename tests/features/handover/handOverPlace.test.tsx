// @vitest-environment happy-dom
import { afterEach, describe, expect, it, vi } from 'vitest'
import { HandOverPlace } from '#features/handover/HandOverPlace.tsx'
import { ReceivedBar } from '#features/handover/ReceivedBar.tsx'
import { shareable } from '#plan/link/shareable.ts'
import type { Ride } from '#plan/model.ts'
import { aStore } from '#tests/support/aStore.ts'
import { decodeLink } from '#tests/support/decodeLink.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { smallRide } from '#tests/support/smallRide.ts'

let page: Rendered
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

const ride: Ride = { ...smallRide(), title: 'Mine', privateNotes: 'the fan is broken' }

function open(shown = ride) {
  const made = aStore()
  made.state().openRide(shown, 'handover')
  page = rendered(
    made.store,
    <>
      <ReceivedBar />
      <HandOverPlace page="https://example.org/rides/#/handover/ride" onOpenFile={() => undefined} qrOf={() => new Promise(() => {})} />
    </>,
  )
  return made
}

const link = () => (page.find('textarea', 'link') as HTMLTextAreaElement).value

describe('handing over', () => {
  it('shows a link that holds the ride without what never travels, and says so', () => {
    open()
    expect(link().startsWith('https://example.org/rides/#r1.')).toBe(true)
    expect(decodeLink(link())).toEqual({ ok: true, ride: shareable(ride) })
    expect(page.text()).toContain(`${link().length} characters`)
    expect(page.text()).toContain('3 songs, 2 with music')
    expect(page.text()).toContain('your private notes')
    expect(page.text()).not.toContain('Longer than')
    expect(page.find('a', 'email it').getAttribute('href')).toContain(encodeURIComponent(link()))
  })

  it('says before it is sent that notes for a substitute and what tells a file again go with it', () => {
    open()
    const [notes, file] = ['the notes for a sub', 'audio fingerprints of the files']
    for (const phrase of [notes, file]) expect(page.text()).not.toContain(phrase)
    page.close()
    const heard = ride.sections.map((section) => ({ ...section, ...(section.song && { song: { ...section.song, fingerprint: 'f1' } }) }))
    open({ ...ride, sections: heard, standIn: { room: 'The key is at the desk.' } })
    for (const phrase of [notes, file, 'the blocks you marked as needing practice']) expect(page.text()).toContain(phrase)
  })

  it('says when the link is longer than many programs carry, and offers the file', () => {
    const letters = Array.from({ length: 600 }, (_, index) => String.fromCharCode(0x4e00 + ((index * index * 7919) % 20_000))).join('')
    open({ ...ride, sections: ride.sections.map((section) => ({ ...section, notes: `${section.id} ${letters}` })) })
    expect(link().length).toBeGreaterThan(2000)
    expect(page.text()).toContain('Longer than 2,000 characters')
    expect(page.find('a', 'copy, then email').getAttribute('href')).not.toContain('r1.')
  })

  it('copies the link', async () => {
    const writeText = vi.fn(async () => undefined)
    vi.stubGlobal('navigator', { clipboard: { writeText } })
    const { state } = open()
    page.press(page.find('button', 'copy link'))
    await page.settle()
    expect(writeText).toHaveBeenCalledExactlyOnceWith(link())
    expect(state().announcement).toBe('Link copied.')
  })

  it('selects the link where the page may not copy', async () => {
    vi.stubGlobal('navigator', { clipboard: { writeText: () => Promise.reject(new DOMException('no', 'NotAllowedError')) } })
    open()
    page.press(page.find('button', 'copy link'))
    await page.settle()
    const field = page.find('textarea', 'link') as HTMLTextAreaElement
    expect(document.activeElement).toBe(field)
    expect([field.selectionStart, field.selectionEnd]).toEqual([0, field.value.length])
    expect(page.text()).toContain('doesn’t let the page copy')
  })

  it('offers the share sheet where there is one', async () => {
    const share = vi.fn(async () => undefined)
    vi.stubGlobal('navigator', { share })
    open()
    page.press(page.find('button', 'share…'))
    await page.settle()
    expect(share).toHaveBeenCalledExactlyOnceWith({ title: 'Mine', url: link() })
  })

  it('has no share button where there is none', () => {
    vi.stubGlobal('navigator', {})
    open()
    expect(() => page.find('button', 'share…')).toThrow()
  })
})

describe('a received ride', () => {
  const theirs: Ride = { ...smallRide(), id: 'theirs', title: 'Theirs' }

  function receive(place: 'draft' | 'start' = 'draft') {
    const made = aStore()
    made.state().openRide(ride)
    made.state().receiveRide(theirs, place)
    page = rendered(made.store, <ReceivedBar />)
    return made
  }

  it('is kept as a copy with an id of its own that knows where it came from', () => {
    const { state } = receive()
    expect(page.text()).toContain('Shared ride “Theirs”, read-only.')
    page.press(page.find('button', 'keep a copy'))
    expect(state().ride).toMatchObject({ title: 'Theirs', parent: { rideId: 'theirs' } })
    expect(state().ride!.id).not.toBe('theirs')
    expect(page.text()).toBe('')
  })

  it('is put away for the ride behind it', () => {
    const { state } = receive()
    page.press(page.find('button', 'close, back to my ride'))
    expect(state()).toMatchObject({ shown: ride, received: null })
  })

  it('is found again from the start', () => {
    const { state } = receive('start')
    page.press(page.find('button', 'show it'))
    expect(state()).toMatchObject({ place: 'draft', shown: theirs })
  })
})
