import { useMemo } from 'react'
import { canSnap, snapSection } from '#engine/alignment/snapSection.ts'
import { nearestFits } from '#engine/fit/nearestFits.ts'
import { fitSection, type LengthChange } from '#engine/fit/sectionFit.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { isCounted, isSet } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { amountOf } from '#plan/remeasure.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { useApp } from '#store/useApp.ts'
import { formatEightsInput } from '#units/formatEights.ts'
import type { Counts } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

/**
 * Whole lengths for the blocks of a section that fill its song with the least change, listed and seen
 * on the stage before they are taken. Where there are none: why, and the nearest that can be filled.
 * Crooked blocks can be snapped to eights as they are. Nothing while straight blocks fill the song.
 */
export function SectionFit({ sectionId }: { sectionId: string }) {
  // The committed ride: a preview of the fit must not be fitted again.
  const ride = useApp((state) => state.ride)
  const section = ride && findSection(ride, sectionId)
  const fit = useMemo(() => ride && fitSection(ride, sectionId), [ride, sectionId])
  const nearest = useMemo(() => (ride && !fit?.ok ? nearestFits(ride, sectionId) : []), [ride, fit, sectionId])
  if (!section || !fit || !isCounted(section) || section.blocks.length === 0) return null
  const eight = eightOf(section.song?.grid)
  const crooked = canSnap(section) && section.blocks.some((item) => !isSet(item) && amountOf(item.length) % eight !== 0)
  const snap = crooked && (
    <PreviewButton command={snapSection(ride, sectionId)}>{words.panelsSong.snapBlocks({ six: eight === 6 })}</PreviewButton>
  )
  if (fit.ok && fit.changes.length === 0 && !snap) return null
  return (
    <section className="panel-group panel-edit-only" aria-label={words.panelsSong.fitBlocks}>
      <h3>{words.panelsSong.fitBlocks}</h3>
      {snap}
      {fit.ok && fit.changes.length > 0 ? (
        <>
          <Changes changes={fit.changes} eight={eight} />
          {fit.leftOver > 0 && <p className="panel-note">{words.panelsSong.leftOpen({ counts: fit.leftOver, eight })}</p>}
          <PreviewButton command={fit.command}>{words.panelsSong.fitThem}</PreviewButton>
        </>
      ) : fit.ok ? null : (
        <>
          <p className="panel-note">{tell(fit.reason)}</p>
          {nearest.map(({ counts, changes, label, command }) => (
            <div key={counts} className="panel-option">
              <PreviewButton command={command}>{tell(label)}</PreviewButton>
              <Changes changes={changes} eight={eight} />
            </div>
          ))}
        </>
      )}
    </section>
  )
}

function Changes({ changes, eight }: { changes: readonly LengthChange[]; eight: Counts }) {
  return (
    <ul className="panel-changes">
      {changes.map(({ blockId, name, from, to }) => (
        <li key={blockId}>
          {tell(name)}{' '}
          <b>
            {formatEightsInput(from, eight)} → {words.measures.eights(to, eight)}
          </b>
        </li>
      ))}
    </ul>
  )
}
