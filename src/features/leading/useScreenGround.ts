import { useAppStore } from '#store/useApp.ts'
import type { ScreenGround } from './actions/leadGround.ts'
import { useConfirm } from './useConfirm.ts'
import { useFullScreen } from './useFullScreen.ts'

/** What every screen of a class can do, drawn anew when one of it changes. */
export function useScreenGround(): ScreenGround {
  const store = useAppStore()
  const confirm = useConfirm()
  const { full, toggle } = useFullScreen()
  return { store, confirm, full, toggleFullScreen: toggle }
}
