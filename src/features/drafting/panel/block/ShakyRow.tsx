import { CheckRow } from '#features/drafting/panel/rows/CheckRow.tsx'
import { markShaky, unmarkShaky } from '#plan/commands/markShaky.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { words } from '#words/words.ts'

/** Whether a block is marked to be rehearsed again. */
export function ShakyRow({ blockId }: { blockId: string }) {
  const store = useAppStore()
  const isShaky = useApp(({ shown }) => shown?.shaky?.includes(blockId) ?? false)
  const set = (on: boolean) => {
    const { ride, run } = store.getState()
    if (ride) run(on ? markShaky(ride, { blockId }) : unmarkShaky(ride, { blockId }))
  }
  return <CheckRow label={words.panelsBlock.needsPractice} says={words.panelsBlock.rehearseAgain} checked={isShaky} onChange={set} />
}
