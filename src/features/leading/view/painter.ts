import { effortColour } from '#ui/effort.ts'
import type { LeadView, Slot } from './view.ts'

/** Paler colours do not stand out from the bar in a dark room. */
const LEAST_SEEN = 6

/** Puts a view on the screen. */
export type Painter = (view: LeadView) => void

/**
 * Paints views into the elements of `root` that carry `data-slot`. Only what differs from the view
 * before is touched: a text node, an attribute, one custom property.
 */
export function createPainter(root: HTMLElement): Painter {
  const texts = new Map<Slot, Text>()
  for (const element of root.querySelectorAll<HTMLElement>('[data-slot]')) {
    const text = document.createTextNode('')
    element.replaceChildren(text)
    texts.set(element.dataset.slot as Slot, text)
  }
  const styles = new Map<string, string>()
  const setStyle = (name: string, value: string) => {
    if (styles.get(name) === value) return
    styles.set(name, value)
    root.style.setProperty(name, value)
  }
  const marks = new Map<string, string>()
  const setMark = (name: string, value: string) => {
    if (marks.get(name) === value) return
    marks.set(name, value)
    root.dataset[name] = value
  }

  return (view) => {
    for (const [slot, node] of texts) if (node.data !== view.texts[slot]) node.data = view.texts[slot]
    setStyle('--lead-of', `${Math.max(1, view.bar.of)}`)
    setStyle('--lead-done', (view.bar.of > 0 ? view.bar.done / view.bar.of : 0).toFixed(4))
    setStyle('--lead-effort', effortColour(Math.max(LEAST_SEEN, view.effort)))
    setStyle('--lead-beat', pulseOf(view.beat))
    setMark('count', `${Math.min(MOST_TICKS, view.beat.count)}`)
    setStyle('--lead-eight', `${Math.min(MOST_TICKS, view.beat.of)}`)
    setMark('counted', `${view.beat.count > 0}`)
    setMark('name', sizeOf(view.texts.name, NAME_SIZES))
    setMark('cue', sizeOf(view.texts.cue, CUE_SIZES))
    setMark('bar', `${view.bar.of > 0}`)
    setMark('soon', `${view.soon}`)
    setMark('overrun', `${view.overrun}`)
  }
}

/** Ticks there is room for; of an eight with still more beats the last one goes on. */
export const MOST_TICKS = 16

/** Characters up to which a text keeps its size, then the next smaller one. */
const NAME_SIZES = [18, 34]
const CUE_SIZES = [60, 110, 160]

/** 0 for a text at its full size, more for longer ones. */
const sizeOf = (text: string, sizes: readonly number[]): string => `${sizes.filter((most) => text.length > most).length}`

/** Bright on the beat and gone by the next, in twentieths: finer steps nobody sees. */
const pulseOf = ({ count, passed }: LeadView['beat']): string => (count === 0 ? '0' : (Math.round((1 - passed) ** 2 * 20) / 20).toFixed(2))
