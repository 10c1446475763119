// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { QrPart } from '#features/handover/QrPart.tsx'
import { COMFORTABLE_QR } from '#features/handover/qrComfort.ts'
import { aStore } from '#tests/support/aStore.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'

const onShown = vi.fn()
let page: Rendered
afterEach(() => {
  page.close()
  onShown.mockClear()
})

const open = async (link: string, qrOf: (text: string) => Promise<boolean[][]>) => {
  page = rendered(aStore().store, <QrPart link={link} qrOf={qrOf} onShown={onShown} />)
  await act(async () => {})
}

describe('the code to scan', () => {
  it('is drawn of the very link, with its length', async () => {
    const qrOf = vi.fn(async () => [[true, false, true]])
    await open('https://rides.example/#r1.abc', qrOf)
    expect(qrOf).toHaveBeenCalledExactlyOnceWith('https://rides.example/#r1.abc')
    // Whoever points a camera at it has the ride: it went out, once.
    expect(onShown).toHaveBeenCalledOnce()
    expect(page.find('svg', 'QR code of the link').querySelector('path')!.getAttribute('d')).toBe('M0 0h1v1h-1zM2 0h1v1h-1z')
    expect(page.text()).toContain('29 characters')
  })

  it('gives its reason and the other ways where it would be too fine, and makes none', async () => {
    const qrOf = vi.fn(async () => [[true]])
    await open('a'.repeat(COMFORTABLE_QR + 1), qrOf)
    expect(qrOf).not.toHaveBeenCalled()
    expect(onShown).not.toHaveBeenCalled()
    expect(page.text()).toContain('1,001 of about 1,000 characters')
    expect(page.text()).toContain('too long for a QR code')
    expect(page.text()).toContain('the file instead')
  })

  it('says so where it cannot be made', async () => {
    await open('https://rides.example/', () => Promise.reject(new Error('offline')))
    expect(page.text()).toContain('couldn’t be drawn')
  })
})
