/** Decoded songs are large, some ten megabytes a minute: the one that plays and the next one are held, no more. */
const MOST_OPEN = 2

/** The decoded songs a player holds. */
interface OpenSongs {
  /** The song, once it is decoded. */
  get: (song: string) => AudioBuffer | null
  /** Decodes it unless it is; null where its file is gone or cannot be read, which is said once. */
  open: (song: string) => Promise<AudioBuffer | null>
  /** Opens the first of these and lets go of all others. */
  holdFirst: (songs: readonly string[]) => void
  /** Tries files again that could not be read: another one may have been given. */
  forgetFailed: () => void
}

export function createOpenSongs(
  decode: (bytes: ArrayBuffer) => Promise<AudioBuffer>,
  fileOf: (song: string) => Promise<Blob | null>,
  onFailed: (song: string) => void,
): OpenSongs {
  const open = new Map<string, { file: AudioBuffer | null; opening: Promise<AudioBuffer | null> }>()
  const failed = new Set<string>()

  async function read(song: string): Promise<AudioBuffer | null> {
    try {
      const file = await fileOf(song)
      if (file) return await decode(await file.arrayBuffer())
    } catch {
      // Said below, as if it were not there.
    }
    failed.add(song)
    open.delete(song)
    onFailed(song)
    return null
  }

  function ask(song: string): Promise<AudioBuffer | null> {
    if (failed.has(song)) return Promise.resolve(null)
    const known = open.get(song)
    if (known) return known.opening
    const opening = read(song).then((file) => {
      const entry = open.get(song)
      if (entry) entry.file = file
      return file
    })
    open.set(song, { file: null, opening })
    return opening
  }

  return {
    get: (song) => open.get(song)?.file ?? null,
    open: ask,
    holdFirst: (songs) => {
      const held = [...new Set(songs)].slice(0, MOST_OPEN)
      for (const song of open.keys()) if (!held.includes(song)) open.delete(song)
      for (const song of held) void ask(song)
    },
    forgetFailed: () => failed.clear(),
  }
}
