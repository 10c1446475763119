// @vitest-environment happy-dom
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { ErrorBoundary } from '#app/ErrorBoundary.tsx'
import { aStore } from '#tests/support/aStore.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'

let page: Rendered
beforeEach(() => {
  // React reports what a boundary catches; that it does is no failure here.
  vi.spyOn(console, 'error').mockImplementation(() => undefined)
})
afterEach(() => {
  page.close()
  vi.restoreAllMocks()
})

function Screen({ breaks }: { breaks: () => boolean }) {
  if (breaks()) throw new Error('no such block')
  return <p>all is well</p>
}

function open(breaks: () => boolean, download = true) {
  const hands = { onDownload: vi.fn(() => download), onReload: vi.fn(), onLeave: vi.fn() }
  page = rendered(
    aStore().store,
    <ErrorBoundary {...hands}>
      <Screen breaks={breaks} />
    </ErrorBoundary>,
  )
  return hands
}

describe('a screen that breaks', () => {
  it('is nothing to see while it does not', () => {
    open(() => false)
    expect(page.text()).toBe('all is well')
  })

  it('says so in words, with the reason, and hands out the ride', () => {
    const { onDownload, onReload } = open(() => true)
    expect(page.text()).toContain('Something went wrong here.')
    expect(page.text()).toContain('no such block')
    page.press(page.find('button', 'download the ride'))
    expect(onDownload).toHaveBeenCalledOnce()
    expect(page.text()).toContain('The file is in your downloads.')
    page.press(page.find('button', 'reload'))
    expect(onReload).toHaveBeenCalledOnce()
  })

  it('says when there is no ride to hand out', () => {
    open(() => true, false)
    page.press(page.find('button', 'download the ride'))
    expect(page.text()).toContain('nothing to download')
  })

  it('is left for the list of rides, and is whole again once its cause is gone', () => {
    let broken = true
    const { onLeave } = open(() => broken)
    broken = false
    page.press(page.find('button', 'my rides'))
    expect(onLeave).toHaveBeenCalledOnce()
    expect(page.text()).toBe('all is well')
  })
})
