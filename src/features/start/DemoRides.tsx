import { useMemo } from 'react'
import { computeRide } from '#engine/computeRide.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'
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
      {DEMOS.map(({ name, title, ...known }) => (
        <li key={name}>
          <DemoRide title={title} about={aboutOf(known)} demo={demos[name] ?? { state: 'loading' }} onOpen={onOpen} />
        </li>
      ))}
    </ul>
  )
}

/** "advanced · 20 min · 6 songs" */
const aboutOf = ({ level, minutes, songs }: Pick<(typeof DEMOS)[number], 'level' | 'minutes' | 'songs'>): string =>
  [words.names.level({ level }), words.start.minutes({ minutes }), words.start.songs({ count: songs })].join(' · ')

function DemoRide({ title, about, demo, onOpen }: Props & { title: string; about: string; demo: Demo }) {
  const ride = demo.state === 'ready' ? demo.ride : null
  const report = useMemo(() => (ride ? computeRide(ride) : null), [ride])
  return (
    <button type="button" className="start-demo" disabled={ride === null} onClick={() => ride && onOpen(ride)}>
      <span className="start-demo-words">
        <span className="start-ride-title">{title}</span>
        <span className="start-ride-meta">{about}</span>
      </span>
      <span className="start-demo-aim">{demo.state === 'failed' ? words.start.sampleFailed : (ride?.aim ?? ' ')}</span>
      <ProfileDrawing curve={report?.curves.intent ?? []} total={report?.overall.total ?? 1} />
    </button>
  )
}
