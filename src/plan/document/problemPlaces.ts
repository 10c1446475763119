import type { Path } from '#plan/rules/rule.ts'

/** Lists whose entries a sentence names by number. */
const NUMBERED: Record<string, string> = {
  sections: 'section',
  blocks: 'block',
  parts: 'part',
  cues: 'cue',
  leaders: 'leader',
  riders: 'rider',
  anchors: 'beat anchor',
  odd: 'odd place',
  points: 'calibration point',
  marks: 'mark',
  quiet: 'quiet stretch',
  feelAnchors: 'feel anchor',
  avoidMoves: 'move to avoid',
  setAside: 'finding put aside',
  shaky: 'shaky block',
  trials: 'trial',
  ancestors: 'version before',
}

/** Single things a sentence names. */
const NAMED: Record<string, string> = { song: 'song', bike: 'the bike' }

/** The plain words for a field, by its owner and keys; a key not listed speaks for itself. */
const SUBJECTS: Record<string, string> = {
  '': 'this entry',
  'ride.': 'the ride',
  'ride.id': 'the ride’s id',
  'ride.title': 'the title',
  'ride.language': 'the language of the cues',
  'ride.aim': 'the aim',
  'ride.level': 'the level',
  'ride.slotMinutes': 'the slot',
  'ride.startsAt': 'the start time',
  'ride.briefingSeconds': 'the briefing',
  'ride.clearUpSeconds': 'the clear-up',
  'ride.datum': 'what totals count from',
  'ride.bike': 'the bike',
  'ride.room': 'the room',
  'ride.location': 'the location',
  'ride.leaders': 'the list of leaders',
  'ride.sections': 'the list of sections',
  'ride.houseRules': 'the house rules',
  'ride.avoidMoves': 'the list of moves to avoid',
  'ride.standIn': 'the notes for a substitute',
  'ride.standIn.room': 'the note on the room',
  'ride.standIn.regulars': 'the note on what regulars expect',
  'ride.standIn.mustDo': 'the note on what has to be done',
  'ride.standIn.mustNot': 'the note on what must not be done',
  'ride.setAside': 'the list of findings put aside',
  'ride.shaky': 'the list of shaky blocks',
  'ride.ancestors': 'the list of versions before',
  'ride.privateNotes': 'the private notes',
  'sections.leadInSeconds': 'the lead-in',
  'sections.inCount': 'the in-point',
  'sections.outCount': 'the out-point',
  'sections.lead': 'the lead foot',
  'sections.blocks': 'the list of blocks',
  'sections.song': 'the song',
  'song.grid': 'the beat grid',
  'song.grid.anchors': 'the list of beat anchors',
  'song.grid.beatsPerBar': 'the beats in a bar',
  'song.lengthSeconds': 'the length',
  'song.strikesPerBeat': 'the strikes per beat',
  'song.grid.odd': 'the list of odd places',
  'odd.0': 'the count',
  'odd.1': 'the number of beats',
  'anchors.0': 'the count',
  'anchors.1': 'the second',
  'blocks.length': 'the length',
  'blocks.length.counts': 'the length',
  'blocks.length.seconds': 'the length',
  'blocks.resistance': 'the resistance',
  'blocks.resistance.kind': 'the kind of resistance call',
  'blocks.resistance.mode': 'the kind of change',
  'blocks.resistance.steps': 'the change of resistance',
  'blocks.resistance.from': 'the resistance',
  'blocks.resistance.to': 'the upper resistance',
  'blocks.resistance.orMore': 'the “or more” of the resistance',
  'blocks.resistance.aim': 'the resistance aimed at',
  'blocks.resistance.checkpoint': 'the checkpoint',
  'blocks.resistance.checkpoint.from': 'the checkpoint',
  'blocks.resistance.checkpoint.to': 'the upper end of the checkpoint',
  'blocks.resistance.checkpoint.orMore': 'the “or more” of the checkpoint',
  'blocks.ownTotal': 'the leader’s own total',
  'blocks.cadence': 'the cadence',
  'blocks.cadence.rpm': 'the cadence',
  'blocks.cadence.rampTo': 'the cadence at the end',
  'blocks.strikesPerBeat': 'the strikes per beat',
  'blocks.effort': 'the effort',
  'blocks.effort.from': 'the effort',
  'blocks.effort.to': 'the effort at the end',
  'blocks.hands': 'the place of the hands',
  'blocks.lead': 'the lead foot',
  'blocks.move': 'the move',
  'blocks.move.name': 'the name of the move',
  'blocks.move.counts': 'the counts of the move',
  'blocks.move.side': 'the side of the move',
  'blocks.move.then': 'what the move does next',
  'blocks.easier': 'the easier option',
  'blocks.easier.text': 'the easier option',
  'blocks.harder': 'the harder option',
  'blocks.harder.text': 'the harder option',
  'blocks.cues': 'the list of cues',
  'blocks.mic': 'the speaker',
  'blocks.minEights': 'the fewest eights',
  'blocks.maxEights': 'the most eights',
  'blocks.rounds': 'the number of rounds',
  'blocks.parts': 'the list of parts',
  'blocks.perRound': 'the change per round',
  'blocks.perRound.steps': 'the change per round',
  'cues.lead': 'the lead time',
  'cues.lead.counts': 'the lead time',
  'cues.lead.seconds': 'the lead time',
  'cues.text': 'the words',
  'cues.count': 'the count-in',
  'leaders.wordsPerMinute': 'the speaking rate',
  'bike.unit': 'the unit',
  'bike.stepsPerUnit': 'the number of steps a unit',
  'bike.min': 'the lowest setting',
  'bike.max': 'the highest setting',
  'bike.base': 'the base',
  'bike.brake': 'the kind of brake',
  'bike.brakeFit': 'how the brake was fitted',
  'bike.brakeFit.exponent': 'how power grows with cadence',
  'bike.brakeFit.error': 'how sure that is',
  'bike.calibration': 'how the bike was calibrated',
  'bike.referenceRpm': 'the reference cadence',
  'bike.points': 'the list of calibration points',
  'quiet.from': 'the start',
  'quiet.to': 'the end',
  'points.0': 'the setting',
  'points.1': 'the power',
  'riders.massKg': 'the mass',
  'riders.vo2max': 'the oxygen uptake',
  'riders.criticalPower': 'the critical power',
  'riders.wPrime': 'the work capacity',
  'riders.restingHr': 'the resting heart rate',
  'riders.maxHr': 'the highest heart rate',
  'riders.firstThresholdHr': 'the heart rate at the first threshold',
  'riders.secondThresholdHr': 'the heart rate at the second threshold',
  'riders.basis': 'whether it was tested',
  'riders.trials': 'the list of trials',
  'riders.threeMinuteTest': 'the three-minute test',
  'riders.threeMinuteTest.over': 'what the three-minute mean is of',
  'riders.threeMinuteTest.watts': 'the mean power of the three-minute test',
  'riders.threeMinuteTest.endWatts': 'the power at the end of the three-minute test',
  'riders.threeMinuteTest.peakSecond': 'the second of the peak of the three-minute test',
  'trials.seconds': 'the length',
  'trials.watts': 'the power',
  'riders.baseOffset': 'the base offset',
}

