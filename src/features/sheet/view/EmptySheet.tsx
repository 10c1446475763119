import { type Paper, pageSize } from '#features/sheet/paging/paper.ts'
import type { Ride } from '#plan/model.ts'
import { words } from '#words/words.ts'
import './page.css'

/** What a ride without blocks has instead of a sheet, on the screen and on paper. */
export function EmptySheet({ ride: { title, sections }, paper }: { ride: Ride; paper: Paper }) {
  const { width, height } = pageSize(paper, { page: 'sheet', orientation: 'portrait' })
  const songs = sections.filter(({ song }) => song).length
  return (
    <div className="sheet-pages sheet-none">
      <style>{`@page { size: ${width}mm ${height}mm; margin: 15mm }`}</style>
      <div>
        {title && (
          <h2>
            <bdi>{title}</bdi>
          </h2>
        )}
        <p>{songs > 0 ? words.sheet.noBlocks({ songs }) : words.sheet.empty}</p>
      </div>
    </div>
  )
}
