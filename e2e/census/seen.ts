import type { Page } from '@playwright/test'

/** What a person would find on the page, in lines, so that two moments can be told apart and the difference shown. */
export interface Seen {
  lines: string[]
  /** What the next undo would take back; null where nothing is to be undone. */
  undo: string | null
  fragment: string
}

/**
 * Everything that can be seen, heard or come back to: texts, values, states, drawings, places, and what went out of the
 * page. The focus by itself is no answer, and neither is the note that a change is being saved.
 */
export async function seen(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const lines: string[] = []
    const states = ['d', 'style', 'x', 'width', 'points', 'open', 'disabled', 'href', 'placeholder', 'title', 'data-lead']
    const ofState = (name: string) => states.includes(name) || name.startsWith('aria-') || name.startsWith('data-')
    // Which stop Tab comes back to, and ids that name another element, tell a person nothing.
    const silent = new Set(['aria-labelledby', 'aria-describedby', 'aria-controls', 'data-turn'])
    const walk = (element: Element) => {
      // How far undo and redo go is told apart by itself.
      if (element.matches('script, style, .app-saved, .app-saved ~ button')) return
      const spoken = element.closest('[aria-live]') !== null
      // What has no box of its own shows what is in it.
      const isBoxless = getComputedStyle(element).display === 'contents'
      if (!spoken && !isBoxless && !element.checkVisibility({ visibilityProperty: true })) return
      const parts = [element.tagName.toLowerCase()]
      // In an order of their own: an element made anew has its attributes in another than one that came to them.
      const told = [...element.attributes]
        .filter(({ name }) => ofState(name) && !silent.has(name))
        .map(({ name, value }) => `${name}=${value}`)
      parts.push(...told.sort())
      if (element instanceof HTMLInputElement && ['checkbox', 'radio'].includes(element.type)) parts.push(`checked=${element.checked}`)
      else if (element instanceof HTMLInputElement || element instanceof HTMLTextAreaElement || element instanceof HTMLSelectElement)
        parts.push(`value=${element.value}`)
      if (element.scrollLeft > 0 || element.scrollTop > 0)
        parts.push(`scrolled=${Math.round(element.scrollLeft)},${Math.round(element.scrollTop)}`)
      for (const node of element.childNodes)
        if (node.nodeType === Node.TEXT_NODE && node.textContent!.trim()) parts.push(node.textContent!.trim())
      if (parts.length > 1) lines.push(`${element.parentElement?.closest('dialog[open]') ? 'dialog ' : ''}${parts.join(' ')}`)
      for (const child of element.children) walk(child)
    }
    walk(document.body)
    lines.push(
      `page ${document.title} ${location.hash} ${document.documentElement.dataset.theme ?? ''} ${document.fullscreenElement !== null}`,
    )
    lines.push(`out ${JSON.stringify((window as unknown as { wentOut?: unknown }).wentOut ?? null)}`)
    const undo = [...document.querySelectorAll<HTMLButtonElement>('.app-head button')].find(({ title }) => title.startsWith('undo: '))
    return { lines, undo: undo?.title ?? null, fragment: location.hash }
  })
}

/** How far everything is scrolled that is: what undo has nothing to do with. */
export const scrollsOf = (page: Page): Promise<readonly [number, number, number][]> =>
  page.evaluate(() =>
    [...document.body.querySelectorAll('*')].flatMap((element, index): [number, number, number][] =>
      element.scrollWidth > element.clientWidth || element.scrollHeight > element.clientHeight
        ? [[index, element.scrollLeft, element.scrollTop]]
        : [],
    ),
  )

export const scrollBack = (page: Page, scrolls: readonly [number, number, number][]): Promise<void> =>
  page.evaluate((all) => {
    const elements = document.body.querySelectorAll('*')
    for (const [index, left, top] of all) elements[index]?.scrollTo(left, top)
  }, scrolls)

/** Counts what leaves the page and would be lost in a test: prints, what is copied, what is opened. To be put into a page before it is loaded. */
export function watchWhatGoesOut(): void {
  const out = { printed: 0, copied: 0, opened: 0, spoken: 0 }
  Object.assign(window, { wentOut: out })
  window.print = () => void out.printed++
  window.open = () => {
    out.opened++
    return null
  }
  // A letter would be begun in another program.
  document.addEventListener('click', ({ target }) => {
    if (target instanceof Element && target.closest('a[href^="mailto:"]')) out.opened++
  })
  const { clipboard } = navigator
  if (clipboard)
    clipboard.writeText = async () => {
      out.copied++
    }
}

/** The first lines two moments differ in, each from a little before the place where it parts from the other's. */
export function differences(before: readonly string[], after: readonly string[], most = 6): string[] {
  const gone = before.filter((line) => !after.includes(line)).slice(0, most)
  const come = after.filter((line) => !before.includes(line)).slice(0, most)
  const part = (line: string, other = '') => {
    const at = [...line].findIndex((letter, i) => letter !== other[i])
    return JSON.stringify(`${line.slice(0, 24)} … ${line.slice(Math.max(24, at - 20), at + 60)}`)
  }
  return [...gone.map((line, i) => `- ${part(line, come[i])}`), ...come.map((line, i) => `+ ${part(line, gone[i])}`)]
}

/** What is not the ride's: how far is scrolled, where its music is, and columns as wide as what was last measured in them. */
const CHANGING = [/() scrolled=\S+/, /^(div aria-hidden=true .*)transform: translateX\(\S+\)/, /()--sheet-\w+: [\d.]+em;/g]

/** The lines that undo has to bring back: not what was said of it, which stretch of it is in sight, nor where its music is. */
export const toBeBroughtBack = (lines: readonly string[]): string[] =>
  lines
    // What is measured in a dialog is another number when it is opened again; the ride lies under it.
    .filter((line) => !/^(out |page |dialog |div .*aria-valuetext=\d+ to \d+ minutes)/.test(line) && !/ aria-live=/.test(line))
    .map((line) => CHANGING.reduce((left, changing) => left.replace(changing, '$1'), line))
    // Where the music is, and what was said of a file, which is heard again where its song is chosen again.
    .filter((line) => !/^(li data-hearing=|span “|span detect again|\w+ data-slot=|input aria-label=place in )/.test(line))
    // What had only been scrolled, and marks that are drawn where the stage is looked at.
    .filter((line) => line.includes(' ') && !/^path d=M[\d.]+ 12v-4h/.test(line))
