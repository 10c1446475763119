import { useContext, useMemo } from 'react'
import { flushSync } from 'react-dom'
import { FIND } from '#app/actions/find.ts'
import { ShellToolsContext } from '#app/actions/shellGround.ts'
import { FindBox } from '#features/search/FindBox.tsx'
import { useAppStore } from '#store/useApp.ts'
import { Dialog } from '#ui/Dialog.tsx'
import { words } from '#words/words.ts'
import { handbook } from './handbook.ts'

/** The box that finds anything, over whatever place one is in. */
export function Finder({ open, onClose }: { open: boolean; onClose: () => void }) {
  const store = useAppStore()
  const { openKeys } = useContext(ShellToolsContext)
  const help = useMemo(() => (open ? handbook(store, openKeys) : []), [store, openKeys, open])
  // What is chosen is done with the focus where it was before.
  const close = () => flushSync(onClose)
  return (
    <Dialog open={open} title={words.search.title} onClose={onClose}>
      <FindBox handbook={help} ownAction={FIND.id} onClose={close} />
    </Dialog>
  )
}
