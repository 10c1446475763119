import type { RideReport } from '#engine/report.ts'
import type { Ride } from '#plan/model.ts'
import { SongRow } from './SongRow.tsx'
import type { TimeScale } from './timeScale.ts'
import './songs.css'

/** The heads of all sections, with one stop for the Tab key among them. */
export function SongLane({
  ride,
  report,
  scale,
  selectedId,
  single,
  onSelect,
  onFit,
}: {
  ride: Ride
  report: RideReport
  scale: TimeScale
  selectedId: string | null
  single: boolean
  onSelect: (id: string) => void
  onFit: (id: string) => void
}) {
  const stop = ride.sections.some((section) => section.id === selectedId) ? selectedId : ride.sections[0]?.id
  return (
    <div className="songs">
      {ride.sections.map((section, i) => (
        <SongRow
          key={section.id}
          section={section}
          report={report.sections[i]!}
          number={i + 1}
          scale={scale}
          selected={single && section.id === selectedId}
          focusable={section.id === stop}
          onSelect={onSelect}
          onFit={onFit}
        />
      ))}
    </div>
  )
}
