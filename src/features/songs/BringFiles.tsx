import { type DragEvent, useState } from 'react'
import { MUSIC_TYPES } from '#plan/songs/musicFile.ts'
import { useApp } from '#store/useApp.ts'
import { FilesButton } from '#ui/FileButton.tsx'
import { words } from '#words/words.ts'

/** Files of music, or a folder of them, chosen for the shelf. What is dropped is taken by the page, here as anywhere. */
export function BringFiles() {
  const hears = useApp((state) => state.hearSong !== null)
  const hearForShelf = useApp((state) => state.hearForShelf)
  const [over, setOver] = useState(false)
  if (!hears) return null
  const isOver = ({ dataTransfer }: DragEvent) => setOver(dataTransfer.types.includes('Files'))
  return (
    <section
      className="shelf-files"
      aria-labelledby="shelf-files"
      data-over={over || undefined}
      onDragOver={isOver}
      onDragLeave={() => setOver(false)}
      onDrop={() => setOver(false)}
    >
      <h2 id="shelf-files" className="ui-hidden">
        {words.songs.files}
      </h2>
      <FilesButton tone="solid" accept={MUSIC_TYPES} onFiles={hearForShelf}>
        {words.songs.addFiles}
      </FilesButton>
      <FilesButton folder accept={MUSIC_TYPES} onFiles={hearForShelf}>
        {words.songs.addFolder}
      </FilesButton>
      <p className="shelf-quiet">{words.songs.dropFiles}</p>
    </section>
  )
}
