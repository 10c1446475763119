import type { AppState } from '#store/state.ts'
import type { Seconds } from '#units/units.ts'

/** Where the selection begins on the ride clock; null where nothing is selected. */
export function startOfSelection({ selection, shownReport }: AppState): Seconds | null {
  if (!shownReport) return null
  const [id] = selection.ids
  const played = id === undefined ? undefined : shownReport.blocks.find(({ block, set }) => block.id === id || set?.set.id === id)
  if (played) return played.from
  return shownReport.sections.find(({ sectionId }) => sectionId === selection.sectionId)?.from ?? null
}
