import type { en } from '#words/en/index.ts'

export const checks: typeof en.checks = {
  fixIn: ({ fix, block }) => `${fix} in ${block}`,
  wouldBring: ({ fix, finding }) => `„${fix}“ brächte eine neue Meldung: ${finding}`,
  wouldWorsen: ({ fix, finding }) => `„${fix}“ würde eine andere Meldung verschlimmern: ${finding}`,
  goesAgainst: ({ fix, other }) => `„${fix}“ widerspräche „${other}“, und das wiegt schwerer.`,
}
