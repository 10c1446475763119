import { useState } from 'react'
import { OptionalQuantityRow } from '#features/drafting/panel/rows/OptionalQuantityRow.tsx'
import { TextRow } from '#features/drafting/panel/rows/TextRow.tsx'
import { formatSongLength, formatTempo, parseSongLength, parseTempo } from '#features/drafting/panel/section/rules.ts'
import { gridOfTempo } from '#plan/beatGrid.ts'
import type { Song } from '#plan/model.ts'
import { strikesForTempo, USUAL_SONG } from '#plan/sectionsFromPlaylist.ts'
import { Button } from '#ui/Button.tsx'
import type { Bpm, Seconds } from '#units/units.ts'

export interface NewSongProps {
  /** The words of the button: "add the song", "swap the song". */
  action: string
  /** Another song than the section has: its fields are then called new. */
  replaces?: boolean
  /** Says what will happen to the blocks. */
  consequence: string
  newId: () => string
  onSong: (song: Song) => void
}

/** A song written down: its title, and its tempo and length as far as they are known. */
export function NewSong({ action, replaces, consequence, newId, onSong }: NewSongProps) {
  const [title, setTitle] = useState<string>()
  const [artist, setArtist] = useState<string>()
  const [bpm, setBpm] = useState<Bpm>()
  const [length, setLength] = useState<Seconds>()
  const again = replaces ? 'new ' : ''
  const make = () => {
    if (title === undefined) return
    onSong({
      id: newId(),
      title,
      ...(artist && { artist }),
      ...(bpm && { grid: gridOfTempo(bpm) }),
      lengthSeconds: length ?? USUAL_SONG,
      strikesPerBeat: bpm ? strikesForTempo(bpm) : null,
    })
  }
  return (
    <div className="panel-rows">
      <TextRow label={`${again}title`} value={title} longest={300} placeholder="a song needs a title" onChange={setTitle} />
      <TextRow label={`${again}artist`} value={artist} longest={300} onChange={setArtist} />
      <OptionalQuantityRow
        label={`${again}tempo`}
        value={bpm}
        placeholder="bpm, if you know it"
        format={formatTempo}
        parse={parseTempo}
        onChange={setBpm}
      />
      <OptionalQuantityRow
        label={`${again}length`}
        value={length}
        placeholder={formatSongLength(USUAL_SONG)}
        format={formatSongLength}
        parse={parseSongLength}
        onChange={setLength}
      />
      <p className="panel-beside">{consequence}</p>
      <p className="panel-beside">
        <Button tone="action" disabled={title === undefined} onClick={make}>
          {action}
        </Button>
      </p>
    </div>
  )
}
