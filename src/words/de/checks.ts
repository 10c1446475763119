import type { en } from '#words/en/index.ts'
import { plural } from '#words/forms.ts'
import { measures } from './measures.ts'

export const checks: typeof en.checks = {
  fixIn: ({ fix, block }) => `${fix} in ${block}`,
  wouldBring: ({ fix, finding }) => `„${fix}“ brächte eine neue Meldung: ${finding}`,
  wouldWorsen: ({ fix, finding }) => `„${fix}“ würde eine andere Meldung verschlimmern: ${finding}`,
  goesAgainst: ({ fix, other }) => `„${fix}“ widerspräche „${other}“, und das wiegt schwerer.`,
  fixedMany: ({ count }) => `${plural(count, 'Meldung', 'Meldungen')} behoben`,

  extend: ({ block, by }) => `${block} um ${by} verlängern`,
  extended: ({ block, by }) => `${block} um ${by} verlängert`,
  shorten: ({ block, by }) => `${block} um ${by} kürzen`,
  shortened: ({ block, by }) => `${block} um ${by} gekürzt`,

  add: ({ size }) => `${measures.knob(size)} mehr`,
  added: ({ size, block }) => `${block}: ${measures.knob(size)} mehr`,
  takeOff: ({ size }) => `${measures.knob(size)} weniger`,
  tookOff: ({ size, block }) => `${block}: ${measures.knob(size)} weniger`,

  keepSeated: ({ block }) => `${block} sitzend fahren`,
  madeSeated: ({ block }) => `${block} auf sitzend gestellt`,

  rideOnBeat: 'auf dem Beat fahren',
  putOnBeat: ({ block }) => `${block} auf den Beat gelegt`,
  rideAt: (rpm) => `mit ${measures.rpmRange(rpm)} fahren`,
  setCadence: ({ block, ...rpm }) => `${block} auf ${measures.rpmRange(rpm)} gestellt`,

  stayOnBike: 'auf dem Rad bleiben',
  stayedOnBike: ({ block }) => `In ${block} auf dem Rad geblieben`,
}
