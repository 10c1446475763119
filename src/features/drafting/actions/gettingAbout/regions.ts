import type { DraftAction } from '#features/drafting/actions/draftAction.ts'
import type { DraftGround } from '#features/drafting/actions/draftGround.ts'
import { say } from '#words/said.ts'

/** The parts of the place in the order they are gone through, each with where the focus goes in it, the likeliest first. */
const REGIONS = [
  { part: '.stage', stops: ['[data-stage-stop]:is([data-selected], [aria-pressed="true"])', '[data-stage-stop][tabindex="0"]'] },
  { part: '.draft-side', stops: ['input,select,textarea', 'button,a[href]'] },
  { part: '.tray', stops: ['button:enabled'] },
  { part: '.findings', stops: ['button:enabled,a[href],summary'] },
] as const

const canHaveIt = (element: HTMLElement): boolean => !element.matches(':disabled') && element.checkVisibility()

/** Goes to the next part of the place that has something to go to, round and round; from elsewhere to the first, or back to the last. */
export function goToRegion(root: Element, step: 1 | -1): void {
  const here = REGIONS.findIndex(({ part }) => document.activeElement?.closest(part))
  for (let tried = 1; tried <= REGIONS.length; tried++) {
    const from = here === -1 && step < 0 ? 0 : here
    const { part, stops } = REGIONS.at((from + step * tried) % REGIONS.length)!
    const found = stops.flatMap((stop) => [...root.querySelectorAll<HTMLElement>(`${part} :is(${stop})`)]).find(canHaveIt)
    if (!found) continue
    found.focus()
    return
  }
}

/** Whether it is in a part from which one level out is the stage. */
export const isBesideStage = (element: Element | null): boolean => REGIONS.slice(1).some(({ part }) => element?.closest(part))

/** Goes to the words of the first cue in the details, else to the field one is written in. */
export function goToCues(root: Element): void {
  const [first] = ['.panel-cues textarea', '.panel-cues ~ * textarea'].flatMap((field) => [...root.querySelectorAll<HTMLElement>(field)])
  first?.focus()
}

/** The field of the details that has these words. */
export const fieldWith = (place: Element | null, written: string) =>
  [...(place?.querySelectorAll<HTMLInputElement | HTMLTextAreaElement>('.draft-side input, .draft-side textarea') ?? [])].find(
    ({ value }) => value.trim() === written,
  )

const along = (step: 1 | -1) => ({
  does: say('many.regionDo'),
  keyOnly: true as const,
  do: ({ tools }: DraftGround) => tools.goToRegion(step),
})

export const NEXT_REGION: DraftAction = { id: 'draft.nextRegion', name: say('many.nextRegion'), keys: ['F6'], ...along(1) }
export const LAST_REGION: DraftAction = { id: 'draft.regionBefore', name: say('many.regionBefore'), keys: ['Shift+F6'], ...along(-1) }
