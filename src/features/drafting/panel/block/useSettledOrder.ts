import { type FocusEvent, useRef, useState } from 'react'

/** An order that keeps still while somebody is at work in it. */
interface SettledOrder {
  ids: readonly string[]
  /** On the element around the list. */
  onFocus: () => void
  onBlur: (event: FocusEvent<HTMLElement>) => void
}

/**
 * The order of a list as it ought to be, taken over when the focus is elsewhere: nothing moves from under the hand that
 * changes it. What is new goes to its own place at once, what is gone goes.
 */
export function useSettledOrder(wanted: readonly string[]): SettledOrder {
  const [held, setHeld] = useState<readonly string[] | null>(null)
  const latest = useRef(wanted)
  latest.current = wanted
  return {
    ids: held === null ? wanted : merged(held, wanted),
    onFocus: () => setHeld((before) => before ?? latest.current),
    onBlur: ({ currentTarget, relatedTarget }) => {
      if (!currentTarget.contains(relatedTarget)) setHeld(null)
    },
  }
}

/** The held order, with what is new after what it should follow. */
function merged(held: readonly string[], wanted: readonly string[]): string[] {
  const order = held.filter((id) => wanted.includes(id))
  for (const [index, id] of wanted.entries()) {
    if (order.includes(id)) continue
    const before = wanted.slice(0, index).findLast((one) => order.includes(one))
    order.splice(before === undefined ? 0 : order.indexOf(before) + 1, 0, id)
  }
  return order
}
