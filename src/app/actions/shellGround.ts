import { createContext, useContext } from 'react'
import type { Action, Ground } from '#actions/action.ts'
import { useAppStore } from '#store/useApp.ts'

/** What the shell can do besides changing the page's state. */
interface ShellTools {
  openKeys: () => void
  openFind: () => void
  openUndoList: () => void
}

export interface ShellGround extends Ground, ShellTools {}

export type ShellAction = Action<ShellGround>

export const ShellToolsContext = createContext<ShellTools>({ openKeys: () => {}, openFind: () => {}, openUndoList: () => {} })

export function useShellGround(): ShellGround {
  const store = useAppStore()
  const tools = useContext(ShellToolsContext)
  return { store, ...tools }
}
