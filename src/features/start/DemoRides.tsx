import { useMemo } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { Ride } from '#plan/model.ts'
import { ProfileDrawing } from './ProfileDrawing.tsx'
import { DEMOS, type Demo, useDemoRides } from './useDemoRides.ts'

interface Props {
  onOpen: (ride: Ride) => void
}

/** The demo rides, each drawn whole, so that one sees what a ride is before opening it. */
export function DemoRides({ onOpen }: Props) {
  const demos = useDemoRides()
  return (
    <ul>
      {DEMOS.map(({ name, title, about }) => (
        <li key={name}>
          <DemoRide title={title} about={about} demo={demos[name] ?? { state: 'loading' }} onOpen={onOpen} />
        </li>
      ))}
    </ul>
  )
}

function DemoRide({ title, about, demo, onOpen }: Props & { title: string; about: string; demo: Demo }) {
  const ride = demo.state === 'ready' ? demo.ride : null
  const report = useMemo(() => (ride ? computeRide(ride) : null), [ride])
  return (
    <button type="button" className="start-demo" disabled={ride === null} onClick={() => ride && onOpen(ride)}>
      <span className="start-demo-words">
        <span className="start-ride-title">{title}</span>
        <span className="start-ride-meta">{about}</span>
      </span>
      <span className="start-demo-aim">
        {demo.state === 'failed' ? 'This demo ride could not be fetched. Everything else works without it.' : (ride?.aim ?? ' ')}
      </span>
      <ProfileDrawing curve={report?.curves.intent ?? []} total={report?.overall.total ?? 1} />
    </button>
  )
}
