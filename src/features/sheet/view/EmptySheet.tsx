import { type Paper, pageSize } from '#features/sheet/paging/paper.ts'
import type { Ride } from '#plan/model.ts'
import './page.css'

/** What a ride without blocks has instead of a sheet, on the screen and on paper. */
export function EmptySheet({ ride: { title, sections }, paper }: { ride: Ride; paper: Paper }) {
  const { width, height } = pageSize(paper, { page: 'sheet', orientation: 'portrait' })
  return (
    <div className="sheet-pages sheet-none">
      <style>{`@page { size: ${width}mm ${height}mm; margin: 15mm }`}</style>
      <div>
        {title && (
          <h2>
            <bdi>{title}</bdi>
          </h2>
        )}
        <p>
          {sections.some(({ song }) => song)
            ? 'These songs have no blocks yet. Drag blocks onto them, and the sheet is printed here.'
            : 'This ride is empty. Add a song, then drag blocks onto it, and the sheet is printed here.'}
        </p>
      </div>
    </div>
  )
}
