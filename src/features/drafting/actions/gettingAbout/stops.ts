import type { DraftGround } from '#features/drafting/actions/draftGround.ts'

/** The stops of the same kind in the order of the ride, which for rounds is not the order of their ids. */
function stopsLike(stop: HTMLElement, kind: string): HTMLElement[] {
  const stage = stop.closest('.stage-content')
  return [...(stage?.querySelectorAll<HTMLElement>(`[data-stage-stop="${kind}"]`) ?? [])]
}

/** Goes on by some stops of a kind, or to the last one there is, and has it selected. */
export function goBy({ stop }: DraftGround, kind: string, step: number, select: (id: string) => void): void {
  if (!stop) return
  const stops = stopsLike(stop, kind)
  const next = stops[Math.min(stops.length - 1, Math.max(0, stops.indexOf(stop) + step))]
  if (!next?.dataset.id) return
  select(next.dataset.id)
  next.focus()
}

/** Further than any ride has stops. */
export const ALL_THE_WAY = 1e9

/** The focus may have come to a stop that is not the one chosen: what is done next is about where the focus is. */
export function chooseTarget({ store, target }: DraftGround): void {
  const { selection, selectSection, selectItem } = store.getState()
  if (target.kind === 'ride') return
  if (target.kind !== 'section') {
    if (!selection.ids.includes(target.id)) selectItem(target.id)
  } else if (selection.ids.length > 0 || selection.sectionId !== target.id) selectSection(target.id)
}

/** Whether the focus is on the stage: moving it about means nothing elsewhere. */
export const isOnStage = ({ stop }: DraftGround): boolean => stop !== null
