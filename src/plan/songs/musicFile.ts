/** What the chooser of files offers. */
export const MUSIC_TYPES = 'audio/*,.mp3,.m4a,.aac,.wav,.ogg,.oga,.opus,.flac'

const ENDINGS = /\.(?:mp3|m4a|aac|wave?|ogg|oga|opus|flac|aiff?)$/i
/** Lists of songs have a type of sound as well. */
const LISTS = /\.(?:m3u8?|pls|xspf|wpl)$/i
/** A second half that some systems write beside each file on foreign disks; it has the name and nothing of the music. */
const SHADOW = /^\._/

/** Whether a file means to be music, by its type or, where the system knows none, its name. Whether it can be heard shows on opening it. */
export function isMusicFile({ name, type }: { name: string; type: string }): boolean {
  if (SHADOW.test(name) || LISTS.test(name)) return false
  return ENDINGS.test(name) || type.startsWith('audio/')
}
