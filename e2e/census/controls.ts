import type { Page } from '@playwright/test'

/** Something on the page that answers a hand. */
export interface Control {
  role: string
  name: string
  /** Where it stands, by the names of what is around it, from the outside in. */
  where: string
  /** A path that finds it again while the page is as it was. */
  path: string
  disabled: boolean
  /** One of what is chosen on the stage. */
  chosen: boolean
  /** Alike things in a row, by what they look like; the first of them is 0. */
  place: { of: string; index: number; last: boolean }
  /** One of the rows of a list: what is true of the first and the last of them is true of all. */
  isRow: boolean
}

/** What answers a hand, whatever it is drawn as. */
const INTERACTIVE = [
  'a[href]',
  'button',
  'input:not([type="hidden"])',
  'select',
  'textarea',
  'summary',
  '[tabindex]:not([tabindex="-1"])',
  ...['button', 'link', 'option', 'slider', 'checkbox', 'radio', 'switch', 'tab', 'menuitem', 'spinbutton'].map(
    (role) => `[role="${role}"]`,
  ),
  '[data-hand]',
].join(', ')

/** Every control that can be seen, in the order of the page, as assistive technology calls it. */
export async function controlsOf(page: Page): Promise<Control[]> {
  return page.evaluate((interactive) => {
    const roleOf = (element: Element): string => {
      const role = element.getAttribute('role')
      if (role) return role
      if (element instanceof HTMLAnchorElement) return 'link'
      if (element instanceof HTMLButtonElement) return 'button'
      if (element instanceof HTMLSelectElement) return 'list'
      if (element instanceof HTMLTextAreaElement) return 'text'
      if (element instanceof HTMLInputElement) {
        if (['checkbox', 'radio', 'file', 'range', 'date', 'time', 'number'].includes(element.type)) return element.type
        return ['button', 'submit'].includes(element.type) ? 'button' : 'text'
      }
      return element.tagName === 'SUMMARY'
        ? 'fold'
        : (element as HTMLElement).dataset.hand
          ? `hand ${(element as HTMLElement).dataset.hand}`
          : 'stop'
    }
    const clean = (text: string | null | undefined) => (text ?? '').replace(/\s+/g, ' ').trim()
    const nameOf = (element: Element): string => {
      const by = element.getAttribute('aria-labelledby')
      if (by)
        return clean(
          by
            .split(' ')
            .map((id) => document.getElementById(id)?.textContent)
            .join(' '),
        )
      const label = element.getAttribute('aria-label')
      if (label) return clean(label)
      if (element instanceof HTMLInputElement || element instanceof HTMLSelectElement || element instanceof HTMLTextAreaElement) {
        const labels = [...(element.labels ?? [])].map((own) => {
          const copy = own.cloneNode(true) as Element
          for (const inner of copy.querySelectorAll('select, textarea')) inner.remove()
          return copy.textContent
        })
        return clean(labels.join(' ') || element.title || element.getAttribute('placeholder'))
      }
      return clean(element.textContent || element.getAttribute('title'))
    }
    const isSeen = (element: Element): boolean => {
      if (!element.checkVisibility({ visibilityProperty: true, opacityProperty: true })) return false
      if (element.closest('[inert]')) return false
      // Drawn for assistive technology only, and answered by the label around it.
      const box = (element.closest('label') ?? element).getBoundingClientRect()
      return box.width > 1 && box.height > 1
    }
    const around = (element: Element): string => {
      const names: string[] = []
      for (let outer = element.parentElement; outer; outer = outer.parentElement) {
        if (!outer.matches('[role="dialog"], dialog, nav, aside, section, fieldset, header, main, form, [role="group"], [role="listbox"]'))
          continue
        const label =
          outer.getAttribute('aria-label') ?? clean(outer.querySelector(':scope > legend, :scope > h2, :scope > h3')?.textContent)
        names.unshift(label || outer.tagName.toLowerCase())
      }
      return names.join(' > ')
    }
    const pathTo = (element: Element): string => {
      const steps: string[] = []
      for (let at: Element | null = element; at && at !== document.body; at = at.parentElement)
        steps.unshift(`${at.tagName.toLowerCase()}:nth-child(${[...at.parentElement!.children].indexOf(at) + 1})`)
      return `body > ${steps.join(' > ')}`
    }
    const lookOf = (element: Element) =>
      `${element.tagName}.${[...element.classList].join('.')} ${(element as HTMLElement).dataset.tone ?? ''} ${roleOf(element)}`
    const lists = [...document.querySelectorAll('ul, ol, tbody')]
    // A dialog in front is all there is.
    const front = [...document.querySelectorAll('dialog[open]')].at(-1) ?? document.body
    const found = [...front.querySelectorAll(interactive)].filter(isSeen)
    const rows = new Map<string, Element[]>()
    const rowOf = (element: Element) =>
      `${lookOf(element)} in ${around(element)}, list ${lists.indexOf(element.closest('ul, ol, tbody') ?? document.body)}`
    for (const element of found) rows.set(rowOf(element), [...(rows.get(rowOf(element)) ?? []), element])
    return found.map((element) => {
      const row = rows.get(rowOf(element))!
      const index = row.indexOf(element)
      return {
        role: roleOf(element),
        name: nameOf(element),
        where: around(element),
        path: pathTo(element),
        chosen: element.getAttribute('aria-selected') === 'true',
        disabled: element.matches(':disabled, [aria-disabled="true"]'),
        place: { of: rowOf(element), index, last: index === row.length - 1 },
        isRow: element.closest('li, tr, .blocks, .tray, .song, .setup-rules') !== null,
      }
    })
  }, INTERACTIVE)
}
