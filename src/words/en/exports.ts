import { number } from '#words/forms.ts'

/** What people read in files for other programs. Names of columns and codes in them are English for every program. */
export const exports = {
  /** A cue that is only counted in, as a caption. */
  countsTo: ({ counts, block }: { counts: number; block: string }) => `${number(counts)} counts to ${block}`,
  spokenBy: ({ name, text }: { name: string; text: string }) => `${name}: ${text}`,
  callOf: ({ block, call }: { block: string; call: string }) => `${block}: ${call}`,
  leadIn: 'lead-in',
  roundOf: ({ round, of }: { round: number; of: number }) => `${number(round)} of ${number(of)}`,
}
