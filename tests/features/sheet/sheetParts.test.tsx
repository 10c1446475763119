// @vitest-environment happy-dom
import { act, type ReactNode } from 'react'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { ChecklistPart } from '#features/sheet/checklist/ChecklistPart.tsx'
import { ExportPart } from '#features/sheet/ExportPart.tsx'
import { EXPORTS, type MakeExport } from '#features/sheet/exportKinds.ts'
import { ShorthandField } from '#features/sheet/ShorthandField.tsx'
import { StandInFields } from '#features/sheet/StandInFields.tsx'
import { useShorthand } from '#features/sheet/useShorthand.ts'
import { useApp } from '#store/useApp.ts'
import { aStore } from '#tests/support/aStore.ts'
import { demoRide } from '#tests/support/demoRides.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { words } from '#words/words.ts'

const ride = demoRide('spark')
const report = computeRide(ride)
let page: Rendered

const Own = () => <ShorthandField {...useShorthand()} />
const Fields = () => <StandInFields ride={useApp((state) => state.shown)!} />

beforeEach(() => localStorage.clear())
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

const draw = (node: ReactNode, made = aStore()) => {
  made.state().openRide(ride, 'sheet')
  page = rendered(made.store, node)
  return made
}
const commit = (label: string, text: string) => {
  const field = page.find('textarea, input', label)
  page.type(field, text)
  act(() => {
    field.focus()
    field.blur()
  })
}

describe('abbreviations', () => {
  it('is kept on this device, and a line that is none is named', () => {
    draw(<Own />)
    commit('abbreviations, one per line', 'TB = travel-back\nstg')
    expect(page.text()).toContain('Write “stg” as an abbreviation')
    expect(localStorage.getItem('ridewright.shorthand')).toBeNull()
    commit('abbreviations, one per line', 'TB = travel-back\nstg = standing')
    expect(page.text()).toContain('your abbreviations, 2 entries')
    page.close()
    draw(<Own />)
    expect((page.find('textarea', 'abbreviations, one per line') as HTMLTextAreaElement).value).toBe('TB = travel-back\nstg = standing')
  })
})

describe('notes for a sub', () => {
  it('belong to the ride, one undo step each, and go again', () => {
    const { state } = draw(<Fields />)
    commit('the room', ' Key at the desk. ')
    commit('must not', 'No lights off.')
    expect(state().ride!.standIn).toEqual({ room: 'Key at the desk.', mustNot: 'No lights off.' })
    state().undo()
    expect(state().ride!.standIn).toEqual({ room: 'Key at the desk.' })
    commit('the room', '')
    expect(state().ride).not.toHaveProperty('standIn')
  })
})

describe('the checklist on the screen', () => {
  const ticks = () => [...page.host.querySelectorAll<HTMLInputElement>('input:checked')].length

  it('keeps its ticks over a reload, for this ride alone', () => {
    draw(<ChecklistPart ride={ride} report={report} />)
    expect(page.text()).toContain('0 of 16 done')
    page.press(page.find('input', 'shuffle and repeat off'))
    page.press(page.find('input', /^microphone/))
    expect(page.text()).toContain('2 of 16 done')
    page.close()
    draw(<ChecklistPart ride={ride} report={report} />)
    expect(ticks()).toBe(2)
    page.close()
    draw(<ChecklistPart ride={{ ...ride, id: 'another' }} report={report} />)
    expect(ticks()).toBe(0)
  })

  it('is cleared at once', () => {
    draw(<ChecklistPart ride={ride} report={report} />)
    page.press(page.find('input', 'shuffle and repeat off'))
    page.press(page.find('button', 'clear all'))
    expect(ticks()).toBe(0)
  })
})

describe('exports', () => {
  it('are files with names, made when asked for, for the day and time given', async () => {
    const made: unknown[] = []
    const makeExport: MakeExport = async (id, _ride, _report, day) => {
      made.push([id, day])
      return { data: 'x', type: 'text/plain' }
    }
    const names: string[] = []
    vi.stubGlobal('URL', Object.assign(URL, { createObjectURL: () => 'blob:x', revokeObjectURL: () => undefined }))
    vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
      names.push(this.download)
    })
    const { state } = draw(<ExportPart {...{ ride, report, makeExport }} today="2026-11-25" />)
    expect(made).toEqual([])
    commit('starts at', '6.30 pm')
    for (const { id } of EXPORTS) {
      page.press(page.find('button', words.sheet.exportName({ id })))
      await page.settle()
    }
    expect(names).toEqual(EXPORTS.map(({ ending }) => `twenty-minute-spark.${ending}`))
    expect(made).toContainEqual(['calendar', { day: '2026-11-25', startsAt: '18:30' }])
    expect(state().announcement).toBe('Saved twenty-minute-spark.ics')
    vi.restoreAllMocks()
  })

  it('say so where one cannot be made', async () => {
    const { state } = draw(<ExportPart {...{ ride, report }} makeExport={() => Promise.reject(new Error('no'))} today="2026-11-25" />)
    page.press(page.find('button', 'CSV'))
    await page.settle()
    expect(state().notice).toMatchObject({ kind: 'problem', sentence: 'twenty-minute-spark.csv couldn’t be made.' })
  })
})
