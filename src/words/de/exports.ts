import type { en } from '#words/en/index.ts'
import { number } from '#words/forms.ts'

export const exports: typeof en.exports = {
  countsTo: ({ counts, block }) => `${number(counts)} Zählzeiten bis ${block}`,
  spokenBy: ({ name, text }) => `${name}: ${text}`,
  callOf: ({ block, call }) => `${block}: ${call}`,
  leadIn: 'Vorlauf',
  roundOf: ({ round, of }) => `${number(round)} von ${number(of)}`,
}
