import { type ReactNode, useMemo, useState } from 'react'
import { sayTempo } from '#engine/alignment/sayTempo.ts'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import type { Song } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { strikesForTempo, USUAL_SONG } from '#plan/songs/sectionsFromPlaylist.ts'
import { formatSongLength, formatTempo, parseSongLength, parseTempo } from '#plan/songs/songRules.ts'
import type { Bpm, Seconds } from '#units/units.ts'
import { tell, words } from '#words/words.ts'

interface NewSongProps {
  /** Another song than the section has: its fields are then called new. */
  replaces?: boolean
  newId: () => string
  /** What comes under the fields: what the song will do, and the way to take it. Null while it has no title. */
  children: (song: Song | null) => ReactNode
}

/** A song written down: its title, and its tempo and length as far as they are known. */
export function NewSong({ replaces, newId, children }: NewSongProps) {
  const [id] = useState(newId)
  const [title, setTitle] = useState<string>()
  const [artist, setArtist] = useState<string>()
  const [bpm, setBpm] = useState<Bpm>()
  const [length, setLength] = useState<Seconds>()
  const { panels, panelsSong: ours } = words
  const tempoNote = bpm === undefined ? null : sayTempo(bpm)
  const song = useMemo(() => (title === undefined ? null : songOf(id, title, artist, bpm, length)), [id, title, artist, bpm, length])
  return (
    <div className="panel-rows">
      <TextRow
        label={replaces ? ours.newTitle : panels.title}
        value={title}
        longest={300}
        placeholder={ours.titleHint}
        onChange={setTitle}
      />
      <TextRow label={replaces ? ours.newArtist : ours.artist} value={artist} longest={300} onChange={setArtist} />
      <OptionalQuantityRow
        label={replaces ? ours.newTempo : ours.tempo}
        value={bpm}
        placeholder={ours.tempoHint}
        format={formatTempo}
        parse={parseTempo}
        onChange={setBpm}
      />
      <OptionalQuantityRow
        label={replaces ? ours.newLength : panels.length}
        value={length}
        placeholder={formatSongLength(USUAL_SONG)}
        format={formatSongLength}
        parse={parseSongLength}
        onChange={setLength}
      />
      {children(song)}
      {/* Under the button that takes the song: above it, it would move it from under the pointer that leaves the tempo. */}
      {tempoNote !== null && <p className="panel-quiet">{tell(tempoNote)}</p>}
    </div>
  )
}

const songOf = (id: string, title: string, artist: string | undefined, bpm: Bpm | undefined, length: Seconds = USUAL_SONG): Song => ({
  id,
  title,
  ...(artist && { artist }),
  ...(bpm && { grid: gridOfTempo(bpm) }),
  lengthSeconds: length,
  strikesPerBeat: bpm ? strikesForTempo(bpm) : null,
})
