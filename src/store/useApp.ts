import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { Said } from '#words/said.ts'
import type { AppState, AppStore } from './state.ts'

/** What is made anew at every look is refused. */
export type Told<Part> = [Extract<Part, Said>] extends [never] ? Part : never

const AppStoreContext = createContext<AppStore | null>(null)

/** Gives everything inside it the store. */
export const AppStoreProvider = AppStoreContext.Provider

/** The store itself, for handlers that act without drawing. */
export function useAppStore(): AppStore {
  const store = useContext(AppStoreContext)
  if (!store) throw new Error('useApp outside of AppStoreProvider')
  return store
}

/**
 * A part of the state, drawn anew when that part is another object. A text is told in the
 * selector: one by name would be another object every time, and never stop being drawn.
 */
export function useApp<Part>(select: (state: AppState) => Told<Part>): Part {
  return useStore(useAppStore(), select as (state: AppState) => Part)
}
