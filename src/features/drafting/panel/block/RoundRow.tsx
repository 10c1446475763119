import { useContext } from 'react'
import { takeOut } from '#features/drafting/actions/changing/onlyRound.ts'
import { DraftToolsContext } from '#features/drafting/actions/draftGround.ts'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { findBlock } from '#plan/places.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

const EVERY = 'every'

/** Whether what is changed of a set's part holds for every round; choosing one takes that round out of the set. */
export function RoundRow({ blockId }: { blockId: string }) {
  const store = useAppStore()
  const tools = useContext(DraftToolsContext)
  const rounds = useApp((state) => (state.shown && findBlock(state.shown, blockId)?.set?.rounds) ?? 0)
  if (rounds < 2) return null
  const single = Array.from({ length: rounds }, (_, before) => ({
    value: String(before + 1),
    label: words.many.onlyRound({ round: before + 1 }),
  }))
  return (
    <>
      <SelectRow
        label={words.many.appliesTo}
        value={EVERY}
        choices={[{ value: EVERY, label: words.many.everyRound({ rounds }) }, ...single]}
        onChange={(round) => round !== EVERY && takeOut({ store, tools }, blockId, Number(round))}
      />
      <p className="panel-note panel-beside panel-edit-only">{words.many.onlyRoundNote}</p>
    </>
  )
}
