import { memo, useEffect } from 'react'
import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import type { Stretch } from '#units/units.ts'
import { SongRow } from './SongRow.tsx'
import type { TimeScale } from './timeScale.ts'
import './songs.css'

interface SongLaneProps {
  ride: Ride
  report: RideReport
  scale: TimeScale
  stretch: Stretch
  selectedId: string | null
  single: boolean
  onSelect: (id: string) => void
  onFit: (id: string) => void
}

/** The heads of all sections, with one stop for the Tab key among them. What their songs look like is asked for here. */
export const SongLane = memo(function SongLane({ ride, report, scale, stretch, selectedId, single, onSelect, onFit }: SongLaneProps) {
  const store = useAppStore()
  const fingerprints = ride.sections.flatMap(({ song }) => song?.fingerprint ?? [])
  const wanted = fingerprints.join(' ')
  useEffect(() => {
    if (wanted) void store.getState().wantSounds(wanted.split(' '))
  }, [store, wanted])
  const hasWaves = useApp(({ sounds }) => fingerprints.some((fingerprint) => sounds.has(fingerprint)))
  const stop = ride.sections.some((section) => section.id === selectedId) ? selectedId : ride.sections[0]?.id
  return (
    <div className="songs" data-waves={hasWaves || undefined}>
      {ride.sections.map((section, i) => (
        <SongRow
          key={section.id}
          section={section}
          report={report.sections[i]!}
          number={i + 1}
          scale={scale}
          stretch={stretch}
          hasWaves={hasWaves}
          selected={single && section.id === selectedId}
          focusable={section.id === stop}
          onSelect={onSelect}
          onFit={onFit}
        />
      ))}
    </div>
  )
})
