/**
 * Writes texts into the elements of `root` that carry `data-slot`, past React: only what differs from
 * before is touched.
 */
export function createSlots<Slot extends string>(root: HTMLElement): (texts: Partial<Record<Slot, string>>) => void {
  const nodes = new Map<string, Text>()
  for (const element of root.querySelectorAll<HTMLElement>('[data-slot]')) {
    const text = document.createTextNode('')
    element.replaceChildren(text)
    nodes.set(element.dataset.slot!, text)
  }
  return (texts) => {
    for (const [slot, node] of nodes) {
      const text = texts[slot as Slot] ?? ''
      if (node.data !== text) node.data = text
    }
  }
}
