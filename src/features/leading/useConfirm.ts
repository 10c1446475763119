import { useEffect, useState } from 'react'

/** Time for the second press. */
const WAIT_MS = 4000

export interface Confirm {
  /** What was pressed once. */
  armed: string | null
  press: (name: string, act: () => void) => void
  disarm: () => void
}

/** What cannot be taken lightly happens at the second press: nothing a drop of sweat or a brushed key does. */
export function useConfirm(): Confirm {
  const [armed, setArmed] = useState<string | null>(null)
  useEffect(() => {
    if (armed === null) return
    const timer = setTimeout(() => setArmed(null), WAIT_MS)
    return () => clearTimeout(timer)
  }, [armed])
  return {
    armed,
    press: (name, act) => {
      setArmed(armed === name ? null : name)
      if (armed === name) act()
    },
    disarm: () => setArmed(null),
  }
}
