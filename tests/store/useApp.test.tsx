// @vitest-environment happy-dom
import { act } from 'react'
import { createRoot } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { findBlock } from '#plan/places.ts'
import { AppStoreProvider, useApp } from '#store/useApp.ts'
import { aStore } from '#tests/support/aStore.ts'
import { smallRide } from '#tests/support/smallRide.ts'

beforeEach(() => vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true))
afterEach(() => vi.unstubAllGlobals())

const drawn = { a: 0, b: 0 }

function Named({ id }: { id: 'a' | 'b' }) {
  const block = useApp(({ shown }) => shown && findBlock(shown, id)?.block)
  drawn[id]++
  return <p>{block?.feel}</p>
}

const Lost = () => <p>{useApp(({ place }) => place)}</p>

describe('useApp', () => {
  it('draws a part again only when that part is another object', () => {
    const ride = smallRide()
    const { store, state } = aStore()
    state().openRide(ride)
    const root = createRoot(document.body.appendChild(document.createElement('div')))
    act(() =>
      root.render(
        <AppStoreProvider value={store}>
          <Named id="a" />
          <Named id="b" />
        </AppStoreProvider>,
      ),
    )
    act(() => void state().run(patchBlock(ride, { blockId: 'a', patch: { feel: 'heavy, still smooth' } })))
    expect(drawn).toEqual({ a: 2, b: 1 })
    expect(document.body.textContent).toBe('heavy, still smooth')
    act(() => void state().run(patchBlock(ride, { blockId: 'a', patch: { feel: 'heavy, still smooth' } })))
    expect(drawn).toEqual({ a: 2, b: 1 })
    act(() => root.unmount())
  })

  it('says so where there is no store', () => {
    const quiet = vi.spyOn(console, 'error').mockImplementation(() => undefined)
    expect(() => act(() => createRoot(document.createElement('div')).render(<Lost />))).toThrow('AppStoreProvider')
    quiet.mockRestore()
  })
})
