import { type Parsed, parsed, refused } from '#units/parsed.ts'
import { words } from '#words/words.ts'

/** Longest file taken for a list, in bytes: some fifty thousand songs. */
const LONGEST = 4_000_000

/**
 * The text of a list of songs. Players and spreadsheets write Unicode with or without a mark at
 * its head, and old ones the letters of Western Europe: what is no UTF-8 is read as those.
 */
export async function textOfList(file: File): Promise<Parsed<string, string>> {
  if (file.size > LONGEST) return refused(words.songs.tooLarge({ file: file.name }))
  const bytes = await file.arrayBuffer().catch(() => null)
  if (!bytes) return refused(words.songs.unreadable({ file: file.name }))
  const marked = MARKS.find(({ mark }) => mark.every((byte, i) => new Uint8Array(bytes)[i] === byte))
  if (marked) return parsed(new TextDecoder(marked.letters).decode(bytes))
  try {
    return parsed(new TextDecoder('utf-8', { fatal: true }).decode(bytes))
  } catch {
    return parsed(new TextDecoder('windows-1252').decode(bytes))
  }
}

/** What stands at the head of text in two bytes a letter. */
const MARKS = [
  { mark: [0xff, 0xfe], letters: 'utf-16le' },
  { mark: [0xfe, 0xff], letters: 'utf-16be' },
] as const
