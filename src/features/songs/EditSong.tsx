import { useState } from 'react'
import type { Energy } from '#engine/loudness/guessEnergy.ts'
import { patched } from '#plan/edits.ts'
import type { Song } from '#plan/model.ts'
import { USUAL_SONG } from '#plan/songs/sectionsFromPlaylist.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { formatSongLength, parseSongLength } from '#plan/songs/songRules.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { Dialog } from '#ui/Dialog.tsx'
import { Field } from '#ui/Field.tsx'
import { Select } from '#ui/Select.tsx'
import { Source } from '#ui/Source.tsx'
import { tellRefusal, words } from '#words/words.ts'
import { KeepFile } from './KeepFile.tsx'
import { LoudnessLine } from './LoudnessLine.tsx'
import { SongBeats } from './SongBeats.tsx'
import { SongUse } from './SongUse.tsx'
import { guessOf } from './sayEnergy.ts'

interface EditSongProps {
  kept: ShelfSong
  onKeep: (song: ShelfSong) => void
  onClose: () => void
}

export const blankSong = (id: string): ShelfSong => ({
  id,
  song: { id, title: '', lengthSeconds: USUAL_SONG, strikesPerBeat: null },
})

const energies = () =>
  [0, 1, 2, 3, 4, 5].map((energy) => ({
    value: energy === 0 ? '' : `${energy}`,
    label: energy === 0 ? words.songs.notSet : words.songs.energyOf({ energy }),
  }))
const LONGEST = 300

/** All of a kept song, to be put right; it is kept when asked, not while typing. */
export function EditSong({ kept, onKeep, onClose }: EditSongProps) {
  const [draft, setDraft] = useState(kept)
  const { song } = draft
  const change = (patch: Partial<Song>) => setDraft((before) => ({ ...before, song: patched(before.song, patch) }))
  const setText = (text: string, take: (text: string) => void) => {
    if (text.trim().length > LONGEST) return words.songs.atMost({ most: LONGEST })
    take(text.trim())
    return null
  }
  const setLength = (text: string) => {
    const read = parseSongLength(text)
    if (!read.ok) return tellRefusal(read.problem)
    change({ lengthSeconds: read.value })
    return null
  }
  const setEnergy = (value: string) => setDraft(patched(draft, { energy: value === '' ? undefined : (Number(value) as Energy) }))
  return (
    <Dialog
      open
      wide
      title={kept.song.title === '' ? words.songs.newSong : words.songs.editSong({ song: kept.song.title })}
      onClose={onClose}
      closeLabel={words.songs.cancel}
      actions={
        <Button tone="solid" disabled={song.title === ''} onClick={() => onKeep(draft)}>
          {words.songs.save}
        </Button>
      }
    >
      <div className="shelf-edit">
        <Field label={words.songs.title} value={song.title} onCommit={(text) => setText(text, (title) => change({ title }))} />
        <Field
          label={words.songs.artist}
          value={song.artist ?? ''}
          onCommit={(text) => setText(text, (artist) => change({ artist: artist || undefined }))}
        />
        <Field label={words.songs.length} value={formatSongLength(song.lengthSeconds)} onCommit={setLength} />
        <Select label={words.songs.energy} value={draft.energy ? `${draft.energy}` : ''} choices={energies()} onChange={setEnergy} />
        <Sound draft={draft} onEnergy={(energy) => setDraft({ ...draft, energy })} />
        <SongBeats song={song} onChange={(next) => setDraft({ ...draft, song: next })} />
        <label className="shelf-check">
          <input
            type="checkbox"
            checked={song.clean === true}
            onChange={(event) => change({ clean: event.currentTarget.checked || undefined })}
          />
          {words.songs.cleanLyrics}
        </label>
        {song.fingerprint !== undefined && <KeepFile fingerprint={song.fingerprint} />}
        <HearAnew kept={kept} onStart={onClose} />
        <SongUse song={kept.song} />
      </div>
    </Dialog>
  )
}

/** Its loudness over time where its sound is known here, and a guess at its energy from it. */
function Sound({ draft, onEnergy }: { draft: ShelfSong; onEnergy: (energy: Energy) => void }) {
  const sound = useApp((state) => state.sounds.get(draft.song.fingerprint ?? ''))
  if (!sound) return null
  const guess = guessOf(draft, sound)
  return (
    <div className="shelf-energy">
      <LoudnessLine wide loudness={sound.loudness} label={words.songs.loudness({ seconds: Math.round(sound.lengthSeconds) })} />
      {guess !== null && guess !== draft.energy && (
        <p className="shelf-quiet">
          {words.songs.energyGuess({ energy: guess })} <Source text={words.songs.energySource} />
          <Button tone="quiet" onClick={() => onEnergy(guess)}>
            {words.songs.takeEnergy({ energy: guess })}
          </Button>
        </p>
      )}
    </div>
  )
}

/** Listens to a song's file again, which takes the place of beats that were put right. */
function HearAnew({ kept, onStart }: { kept: ShelfSong; onStart: () => void }) {
  const store = useAppStore()
  const { fingerprint = '' } = kept.song
  const there = useApp((state) => state.hearSong !== null && (state.soundFiles.has(fingerprint) || state.keptSoundFiles.has(fingerprint)))
  if (!there) return null
  return (
    <Button
      onClick={() => {
        void store.getState().hearAnew(kept.id)
        onStart()
      }}
    >
      {words.songs.detectAgain}
    </Button>
  )
}
