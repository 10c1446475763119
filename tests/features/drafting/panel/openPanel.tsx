import { act, type ReactNode } from 'react'
import { createRoot } from 'react-dom/client'
import { vi } from 'vitest'
import { computeRide } from '#engine/computeRide.ts'
import { SelectionPanel } from '#features/drafting/panel/SelectionPanel.tsx'
import type { Block, Ride } from '#plan/model.ts'
import { findBlock } from '#plan/places.ts'
import { createAppStore } from '#store/createAppStore.ts'
import type { ProfileShelf } from '#store/ports.ts'
import type { AppStore } from '#store/state.ts'
import { AppStoreProvider } from '#store/useApp.ts'
import { countedIds } from '#tests/support/smallRide.ts'

type Editable = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement

/** The panel, or other fields, over a real store with a ride open, and hands to use it with. */
export interface Panel {
  store: AppStore
  host: HTMLElement
  ride: () => Ride
  block: (id: string) => Block
  /** Steps that can be undone. */
  steps: () => number
  text: () => string
  /** The field of that label, as a screen reader finds it. */
  field: (label: string) => Editable
  /** The sentence a field is described by. */
  under: (label: string) => string
  /** Types over a field and commits with Enter. */
  type: (label: string, text: string) => void
  /** Types over a field without committing. */
  draft: (label: string, text: string) => void
  leave: (label: string) => void
  press: (label: string, key: string, more?: KeyboardEventInit) => void
  choose: (label: string, value: string) => void
  /** Presses the button, box or radio of that name. */
  click: (name: string) => void
  close: () => void
}

export function openPanel(
  ride: Ride,
  select?: (store: AppStore) => void,
  drawn: ReactNode = <SelectionPanel />,
  profiles: ProfileShelf | null = null,
): Panel {
  vi.stubGlobal('IS_REACT_ACT_ENVIRONMENT', true)
  const store = createAppStore({ compute: computeRide, newId: countedIds(), shelf: null, profiles })
  store.getState().openRide(ride)
  select?.(store)
  const host = document.body.appendChild(document.createElement('div'))
  const root = createRoot(host)
  act(() => root.render(<AppStoreProvider value={store}>{drawn}</AppStoreProvider>))

  const named = (selector: string, name: string): HTMLElement => {
    const found = [...host.querySelectorAll<HTMLElement>(selector)].filter((element) => nameOf(host, element) === name)
    if (found.length !== 1) throw new Error(`${found.length} elements are called “${name}”: ${names(host, selector)}`)
    return found[0]!
  }
  const field = (label: string) => named('input:not([type=radio], [type=checkbox]), textarea, select, [role=slider]', label) as Editable
  const draft = (label: string, text: string) =>
    act(() => {
      const element = field(label)
      element.focus()
      setNative(element, text)
      element.dispatchEvent(new Event('input', { bubbles: true }))
    })
  const press = (label: string, key: string, more: KeyboardEventInit = {}) =>
    act(() => void field(label).dispatchEvent(new KeyboardEvent('keydown', { key, bubbles: true, cancelable: true, ...more })))
  const leave = (label: string) => act(() => void field(label).dispatchEvent(new FocusEvent('focusout', { bubbles: true })))

  return {
    store,
    host,
    ride: () => store.getState().ride!,
    block: (id) => findBlock(store.getState().ride!, id)!.block,
    steps: () => store.getState().past.length,
    text: () => host.textContent ?? '',
    field,
    under: (label) => host.querySelector(`[id="${field(label).getAttribute('aria-describedby')}"]`)?.textContent ?? '',
    draft,
    type: (label, text) => {
      draft(label, text)
      if (field(label) instanceof HTMLTextAreaElement) leave(label)
      else press(label, 'Enter')
    },
    leave,
    press,
    choose: (label, value) =>
      act(() => {
        setNative(field(label), value)
        field(label).dispatchEvent(new Event('change', { bubbles: true }))
      }),
    click: (name) => act(() => named('button, input[type=radio], input[type=checkbox]', name).click()),
    close: () => {
      act(() => root.unmount())
      host.remove()
    },
  }
}

/** React listens to the native setter, not to the property it puts over it. */
function setNative(element: Editable, text: string) {
  const prototype = Object.getPrototypeOf(element) as object
  Object.getOwnPropertyDescriptor(prototype, 'value')!.set!.call(element, text)
}

const names = (host: HTMLElement, selector: string) =>
  [...host.querySelectorAll<HTMLElement>(selector)].map((element) => nameOf(host, element)).join(', ')

/** The accessible name: its own, its label's, or its text. */
function nameOf(host: HTMLElement, element: HTMLElement): string {
  const spoken = element.getAttribute('aria-label')
  if (spoken) return spoken
  const by = element.getAttribute('aria-labelledby')
  if (by)
    return words(
      by
        .split(' ')
        .map((id) => host.querySelector(`[id="${id}"]`)?.textContent ?? '')
        .join(' '),
    )
  const label = (element.id && host.querySelector(`label[for="${element.id}"]`)) || element.closest('label')
  return words((label ?? element).textContent ?? '')
}

const words = (text: string) => text.replace(/\s+/g, ' ').trim()
