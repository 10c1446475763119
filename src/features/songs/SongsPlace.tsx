import { useEffect, useMemo, useState } from 'react'
import { usePlaceActions } from '#actions/ActionBoardProvider.tsx'
import { ActionButton } from '#actions/ActionButton.tsx'
import { ADD_SONG, SHELF } from '#features/songs/actions/addSong.ts'
import { findSongs, type ShelfSong, SONG_ORDERS, type SongOrder } from '#plan/songs/shelfSong.ts'
import { useApp, useAppStore } from '#store/useApp.ts'
import { useSought } from '#store/useSought.ts'
import { SearchField } from '#ui/SearchField.tsx'
import { Select } from '#ui/Select.tsx'
import { showFound } from '#ui/showFound.ts'
import { useAfterDrawing } from '#ui/useAfterDrawing.ts'
import { words } from '#words/words.ts'
import { BringFiles } from './BringFiles.tsx'
import { BringIn, type ReadList } from './BringIn.tsx'
import { ChosenSongs } from './ChosenSongs.tsx'
import { blankSong, EditSong } from './EditSong.tsx'
import { HearingQueue } from './HearingQueue.tsx'
import { Removed } from './Removed.tsx'
import { SongTable } from './SongTable.tsx'
import './songs.css'

const orders = () => SONG_ORDERS.map((order) => ({ value: order, label: words.songs.order({ order }) }))

/** The songs kept apart from rides: found, corrected, brought in and taken away. */
export function SongsPlace({ readList }: { readList: ReadList }) {
  const store = useAppStore()
  const songs = useApp((state) => state.songs)
  const keepsSongs = useApp((state) => state.keepsSongs)
  const [search, setSearch] = useState('')
  const [order, setOrder] = useState<SongOrder>('title')
  const [chosen, setChosen] = useState<readonly string[]>([])
  const [editing, setEditing] = useState<ShelfSong | null>(null)
  const found = useMemo(() => findSongs(songs, search, order), [songs, search, order])
  const prints = useMemo(() => songs.flatMap(({ song }) => song.fingerprint ?? []), [songs])
  useEffect(() => {
    void store.getState().wantSounds(prints)
  }, [store, prints])
  useEffect(() => {
    const { refreshSongs, refreshSongRides, refreshTaught } = store.getState()
    void Promise.all([refreshSongs(), refreshSongRides(), refreshTaught()])
  }, [store])

  const afterDrawing = useAfterDrawing()
  useSought('song', ({ id }) => {
    setSearch('')
    afterDrawing(() => showFound(document.querySelector(`[data-song="${CSS.escape(id)}"] .shelf-actions button`)))
  })

  const on = { store, add: () => setEditing(blankSong(store.getState().newId())) }
  usePlaceActions(SHELF, () => on)

  const choose = (id: string, taken: boolean) => setChosen((before) => [...before.filter((other) => other !== id), ...(taken ? [id] : [])])
  const keep = async (song: ShelfSong) => {
    if (await store.getState().keepSongs([song])) setEditing(null)
  }
  return (
    <div className="shelf">
      <header className="shelf-head">
        <h1>{words.songs.heading}</h1>
        <p>{keepsSongs ? words.songs.count({ songs: songs.length }) : words.songs.cannotSave}</p>
      </header>
      {keepsSongs && <BringFiles />}
      <div className="shelf-columns">
        <section className="shelf-list" aria-label={words.songs.list}>
          <HearingQueue onEdit={setEditing} />
          <Removed />
          {songs.length > 0 && (
            <div className="shelf-find">
              <SearchField value={search} placeholder={words.songs.search} onChange={setSearch} />
              <Select label={words.songs.sortBy} value={order} choices={orders()} onChange={setOrder} />
            </div>
          )}
          {songs.length === 0 && keepsSongs && <p>{words.songs.none}</p>}
          {songs.length > 0 && found.length === 0 && <p>{words.songs.noneFound({ search: search.trim() })}</p>}
          {songs.length > 0 && (
            <ChosenSongs chosen={chosen.flatMap((id) => songs.find((kept) => kept.id === id) ?? [])} onNone={() => setChosen([])} />
          )}
          {found.length > 0 && <SongTable songs={found} chosen={chosen} onChoose={choose} onEdit={setEditing} />}
        </section>
        {keepsSongs && (
          <aside className="shelf-add" aria-label={words.songs.add}>
            <BringIn readList={readList} />
            <ActionButton action={ADD_SONG} on={on} />
          </aside>
        )}
      </div>
      {editing && <EditSong key={editing.id} kept={editing} onKeep={(song) => void keep(song)} onClose={() => setEditing(null)} />}
    </div>
  )
}
