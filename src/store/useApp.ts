import { createContext, useContext } from 'react'
import { useStore } from 'zustand'
import type { AppState, AppStore } from './state.ts'

const AppStoreContext = createContext<AppStore | null>(null)

/** Gives everything inside it the store. */
export const AppStoreProvider = AppStoreContext.Provider

/** The store itself, for handlers that act without drawing. */
export function useAppStore(): AppStore {
  const store = useContext(AppStoreContext)
  if (!store) throw new Error('useApp outside of AppStoreProvider')
  return store
}

/** A part of the state, drawn anew when that part is another object. */
export function useApp<Part>(select: (state: AppState) => Part): Part {
  return useStore(useAppStore(), select)
}
