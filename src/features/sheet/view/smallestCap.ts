import { PX_PER_MM } from '#features/sheet/paging/paper.ts'
import { CAP_RATIO } from '#units/capHeight.ts'

/** Height in millimetres of the smallest capitals that are printed inside an element: as laid out, whatever it is scaled to on the screen. */
export function smallestCap(pages: Element): number {
  const texts = document.createTreeWalker(pages, NodeFilter.SHOW_TEXT)
  let smallest = Number.POSITIVE_INFINITY
  while (texts.nextNode()) {
    const place = texts.currentNode.parentElement!
    if (texts.currentNode.nodeValue!.trim() === '' || place.getClientRects().length === 0) continue
    smallest = Math.min(smallest, Number.parseFloat(getComputedStyle(place).fontSize))
  }
  return (smallest / PX_PER_MM) * CAP_RATIO
}
