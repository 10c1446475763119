import { useApp, useAppStore } from '#store/useApp.ts'
import type { ScreenGround } from './actions/leadGround.ts'
import { useConfirm } from './useConfirm.ts'
import { useFullScreen } from './useFullScreen.ts'

/** What every screen of a class can do, drawn anew when one of it changes. */
export function useScreenGround(): ScreenGround {
  const store = useAppStore()
  const confirm = useConfirm()
  const follows = useApp((state) => state.ledElsewhere)
  const { full, toggle } = useFullScreen()
  return { store, confirm, follows, full, toggleFullScreen: toggle }
}
