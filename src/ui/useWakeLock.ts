import { useEffect, useState } from 'react'

/** Whether the screen is kept from going dark: it is, it is being asked for, or the browser will not. */
export type Awake = 'on' | 'asking' | 'off'

/**
 * Keeps the screen on while the component is there. The browser lets go whenever the page is hidden,
 * so it is asked again each time the page is seen again, and whenever it let go for another reason.
 */
export function useWakeLock(): Awake {
  const [awake, setAwake] = useState<Awake>('asking')
  useEffect(() => {
    let ended = false
    let lock: WakeLockSentinel | null = null
    const ask = async () => {
      if (ended || document.visibilityState !== 'visible' || (lock !== null && !lock.released)) return
      try {
        lock = await navigator.wakeLock.request('screen')
        if (ended) return void lock.release()
        lock.addEventListener('release', ask)
        setAwake('on')
      } catch {
        // Not there, or refused: on a flat battery, by a policy, from a page that is not secure.
        if (!ended) setAwake('off')
      }
    }
    void ask()
    document.addEventListener('visibilitychange', ask)
    return () => {
      ended = true
      document.removeEventListener('visibilitychange', ask)
      lock?.removeEventListener('release', ask)
      void lock?.release()
    }
  }, [])
  return awake
}
