import { sharedOf } from '#features/drafting/panel/blocks/sharedOf.ts'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { giveBlocks } from '#plan/commands/giveBlocks.ts'
import type { Block } from '#plan/model.ts'
import { rolesOf } from '#plan/rolesOf.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** Who leads some blocks and who speaks in them; draws nothing where one leader teaches alone. */
export function LeaderRows({ blocks }: { blocks: readonly Block[] }) {
  const store = useAppStore()
  const leaders = useApp((state) => state.shown!.leaders)
  if (leaders.length < 2 || blocks.length === 0) return null
  const choices = leaders.map(({ id, name }) => ({ value: id, label: name }))
  const blockIds = blocks.map(({ id }) => id)
  const give = (to: { leads?: string; speaks?: string }) => {
    const { run, ride } = store.getState()
    run(giveBlocks(ride!, { blockIds, ...to }))
  }
  return (
    <>
      <SelectRow
        label={words.panels.leads}
        value={sharedOf(blocks, (block) => rolesOf({ leaders }, block).leads)}
        choices={choices}
        onChange={(leads) => give({ leads })}
      />
      <SelectRow
        label={words.panels.onMic}
        value={sharedOf(blocks, (block) => rolesOf({ leaders }, block).speaks)}
        choices={choices}
        onChange={(speaks) => give({ speaks })}
      />
    </>
  )
}
