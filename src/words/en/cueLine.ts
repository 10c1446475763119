import { clock, plural } from '#words/forms.ts'

/** The line that cues are written in, block after block. */

type Lead = { counts: number } | { seconds: number }

const length = (lead: Lead) => ('counts' in lead ? plural(lead.counts, 'count', 'counts') : plural(lead.seconds, 'second', 'seconds'))

type Spot = 'preview' | 'before' | 'countIn' | 'change' | 'start' | 'middle' | 'lastTwo' | 'lastOne' | 'end' | 'beforeChange' | 'beforeEnd'

/** A moment of a block: most have a name; the others are told by how long before the change or the end the words are over. */
function spot({ name, lead }: { name: Spot; lead: Lead }): string {
  switch (name) {
    case 'preview':
      return `preview, ${length(lead)} before`
    case 'before':
    case 'beforeChange':
      return `${length(lead)} before`
    case 'countIn':
      return 'count-in'
    case 'change':
      return 'on the change'
    case 'start':
      return 'as it begins'
    case 'middle':
      return 'halfway through'
    case 'lastTwo':
      return 'counts' in lead && lead.counts === 12 ? 'at the last two sixes' : 'at the last two eights'
    case 'lastOne':
      if ('seconds' in lead) return `at the last ${length(lead)}`
      return lead.counts === 6 ? 'at the last six' : 'at the last eight'
    case 'end':
      return 'at the end'
    case 'beforeEnd':
      return `${length(lead)} before the end`
  }
}

export const cueLine = {
  write: 'write a cue',
  writeDo: 'write what you say at this block, and go on to the next',
  field: ({ name, moment }: { name: string; moment: string }) => `cue for “${name}”, ${moment}`,
  spot,
  at: ({ at }: { at: number }) => `at ${clock(at)}`,
  placeholder: 'what you say',
  earlier: 'earlier moment',
  later: 'later moment',
  blockBefore: 'previous block',
  blockAfter: 'next block',
  add: 'add the cue',
  change: 'change the cue',
  remove: 'remove the cue',
  close: 'close',
  suggestions: 'what you could say here',
  countIn: ({ counts }: { counts: number }) => `count-in ${counts}`,
  help: 'keys',
  keyKeep: 'keep the cue and go on to the next free moment',
  keyChoose: 'choose a suggestion, and Enter keeps it',
  keyFill: 'put the chosen suggestion into the line, to edit it',
  keyMoment: 'earlier or later moment; words just typed go along',
  keyMove: 'move the cue that is there to an earlier or later moment',
  keyBlock: 'keep the cue and go to the previous or next block',
  keyDrop: 'drop what was typed and close the line',
  keys: 'writing a cue',

  // Undo and announcements.
  changed: ({ text }: { text: string }) => `Changed the cue to “${text}”`,
  moved: ({ text }: { text: string }) => `Moved the cue “${text}”`,
  movedCountIn: 'Moved the count-in',
  removed: ({ text }: { text: string }) => `Removed the cue “${text}”`,
  removedCountIn: 'Removed the count-in',
  addedCountIn: 'Added a count-in',
}
