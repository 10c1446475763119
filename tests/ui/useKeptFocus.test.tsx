// @vitest-environment happy-dom
import { act, useRef, useState } from 'react'
import { describe, expect, it } from 'vitest'
import { aStore } from '#tests/support/aStore.ts'
import { rendered } from '#tests/support/rendered.tsx'
import { useKeptFocus } from '#ui/useKeptFocus.ts'

/** A bar above the page that goes with its own press, and a list whose entries do. */
function Page() {
  const whole = useRef<HTMLDivElement>(null)
  useKeptFocus(whole)
  const [hasBar, setHasBar] = useState(true)
  const [entries, setEntries] = useState(['one', 'two', 'three'])
  return (
    <div ref={whole}>
      <header>
        <button type="button">theme</button>
      </header>
      {hasBar && (
        <section>
          <button type="button" onClick={() => setHasBar(false)}>
            close the bar
          </button>
        </section>
      )}
      <main tabIndex={-1}>
        <ul>
          {entries.map((entry) => (
            <li key={entry}>
              <button type="button" onClick={() => setEntries(entries.filter((each) => each !== entry))}>
                {entry}
              </button>
              {entry !== 'two' && (
                <button type="button" className="mend" onClick={() => setEntries(entries.filter((each) => each !== entry))}>
                  mend {entry}
                </button>
              )}
            </li>
          ))}
        </ul>
      </main>
    </div>
  )
}

describe('the focus, when what has it goes', () => {
  const pressed = async (page: ReturnType<typeof rendered>, name: string) => {
    const button = page.find('button', name) as HTMLButtonElement
    act(() => button.focus())
    page.press(button)
    await act(() => new Promise((done) => setTimeout(done)))
    return document.activeElement
  }

  it('goes to what comes to stand in its place, or the last there is', async () => {
    const page = rendered(aStore().store, <Page />)
    expect((await pressed(page, 'two'))?.textContent).toBe('three')
    expect((await pressed(page, 'three'))?.textContent).toBe('one')
  })

  it('goes from one repair to the next, past a row that has none', async () => {
    const page = rendered(aStore().store, <Page />)
    expect((await pressed(page, 'mend one'))?.textContent).toBe('mend three')
    expect((await pressed(page, 'mend three'))?.textContent).toBe('two')
  })

  it('goes to the page from a bar that stood by itself, and to no other control', async () => {
    const page = rendered(aStore().store, <Page />)
    expect((await pressed(page, 'close the bar'))?.tagName).toBe('MAIN')
  })
})
