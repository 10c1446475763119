import { clock, duration, number, plural } from '#words/forms.ts'

/** The column of details: what all its panels share, and those of a set and of several blocks. */

const MOMENTS = {
  preview: 'preview',
  announce: 'announce',
  countIn: 'count-in',
  action: 'action',
  form: 'form cue',
  story: 'story',
}

export const panels = {
  detailsOfSelection: 'details of the selection',
  details: 'details',
  /** Before the way out: ride, song. */
  detailsOf: 'details of',
  ride: 'ride',
  rideDetails: 'title, class length, room, riders',
  /** In place of a value several things do not share. */
  mixed: 'mixed',

  // Rows that several panels have.
  title: 'title',
  name: 'name',
  notes: 'notes',
  notesHint: 'what to remember',
  length: 'length',
  level: 'level',
  terrain: 'terrain',
  posture: 'posture',
  hands: 'hands',
  leadFoot: 'lead foot',
  leads: 'leads',
  onMic: 'on the mic',
  moment: ({ moment }: { moment: keyof typeof MOMENTS }) => MOMENTS[moment],
  /** The unit of a length typed in groups of six or eight. */
  groups: ({ six }: { six: boolean }): string => (six ? 'sixes' : 'eights'),

  // A set.
  rounds: 'rounds',
  eachAdds: 'each round adds',
  perRound: ({ units }: { units: string }) => `${units} per round`,
  countdown: 'countdown',
  countdownNote: 'Called at the start of each round. The words of a part are the same in every round.',
  whatYouCallIt: 'what you call it',
  parts: 'parts',
  partSays: ({ length, effort }: { length: string; effort: string }) => `${length} · effort ${effort}`,
  expandNote: 'Writes each round out as blocks of its own. The ride stays the same.',
  setPlace: ({ from, to, rounds, each }: { from: number; to: number; rounds: number; each: number }) =>
    `${clock(from)} to ${clock(to)} · ${plural(rounds, 'round', 'rounds')} of ${duration(each)}`,
  setWork: ({ work, easy, ratio }: { work: number; easy: number; ratio: number | null }) =>
    `work ${clock(work)}, easy ${clock(easy)}${ratio === null ? '' : `, ${number(ratio)} : 1`}`,

  // Several blocks.
  changesAll: ({ seconds }: { seconds: number }) => `${duration(seconds)} as played. Changes here apply to all of them.`,
  shiftResistance: 'shift resistance',
  shiftExample: '+¼ or −½',
  set: 'set',
}
