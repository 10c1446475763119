import { act, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import { vi } from 'vitest'
import type { AppStore } from '#store/state.ts'
import { AppStoreProvider } from '#store/useApp.ts'

/** What a test sees of drawn components, and its hands on them. */
export interface Rendered {
  host: HTMLElement
  /** All words, as read from top to bottom. */
  text: () => string
  /** The one element of the selector whose words, name or label match. */
  find: (selector: string, words: string | RegExp) => HTMLElement
  press: (element: HTMLElement) => void
  type: (element: HTMLElement, text: string) => void
  /** Brings the pointer over an element; over nothing with null. */
  point: (element: HTMLElement | null) => void
  choose: (element: HTMLSelectElement, value: string) => void
  key: (element: HTMLElement, key: string) => void
  settle: () => Promise<void>
  close: () => void
}

/** Draws components into the document with a store around them. Needs happy-dom. */
export function rendered(store: AppStore, node: ReactNode): Rendered {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true)
  const host = document.body.appendChild(document.createElement('div'))
  const root = createRoot(host)
  act(() => root.render(<AppStoreProvider value={store}>{node}</AppStoreProvider>))
  const matches = (words: string | RegExp) => (element: Element) => {
    const said = [element.getAttribute('aria-label'), element.textContent, labelOf(host, element)]
    return said.some((text) => (typeof words === 'string' ? text?.trim() === words : words.test(text ?? '')))
  }
  let pointed: HTMLElement | null = null
  return {
    host,
    text: () => host.textContent ?? '',
    find: (selector, words) => {
      const found = [...host.querySelectorAll<HTMLElement>(selector)].filter(matches(words))
      if (found.length !== 1) throw new Error(`${found.length} of ${selector} are called ${words}`)
      return found[0]!
    },
    press: (element) => act(() => element.click()),
    type: (element, text) =>
      act(() => {
        const kind = element instanceof HTMLTextAreaElement ? HTMLTextAreaElement : HTMLInputElement
        // React listens to the native setter, not to the property it overrides.
        Object.getOwnPropertyDescriptor(kind.prototype, 'value')!.set!.call(element, text)
        element.dispatchEvent(new Event('input', { bubbles: true }))
      }),
    point: (element) =>
      act(() => {
        // React makes entering and leaving out of these two.
        pointed?.dispatchEvent(new PointerEvent('pointerout', { bubbles: true, clientX: 90, relatedTarget: element ?? document.body }))
        element?.dispatchEvent(new PointerEvent('pointerover', { bubbles: true, clientX: 10, relatedTarget: pointed ?? document.body }))
        pointed = element
      }),
    choose: (element, value) =>
      act(() => {
        Object.getOwnPropertyDescriptor(HTMLSelectElement.prototype, 'value')!.set!.call(element, value)
        element.dispatchEvent(new Event('change', { bubbles: true }))
      }),
    key: (element, key) => act(() => void element.dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true }))),
    settle: () => act(() => new Promise<void>((resolve) => setTimeout(resolve, 0))),
    close: () => {
      act(() => root.unmount())
      host.remove()
    },
  }
}

function labelOf(host: Element, element: Element): string | null | undefined {
  const label = element.closest('label') ?? (element.id ? host.querySelector(`label[for="${CSS.escape(element.id)}"]`) : null)
  return label?.textContent
}
