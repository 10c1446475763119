import { useCallback, useSyncExternalStore } from 'react'

/**
 * Whether a media query holds, now and as it changes: for what has to stand elsewhere in the page, where a style
 * would move it for the eye and leave it behind for the keyboard.
 *
 * @param query such as "(max-width: 1000px)"
 */
export function useMedia(query: string): boolean {
  const subscribe = useCallback(
    (onChange: () => void) => {
      const list = window.matchMedia(query)
      list.addEventListener('change', onChange)
      return () => list.removeEventListener('change', onChange)
    },
    [query],
  )
  return useSyncExternalStore(subscribe, () => window.matchMedia(query).matches)
}
