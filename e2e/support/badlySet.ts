import type { Page } from '@playwright/test'

/**
 * Words that are cut off, lie over one another, or make the page wider than its window; each
 * as what is wrong and the words. Seen as a reader does: by the boxes of the letters, in what
 * is visible now. A person's own words (`bdi`, names in the lanes of the stage) may be cut
 * where a room is too small for any length; so may what can be scrolled to.
 */
export const badlySet = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const SLACK = 1.5
    const OWN_WORDS = 'bdi, svg, .stage, .lead-name, .lead-song, [aria-hidden="true"], option, .ui-hidden, textarea'
    const wrong: string[] = []
    const root = document.documentElement
    if (root.scrollWidth > root.clientWidth) wrong.push(`wider than the window by ${root.scrollWidth - root.clientWidth} px`)

    interface Line {
      words: string
      box: DOMRect
      element: Element
    }
    const lines: Line[] = []
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT)
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const element = node.parentElement
      if (!element || !node.textContent?.trim() || element.closest(OWN_WORDS) || !isSeen(element)) continue
      const range = document.createRange()
      range.selectNodeContents(node)
      const words = node.textContent.trim().replace(/\s+/g, ' ').slice(0, 60)
      const boxes = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1)
      if (boxes.length === 0) continue
      for (const box of boxes) lines.push({ words, box: letters(box), element })
      const cutter = cutting(element, boxes)
      if (cutter) wrong.push(`cut: “${words}” in ${nameOf(cutter)}`)
    }

    // A select cuts its own words without a box to measure: the widest choice against the room inside.
    const measure = document.createElement('canvas').getContext('2d')!
    for (const select of document.querySelectorAll('select')) {
      if (!isSeen(select) || select.closest('.stage')) continue
      const style = getComputedStyle(select)
      measure.font = style.font
      const words = select.selectedOptions[0]?.textContent ?? ''
      const room = select.clientWidth - Number.parseFloat(style.paddingLeft) - Number.parseFloat(style.paddingRight)
      if (measure.measureText(words).width > room + SLACK) wrong.push(`cut: “${words}” in ${nameOf(select)}`)
    }

    const seen = lines.filter(({ box, element }) => isOnTop(box, element))
    for (const [index, one] of seen.entries()) {
      for (const other of seen.slice(index + 1)) {
        if (one.element.contains(other.element) || other.element.contains(one.element)) continue
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left)
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top)
        if (across > SLACK && down > SLACK) wrong.push(`overlap: “${one.words}” and “${other.words}”`)
      }
    }
    return [...new Set(wrong)]

    /** Drawn, and not kept for screen readers alone. */
    function isSeen(element: Element): boolean {
      if (!element.checkVisibility({ opacityProperty: true, visibilityProperty: true })) return false
      const { clip, clipPath, position } = getComputedStyle(element)
      return !(position === 'absolute' && (clip.startsWith('rect(') || clipPath.startsWith('inset(50')))
    }

    /** Where the letters are: the box of a line reaches above its capitals and below its tails. */
    function letters({ left, top, width, height }: DOMRect): DOMRect {
      return new DOMRect(left, top + height * 0.22, width, height * 0.6)
    }

    /** The nearest box around a text that cuts some of it off for good. */
    function cutting(element: Element, boxes: readonly DOMRect[]): Element | undefined {
      for (let around: Element | null = element; around && around !== document.body; around = around.parentElement) {
        const { overflowX, overflowY, display } = getComputedStyle(around)
        if (display === 'contents') continue
        const box = around.getBoundingClientRect()
        if (overflowX === 'hidden' || overflowX === 'clip') {
          if (boxes.some(({ left, right }) => right > box.right + SLACK || left < box.left - SLACK)) return around
        }
        if (overflowY === 'hidden' || overflowY === 'clip') {
          if (boxes.map(letters).some(({ top, bottom }) => bottom > box.bottom + SLACK || top < box.top - SLACK)) return around
        }
        if (overflowX === 'auto' || overflowX === 'scroll' || overflowY === 'auto' || overflowY === 'scroll') return undefined
      }
      return undefined
    }

    /** Not under a dialog or a bar that lies over the page. */
    function isOnTop(box: DOMRect, element: Element): boolean {
      const top = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2)
      return top !== null && (top === element || element.contains(top) || top.contains(element))
    }

    function nameOf(element: Element): string {
      return `${element.tagName.toLowerCase()}${[...element.classList].map((name) => `.${name}`).join('')}`
    }
  })
