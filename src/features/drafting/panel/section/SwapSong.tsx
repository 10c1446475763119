import { useMemo } from 'react'
import { replaceSong } from '#engine/fit/replaceSong.ts'
import { sayMoved } from '#engine/fit/sayMoved.ts'
import { PreviewButton } from '#features/drafting/PreviewButton.tsx'
import { PlansWithSong } from '#features/drafting/panel/section/songPlans/PlansWithSong.tsx'
import { setSong } from '#plan/commands/setSong.ts'
import type { Song } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { eightOf } from '#plan/songs/beatGrid.ts'
import { useApp } from '#store/useApp.ts'
import { tell, words } from '#words/words.ts'

interface SwapSongProps {
  sectionId: string
  /** The other song as far as it is written down; null without a title. */
  song: Song | null
  onDone: () => void
}

/** What another song would do to a section: what is kept, what falls off its end, and how the clock moves; then the change itself. */
export function SwapSong({ sectionId, song, onDone }: SwapSongProps) {
  const ride = useApp((state) => state.ride)
  const swap = useMemo(
    () => ride && song && { command: setSong(ride, { sectionId, song }), does: replaceSong(ride, sectionId, song) },
    [ride, song, sectionId],
  )
  const section = ride && findSection(ride, sectionId)
  if (!ride || !section) return null
  const sentences = swap
    ? [
        ...(swap.does
          ? [
              words.panelsSong.blocksKept({
                count: section.blocks.length,
                counts: swap.does.needed,
                eight: eightOf(section.song?.grid),
              }),
              ...swap.does.sentences.map(tell),
            ]
          : [measures(section.song?.grid !== undefined)]),
        ...sayMoved(ride, swap.command.apply(ride), sectionId).map(tell),
      ]
    : [measures(section.song?.grid !== undefined)]
  return (
    <>
      {sentences.map((sentence) => (
        <p key={sentence} className="panel-beside">
          {sentence}
        </p>
      ))}
      <p className="panel-beside">
        {swap ? (
          <PreviewButton command={swap.command} onDone={onDone}>
            {words.panelsSong.replaceSong}
          </PreviewButton>
        ) : (
          words.panelsSong.titleToSee
        )}
      </p>
      {song && <PlansWithSong sectionId={sectionId} song={song} onDone={onDone} />}
    </>
  )
}

const measures = (counted: boolean): string => (counted ? words.panelsSong.keepCounts : words.panelsSong.becomeEights)