/** A path in words: where ("section 3, set 2, part 1") and what of it ("the effort"). */
interface PathWords {
  place: string
  subject: string
}

/**
 * Says in words where a path leads.
 * @param document the ride as read, consulted only to tell a set from a block.
 */
export function placeOf(path: Path, document: unknown): PathWords {
  const words: string[] = []
  let owner = 'ride'
  let rest: string[] = []
  let held = document
  for (const [i, key] of path.entries()) {
    const list = String(path[i - 1] ?? '')
    held = stepInto(held, key)
    const numbered = typeof key === 'number' ? NUMBERED[list] : undefined
    const named = typeof key === 'string' && i < path.length - 1 ? NAMED[key] : undefined
    if (numbered === undefined && named === undefined) {
      rest.push(String(key))
      continue
    }
    const isSet = list === 'blocks' && typeof held === 'object' && held !== null && 'parts' in held
    words.push(named ?? `${isSet ? 'set' : numbered} ${Number(key) + 1}`)
    owner = named === undefined ? (list === 'parts' ? 'blocks' : list) : String(key)
    rest = []
  }
  return { place: words.join(', '), subject: subjectOf(owner, rest) }
}

function subjectOf(owner: string, rest: string[]): string {
  const key = rest.join('.')
  return SUBJECTS[`${owner}.${key}`] ?? (key === '' ? SUBJECTS[''] : undefined) ?? (rest.length === 1 ? `the ${key}` : `“${key}”`)
}

const stepInto = (held: unknown, key: string | number): unknown =>
  typeof held === 'object' && held !== null ? (held as Record<string | number, unknown>)[key] : undefined

/** "sections[2].blocks[1].effort.from" */
export const pathText = (path: Path): string =>
  path.map((key, i) => (typeof key === 'number' ? `[${key}]` : i === 0 ? key : `.${key}`)).join('')

/** Order of two paths: entry numbers as numbers, names by letters, an owner before what it holds. */
export function comparePaths(a: Path, b: Path): number {
  for (let i = 0; i < Math.min(a.length, b.length); i++) {
    const [x, y] = [a[i]!, b[i]!]
    if (x === y) continue
    return typeof x === 'number' && typeof y === 'number' ? x - y : String(x) < String(y) ? -1 : 1
  }
  return a.length - b.length
}
