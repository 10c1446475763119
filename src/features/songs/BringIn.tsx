import { useCallback, useMemo, useRef, useState } from 'react'
import type { PlaylistSong } from '#plan/songs/sectionsFromPlaylist.ts'
import { listOnShelf } from '#plan/songs/shelfSong.ts'
import { useAppStore } from '#store/useApp.ts'
import { useDroppedList } from '#store/useDroppedList.ts'
import { Button } from '#ui/Button.tsx'
import { FileButton } from '#ui/FileButton.tsx'
import { useKeptState } from '#ui/useKeptState.ts'
import type { Text } from '#words/said.ts'
import { tell, tellRefusal, words } from '#words/words.ts'
import { textOfList } from './textOfList.ts'

/** Reads a list of songs; the app supplies it. */
export type ReadList = (text: string) => { songs: PlaylistSong[]; problems: { line: number; text: Text; sentence: Text }[] }

const MOST_PROBLEMS = 5

/** A list of songs, pasted, opened or dropped, added to my songs. */
export function BringIn({ readList }: { readList: ReadList }) {
  const store = useAppStore()
  const [text, setText] = useKeptState('songs, list', '')
  const [refused, setRefused] = useState<string | null>(null)
  const { songs, problems } = useMemo(() => readList(text), [readList, text])

  const field = useRef<HTMLTextAreaElement>(null)
  const takeDropped = useCallback(
    (dropped: string) => {
      setRefused(null)
      setText(dropped)
      field.current?.focus()
    },
    [setText],
  )
  useDroppedList('songs', takeDropped)

  const open = async (file: File) => {
    const read = await textOfList(file)
    setRefused(read.ok ? null : tellRefusal(read.problem))
    if (read.ok) setText(read.value)
  }
  const keep = async () => {
    const { songs: shelf, newId, keepSongs } = store.getState()
    if (await keepSongs(listOnShelf(songs, shelf, newId))) setText('')
  }
  return (
    <section className="shelf-bring" aria-labelledby="shelf-bring">
      <h2 id="shelf-bring">{words.songs.import}</h2>
      <label className="ui-field">
        <span className="ui-field-label">{words.songs.listField}</span>
        <textarea
          ref={field}
          rows={6}
          value={text}
          spellCheck={false}
          placeholder={words.songs.listExample}
          onChange={(event) => setText(event.currentTarget.value)}
        />
      </label>
      <p className="shelf-quiet">{words.songs.listHint}</p>
      <div className="shelf-go">
        <Button tone="solid" disabled={songs.length === 0} onClick={() => void keep()}>
          {words.songs.addCount({ songs: songs.length })}
        </Button>
        <FileButton accept=".txt,.csv,.tsv,.xspf,.m3u,.m3u8,text/*" onFile={(file) => void open(file)}>
          {words.songs.openList}
        </FileButton>
      </div>
      {refused && <p role="alert">{refused}</p>}
      {problems.length > 0 && (
        <ul className="shelf-problems" aria-label={words.songs.linesSkipped}>
          {problems.slice(0, MOST_PROBLEMS).map(({ line, text: said, sentence }) => (
            <li key={line}>{words.songs.lineSkipped({ line, text: tell(said).slice(0, 60), why: tell(sentence) })}</li>
          ))}
          {problems.length > MOST_PROBLEMS && <li>{words.songs.moreLines({ lines: problems.length - MOST_PROBLEMS })}</li>}
        </ul>
      )}
    </section>
  )
}
