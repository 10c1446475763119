import type { en } from '#words/en/index.ts'

const SEVERITIES = { problem: 'beheben', warning: 'überlegen', hint: 'gut zu wissen' }

export const checkList: typeof en.checkList = {
  source: 'Quelle',

  title: 'Prüfung',
  ofOffer: 'Prüfung mit dieser Änderung',
  counted: ({ severity, count }) => `${SEVERITIES[severity]} (${count})`,
  all: ({ count }) => `alle (${count})`,
  nothing: 'Nichts zu beheben. Der Ride geht auf.',
  noneLeft: 'nichts mehr offen',
  which: 'welche Meldungen',
  song: 'Song',
  allSongs: 'alle Songs',
  wholeRide: ({ count }) => `ganzer Ride (${count})`,
  inSong: ({ place, name, count }) => `${place}. ${name} (${count})`,
  noneHere: 'Hier nichts.',
  showAll: ({ kinds }) => `alle ${kinds} Arten zeigen`,
  showFewer: 'weniger zeigen',

  toFix: 'Beheben:',
  ofRide: 'Ride',
  goThere: 'Stelle zeigen',
  hide: 'Das ist so gewollt. Ausblenden.',
  places: ({ count }) => `${count} Stellen`,
  placesOf: ({ count, kind }) => `${count} Stellen: ${kind}`,
  fixAll: ({ count }) => `alle ${count} beheben`,
  fixSome: ({ count, of }) => `${count} von ${of} beheben`,
  hideAll: ({ count }) => `Die sind so gewollt. Alle ${count} ausblenden.`,

  later: ({ count }) => `geprüft, sobald der Ride voll ist (${count})`,
  hidden: ({ count }) => `ausgeblendet (${count})`,
  unhide: 'einblenden',
}
