// @vitest-environment happy-dom
import { act, type ReactNode } from 'react'
import { createRoot, type Root } from 'react-dom/client'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { EffortPicker } from '#ui/EffortPicker.tsx'
import { Field } from '#ui/Field.tsx'
import { NumberField } from '#ui/NumberField.tsx'

let host: HTMLElement
let root: Root

beforeEach(() => {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true)
  host = document.body.appendChild(document.createElement('div'))
  root = createRoot(host)
})
afterEach(() => {
  act(() => root.unmount())
  host.remove()
})

const show = (node: ReactNode) => act(() => root.render(node))
const input = () => host.querySelector('input')!
const press = (element: Element, key: string, more: KeyboardEventInit = {}) =>
  act(() => void element.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more })))
const type = (text: string) =>
  act(() => {
    // React listens to the native setter, not to the property it overrides.
    Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')!.set!.call(input(), text)
    input().dispatchEvent(new Event('input', { bubbles: true }))
  })
const leave = () => act(() => void input().dispatchEvent(new FocusEvent('focusout', { bubbles: true })))

describe('a field', () => {
  const refuseEmpty = (text: string) => (text === '' ? 'A ride needs a title.' : null)

  it('commits on Enter and on leaving, not while typing', () => {
    const commit = vi.fn(refuseEmpty)
    show(<Field label="title" value="Spark" onCommit={commit} />)
    type('Sparks')
    expect(commit).not.toHaveBeenCalled()
    press(input(), 'Enter')
    expect(commit).toHaveBeenLastCalledWith('Sparks')
    type('Sparkle')
    leave()
    expect(commit).toHaveBeenLastCalledWith('Sparkle')
  })

  it('keeps refused text with the reason under it', () => {
    show(<Field label="title" value="Spark" onCommit={refuseEmpty} />)
    type('')
    leave()
    expect(input().value).toBe('')
    expect(input().getAttribute('aria-invalid')).toBe('true')
    expect(document.getElementById(input().getAttribute('aria-describedby')!)!.textContent).toBe('A ride needs a title.')
  })

  it('restores the committed text on Escape, and leaving then commits nothing', () => {
    const commit = vi.fn(refuseEmpty)
    show(<Field label="title" value="Spark" onCommit={commit} />)
    type('Sparks')
    press(input(), 'Escape')
    expect(input().value).toBe('Spark')
    leave()
    expect(commit).not.toHaveBeenCalled()
  })

  it('follows a value that changes from outside', () => {
    show(<Field label="title" value="Spark" onCommit={refuseEmpty} />)
    type('')
    leave()
    show(<Field label="title" value="Ridge" onCommit={refuseEmpty} />)
    expect(input().value).toBe('Ridge')
    expect(input().getAttribute('aria-invalid')).toBe('false')
  })
})

describe('a number field', () => {
  const parse = (text: string) =>
    Number.isFinite(Number(text))
      ? { ok: true as const, value: Number(text) }
      : { ok: false as const, problem: `“${text}” is not a number.` }

  it('commits what the parser reads and shows what it refuses', () => {
    const commit = vi.fn()
    show(<NumberField label="tempo" value={120} format={String} parse={parse} onCommit={commit} />)
    type('fast')
    press(input(), 'Enter')
    expect(commit).not.toHaveBeenCalled()
    expect(host.textContent).toContain('“fast” is not a number.')
    type('132')
    press(input(), 'Enter')
    expect(commit).toHaveBeenCalledWith(132)
  })

  it('steps by arrows, further with Shift', () => {
    const commit = vi.fn()
    const step = (value: number, direction: 1 | -1, large: boolean) => value + direction * (large ? 10 : 1)
    show(<NumberField label="tempo" value={120} format={String} parse={parse} onCommit={commit} step={step} />)
    press(input(), 'ArrowUp')
    press(input(), 'ArrowDown', { shiftKey: true })
    expect(commit.mock.calls).toEqual([[121], [110]])
  })
})

describe('the effort picker', () => {
  it.each([
    ['ArrowRight', {}, 8],
    ['ArrowDown', {}, 6],
    ['ArrowUp', { shiftKey: true }, 7.5],
    ['PageUp', {}, 9],
    ['Home', {}, 0],
    ['End', {}, 10],
    ['3', {}, 3],
  ])('%s %o from 7 gives %d', (key, more, expected) => {
    const change = vi.fn()
    show(<EffortPicker label="effort" value={7} onChange={change} />)
    press(host.querySelector('[role=slider]')!, key, more)
    expect(change).toHaveBeenCalledExactlyOnceWith(expected)
  })

  it('is held at the ends and says its value in words', () => {
    const change = vi.fn()
    show(<EffortPicker label="effort" value={10} onChange={change} />)
    const slider = host.querySelector('[role=slider]')!
    press(slider, 'ArrowRight')
    expect(change).not.toHaveBeenCalled()
    expect(slider.getAttribute('aria-valuetext')).toBe('10 of 10')
  })
})
