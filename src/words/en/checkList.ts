const SEVERITIES = { problem: 'fix', warning: 'consider', hint: 'good to know' }
type Severity = keyof typeof SEVERITIES

/** The list of checks on screen. */
export const checkList = {
  /** The mark behind which a rule or a figure says where it comes from. */
  source: 'source',

  // Its head
  title: 'checks',
  ofOffer: 'checks with this change',
  counted: ({ severity, count }: { severity: Severity; count: number }) => `${SEVERITIES[severity]} (${count})`,
  all: ({ count }: { count: number }) => `all (${count})`,
  nothing: 'Nothing to fix. The ride adds up.',
  noneLeft: 'none left',
  which: 'which checks',
  song: 'song',
  allSongs: 'all songs',
  wholeRide: ({ count }: { count: number }) => `whole ride (${count})`,
  inSong: ({ place, name, count }: { place: number; name: string; count: number }) => `${place}. ${name} (${count})`,
  noneHere: 'None here.',
  showAll: ({ kinds }: { kinds: number }) => `show all ${kinds} kinds`,
  showFewer: 'show fewer',

  // A row
  toFix: 'Fix:',
  ofRide: 'ride',
  goThere: 'show where',
  hide: 'This is intentional. Hide it.',
  places: ({ count }: { count: number }) => `${count} places`,
  placesOf: ({ count, kind }: { count: number; kind: string }) => `${count} places: ${kind}`,
  fixAll: ({ count }: { count: number }) => `Fix all ${count}`,
  fixSome: ({ count, of }: { count: number; of: number }) => `Fix ${count} of ${of}`,
  hideAll: ({ count }: { count: number }) => `These are intentional. Hide all ${count}.`,

  // Below the list
  later: ({ count }: { count: number }) => `checked once the ride is full (${count})`,
  hidden: ({ count }: { count: number }) => `hidden (${count})`,
  unhide: 'unhide',
}
