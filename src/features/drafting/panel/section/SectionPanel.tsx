import { useMemo, useState } from 'react'
import { LeaderRows } from '#features/drafting/panel/LeaderRows.tsx'
import { Fold } from '#features/drafting/panel/rows/Fold.tsx'
import { QuantityRow } from '#features/drafting/panel/rows/QuantityRow.tsx'
import { SelectRow } from '#features/drafting/panel/rows/SelectRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { actionsOnSection, type SectionActions } from '#features/drafting/panel/section/actionsOnSection.ts'
import { HearBeat } from '#features/drafting/panel/section/beat/HearBeat.tsx'
import { HearSong } from '#features/drafting/panel/section/HearSong.tsx'
import { NewSong } from '#features/drafting/panel/section/NewSong.tsx'
import { RiddenFields } from '#features/drafting/panel/section/RiddenFields.tsx'
import { SectionFit } from '#features/drafting/panel/section/SectionFit.tsx'
import { SectionHeader, SectionNotes } from '#features/drafting/panel/section/SectionHeader.tsx'
import { KeepSong, ShelfSongs } from '#features/drafting/panel/section/ShelfSongs.tsx'
import { SongFields } from '#features/drafting/panel/section/SongFields.tsx'
import { SwapSong } from '#features/drafting/panel/section/SwapSong.tsx'
import { AnotherSongsPlan } from '#features/drafting/panel/section/songPlans/AnotherSongsPlan.tsx'
import { SongPlans } from '#features/drafting/panel/section/songPlans/SongPlans.tsx'
import { type Foot, isSet, type Section } from '#plan/model.ts'
import { findSection } from '#plan/places.ts'
import { parseLeadIn } from '#plan/songs/songRules.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import type { Choice } from '#ui/Select.tsx'
import { number } from '#words/forms.ts'
import { words } from '#words/words.ts'

const NOT_SET = 'none'
const footChoices = (): readonly Choice<Foot | typeof NOT_SET>[] => [
  { value: NOT_SET, label: words.panelsSong.notSet },
  { value: 'left', label: words.names.foot({ foot: 'left' }) },
  { value: 'right', label: words.names.foot({ foot: 'right' }) },
]

/** Everything about one section: its song, how it is reached, and what may be done with the song. */
export function SectionPanel({ sectionId }: { sectionId: string }) {
  const section = useApp((state) => state.shown && findSection(state.shown, sectionId))
  return section ? <SectionFields section={section} /> : null
}

function SectionFields({ section }: { section: Section }) {
  const store = useAppStore()
  const houseRules = useApp((state) => state.shown!.houseRules)
  const does = useMemo(() => actionsOnSection(store, section.id), [store, section.id])
  // As it is without a preview: what offers another song must not go away while that song is seen.
  const committed = useApp((state) => state.ride && findSection(state.ride, section.id))
  const { song } = section
  const blocks = useMemo(() => section.blocks.flatMap((item) => (isSet(item) ? item.parts : [item])), [section.blocks])
  return (
    <>
      <SectionHeader section={section} />
      <SectionFit sectionId={section.id} />
      {song && <SongPlans key={`plans of ${section.id}`} sectionId={section.id} />}
      {/* Under the button that changes it: what stands above a button must not move while its preview is shown. */}
      <SectionNotes sectionId={section.id} />
      <div className="panel-rows">
        {song && <SongFields sectionId={section.id} song={song} blocks={section.blocks} houseRules={houseRules} does={does} />}
        {song?.grid && <RiddenFields song={song} grid={song.grid} inCount={section.inCount} outCount={section.outCount} does={does} />}
        <QuantityRow
          label={words.panelsSong.leadIn}
          value={section.leadInSeconds}
          unit={section.leadInSeconds < 0 ? words.panelsSong.crossfade : words.panelsSong.beforeCount}
          format={(seconds) => number(seconds, 1)}
          parse={parseLeadIn}
          onChange={(leadInSeconds) => does.edit({ leadInSeconds })}
          step={(seconds, direction, large) => Math.max(-600, Math.min(600, seconds + direction * (large ? 5 : 1)))}
        />
        {song?.grid && (
          <SelectRow
            label={words.panels.leadFoot}
            value={section.lead ?? NOT_SET}
            choices={footChoices()}
            onChange={(foot) => does.edit({ lead: foot === NOT_SET ? undefined : foot })}
          />
        )}
        <TextRow
          label={words.panels.name}
          value={section.title}
          placeholder={song?.title ?? words.panelsSong.nameHint}
          longest={300}
          onChange={(title) => does.edit({ title })}
        />
        <TextRow
          label={words.panels.notes}
          value={section.notes}
          rows={1}
          placeholder={words.panels.notesHint}
          longest={10_000}
          onChange={(notes) => does.edit({ notes })}
        />
        <LeaderRows blocks={blocks} />
      </div>
      {song?.grid && <HearBeat section={section} song={song} grid={song.grid} />}
      {/* Another key for another section: what is still being heard for the one before it stops. */}
      <HearSong
        key={section.id}
        sectionId={section.id}
        song={song}
        blocks={blocks}
        houseRules={houseRules}
        newId={does.newId}
        onSong={does.setSong}
      />
      <SongChange section={committed ?? section} does={does} />
    </>
  )
}

/** Another song, or none; the words say what becomes of the blocks. */
function SongChange({ section, does }: { section: Section; does: SectionActions }) {
  const { song } = section
  // Another key after each swap, so that the form is empty for the next one.
  const [swaps, setSwaps] = useState(0)
  if (!song) {
    return (
      <section className="panel-group panel-edit-only" aria-label={words.panelsSong.song}>
        <h3>{words.panelsSong.addSong}</h3>
        <ShelfSongs section={section} onTaken={() => setSwaps(swaps + 1)} />
        <NewSong key={swaps} newId={does.newId}>
          {(next) => (
            <>
              <p className="panel-beside">{words.panelsSong.becomeEights}</p>
              <p className="panel-beside">
                <Button
                  tone="action"
                  disabled={next === null}
                  onClick={() => {
                    does.setSong(next)
                    setSwaps(swaps + 1)
                  }}
                >
                  {words.panelsSong.addTheSong}
                </Button>
              </p>
            </>
          )}
        </NewSong>
      </section>
    )
  }
  return (
    <div className="panel-edit-only panel-parts-only">
      <KeepSong song={song} />
      <AnotherSongsPlan key={`plan of another for ${section.id}`} sectionId={section.id} />
      <Fold title={words.panelsSong.replaceSong}>
        <ShelfSongs key={song.id} section={section} onTaken={() => setSwaps(swaps + 1)} />
        <NewSong key={swaps} replaces newId={does.newId}>
          {(next) => <SwapSong sectionId={section.id} song={next} onDone={() => setSwaps(swaps + 1)} />}
        </NewSong>
      </Fold>
      <Fold title={words.panelsSong.removeSong}>
        <p className="panel-note">{song.grid ? words.panelsSong.removeBeat : words.panelsSong.removeOnly}</p>
        <Button onClick={() => does.setSong(null)}>{words.panelsSong.removeNamed({ title: song.title })}</Button>
      </Fold>
    </div>
  )
}
