import { useEffect, useState } from 'react'
import { parseRide } from '#plan/document/parseRide.ts'
import type { Ride } from '#plan/model.ts'

/** The rides that come with the page, each a file beside it; what is told of them stands here too, so that it is known before the files arrive. */
export const DEMOS = [
  { name: 'twenty-minute-spark', id: 'spark', title: 'Twenty-Minute Spark', level: 'advanced', minutes: 20, songs: 6 },
  { name: 'ridge-and-return', id: 'ridge', title: 'Ridge and Return', level: 'mixed', minutes: 45, songs: 13 },
] as const

export type Demo = { state: 'loading' } | { state: 'ready'; ride: Ride } | { state: 'failed' }

/** Reads the demo rides once, from addresses relative to the page so that any folder of any host serves them. */
export function useDemoRides(): Readonly<Record<string, Demo>> {
  const [demos, setDemos] = useState<Record<string, Demo>>({})
  useEffect(() => {
    const leaving = new AbortController()
    for (const { name } of DEMOS) {
      void read(name, leaving.signal).then((demo) => {
        if (!leaving.signal.aborted) setDemos((known) => ({ ...known, [name]: demo }))
      })
    }
    return () => leaving.abort()
  }, [])
  return demos
}

/** The demo ride with an id; null where there is none, or it could not be fetched. */
export async function demoRide(id: string): Promise<Ride | null> {
  const known = DEMOS.find((demo) => demo.id === id)
  const demo = known && (await read(known.name))
  return demo?.state === 'ready' ? demo.ride : null
}

async function read(name: string, signal?: AbortSignal): Promise<Demo> {
  try {
    const response = await fetch(`./demo/${name}.ride.json`, { signal })
    const parsed = response.ok ? parseRide(await response.json()) : null
    return parsed?.ok ? { state: 'ready', ride: parsed.ride } : { state: 'failed' }
  } catch {
    return { state: 'failed' }
  }
}
