const LISTS = /\.(?:csv|tsv|xspf|m3u8?)$/i
const PLAIN = /\.txt$/i

/** Whether a file means to be a list of songs, by its name. Systems know no one type of these. */
export const isSongListFile = ({ name }: { name: string }): boolean => LISTS.test(name)

/** Plain text can be a list of songs, one a line; beside music it is as often a note about the album. */
export const isPlainListFile = ({ name }: { name: string }): boolean => PLAIN.test(name)
