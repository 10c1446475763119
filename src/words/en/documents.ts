import { grouped, number } from '#words/forms.ts'
import { ENTRIES, FIELDS } from './documentParts.ts'

/** What is said of a ride's file as a whole, and where in it something stands. */
export const documents = {
  notARide: 'This isn’t a ride: it has no schema number.',
  newer: ({ schema }: { schema: number }) => `This ride was made with a newer version (document ${number(schema)}). Update to open it.`,
  badSchema: 'The schema number of this ride is damaged; it should be 1 or more.',
  cannotMigrate: ({ schema }: { schema: number }) =>
    `This ride was made with an old version (document ${number(schema)}) and couldn’t be brought up to date.`,
  tooDeep: 'This can’t be opened: it’s nested far deeper than any ride.',
  tooLarge: 'This can’t be opened: it’s far larger than any ride.',
  unreadable: 'This can’t be read.',
  /** The last of a list of problems. */
  more: ({ count }: { count: number }) => (count === 1 ? 'And one more problem.' : `And ${grouped(count)} more problems.`),

  // As a file is opened
  notOpened: ({ file, why }: { file: string; why: string }) => `“${file}” wasn’t opened. ${why}`,
  fileTooLarge: 'It’s far larger than any ride.',
  fileUnreadable: 'It couldn’t be read from the disk.',
  fileOfOther: 'It isn’t a ride. A ride is a file that ends in .ride.json, saved here.',
  filePartlyWrong: 'Here’s what’s wrong in it:',
  fileDiffers: ({ title }: { title: string }) =>
    `“${title}” on this device differs from the file, so the file is shown read-only. See what changed, or keep a copy to have both.`,

  // Where in a ride something stands
  /** "song 3, block 2: the effort" */
  at: ({ entries, field }: { entries: readonly string[]; field: string }) =>
    entries.length === 0 ? field : `${entries.join(', ')}: ${field}`,
  entry: ({ list, place }: { list: keyof typeof ENTRIES; place: number }) => `${ENTRIES[list]} ${number(place)}`,
  bike: 'the bike',
  field: ({ field }: { field: string }) => (FIELDS as Readonly<Record<string, string | undefined>>)[field] ?? 'this entry',
  rule: ({ name }: { name: string }) => `the studio rule “${name}”`,

  // What was found in place of a value
  foundText: ({ text }: { text: string }) => `“${text}”`,
  foundNumber: ({ value }: { value: number }) => (Math.abs(value) < 1e12 ? number(value, 9) : String(value)),
  foundNaN: 'not a number',
  foundEndless: 'endless',
  foundEmpty: 'empty',
  foundOther: 'something a file can’t hold',
}
