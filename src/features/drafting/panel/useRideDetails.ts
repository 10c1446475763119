import { useEffect, useRef } from 'react'
import { useApp } from '#store/useApp.ts'

/** Does its task when the details of the ride are asked for, also from another place. */
export function useRideDetails(open: () => void) {
  const asked = useApp((state) => state.rideDetailsAsked)
  const answer = useApp((state) => state.answerRideDetails)
  const latest = useRef(open)
  latest.current = open
  useEffect(() => {
    if (!asked) return
    answer()
    latest.current()
  }, [asked, answer])
}
