import { tempoOf } from '#plan/model.ts'
import { rescaledSong } from '#plan/songs/rescaledSong.ts'
import type { ShelfSong } from '#plan/songs/shelfSong.ts'
import { useApp } from '#store/useApp.ts'
import { Button } from '#ui/Button.tsx'
import { words } from '#words/words.ts'

/** Half and double of the tempo a song was heard at, one press each; a second press goes back to it. */
export function OctaveButtons({ kept, bpm }: { kept: ShelfSong; bpm: number }) {
  const keepSongs = useApp((state) => state.keepSongs)
  const { grid } = kept.song
  if (!grid) return null
  const now = tempoOf(grid) / bpm
  const take = (share: number) => {
    let song = kept.song
    // Two steps from the one to the other.
    for (let steps = Math.round(Math.log2(share / now)); steps !== 0; steps -= Math.sign(steps))
      song = rescaledSong(song, steps > 0 ? 2 : 0.5)
    void keepSongs([{ ...kept, song }], true)
  }
  return [0.5, 2].map((share) => {
    const pressed = Math.round(Math.log2(now)) === Math.log2(share)
    return (
      <Button key={share} tone="quiet" pressed={pressed} onClick={() => take(pressed ? 1 : share)}>
        {words.songs.octave({ factor: share, bpm: bpm * share })}
      </Button>
    )
  })
}
