import { drinkStops } from '#engine/cues/drinkWords.ts'
import { MEASURED_CLASS_LEVEL, noiseDose, weeklyShare } from '#engine/hearing/noiseDose.ts'
import type { RideReport } from '#engine/report.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import type { Ride } from '#plan/model.ts'
import { joinWords } from '#plan/names.ts'
import { formatDuration } from '#units/formatDuration.ts'
import { formatNumber } from '#units/formatNumber.ts'
import { plural } from '#units/plural.ts'
import { gapsOf } from './gapsOf.ts'

/** Something to see to before the doors open. */
interface CheckItem {
  /** Stable while the ride keeps its shape, so that a tick stays where it was made. */
  id: string
  text: string
  /** Figures from this ride. */
  detail?: string
}

export interface CheckGroup {
  name: string
  items: CheckItem[]
}

/** What to see to before this class, in the order it is seen to. Common practice, with figures of the ride. */
export function checklist(ride: Ride, report: RideReport): CheckGroup[] {
  const online = ride.room === 'online'
  return [
    { name: 'music', items: music(ride) },
    { name: online ? 'camera and sound' : 'room', items: online ? camera(ride, report) : room(ride, report) },
    { name: 'riders', items: riders(ride, report) },
    { name: 'yourself', items: yourself(ride) },
  ].filter(({ items }) => items.length > 0)
}

function music(ride: Ride): CheckItem[] {
  const songs = ride.sections.flatMap(({ song }) => (song ? [song] : []))
  if (songs.length === 0) return []
  const unclean = songs.filter(({ clean }) => clean === false).map(({ title }) => `“${title}”`)
  const ends = songs.length === 1 ? `“${songs[0]!.title}”` : `first “${songs[0]!.title}”, last “${songs.at(-1)!.title}”`
  return [
    { id: 'order', text: `playlist in order, ${plural(songs.length, 'song')}`, detail: ends },
    { id: 'player', ...gapsOf(ride) },
    { id: 'shuffle', text: 'shuffle and repeat off' },
    { id: 'offline', text: 'every song kept offline and begun once; airplane mode on, notifications off' },
    ...(unclean.length > 0 ? [{ id: 'clean', text: 'words that may not suit the room', detail: joinWords(unclean) }] : []),
    { id: 'spare', text: 'a second player or phone with the same list, cable and charger' },
    { id: 'silence', text: 'the page for when the music fails, printed' },
  ]
}

function room(ride: Ride, report: RideReport): CheckItem[] {
  return [
    { id: 'mic', text: `microphone and spare battery${ride.leaders.length > 1 ? ', one for each of you or a planned hand-over' : ''}` },
    sound(report),
    { id: 'air', text: 'fans, doors and light as the room has them; clock in sight' },
    { id: 'bikes', text: 'your own bike set up; broken ones marked' },
  ]
}

/** What a class at its usual level costs of a day's limit, and what it costs at the limit's own level. */
function sound({ overall }: RideReport): CheckItem {
  const minutes = overall.total / 60
  const share = (level: number) => `${formatNumber(noiseDose(level, minutes), 0)} %`
  return {
    id: 'sound',
    text: 'sound level checked from the back row; best at 85 dB(A) or under',
    detail:
      `this class is ${share(MEASURED_CLASS_LEVEL)} of a day’s noise at the ${MEASURED_CLASS_LEVEL} dB(A) measured in classes, ${share(85)} at 85 (NIOSH 98-126); ` +
      `${formatNumber(weeklyShare(MEASURED_CLASS_LEVEL, minutes), 0)} % of a listener’s week (WHO-ITU H.870); national rules differ`,
  }
}

function camera(ride: Ride, report: RideReport): CheckItem[] {
  const { seconds } = openingCard(ride, report)
  return [
    { id: 'picture', text: 'camera sees knob, feet and shoulders; light from the front' },
    { id: 'voice', text: 'voice over music heard on a second device with headphones' },
    { id: 'line', text: 'cable in place of a wireless network; everything else on it switched off' },
    { id: 'opening', text: 'opening card at hand', detail: `${formatDuration(Math.ceil(seconds))} to say` },
  ]
}

function riders(ride: Ride, { blocks, cues, overall }: RideReport): CheckItem[] {
  const drinks = drinkStops(blocks, cues.lines)
  const online = ride.room === 'online'
  const briefing =
    ride.briefingSeconds > 0 ? `${formatDuration(ride.briefingSeconds)} planned` : 'no time is planned for it: do it before the slot begins'
  return [
    { id: 'brake', text: 'brake shown: the knob pressed down stops the wheel; no coasting', detail: briefing },
    { id: 'newcomers', text: online ? FIRST_TIME_AT_HOME : FIRST_TIME },
    {
      id: 'water',
      text: online ? 'riders told to keep water and a towel in reach' : 'water and towel on every bike',
      detail:
        drinks.length > 0
          ? `first drink at ${formatDuration(drinks[0]!)}, ${drinks.length} planned`
          : `no drink is planned in ${formatDuration(overall.total)}`,
    },
  ]
}

const FIRST_TIME = 'first-timers met: bike set up, base found, “your own ride”, injuries and pregnancy told to you'
const FIRST_TIME_AT_HOME =
  'words for first-timers ready: set the bike up by its manual, find your base, “your own ride”, ask a doctor first if in doubt'

function yourself(ride: Ride): CheckItem[] {
  const leaders = ride.leaders.map(({ name }) => name)
  return [
    { id: 'sheet', text: 'sheet clipped to the bike, read once from the saddle in the room’s own light' },
    ...(leaders.length > 1 ? [{ id: 'team', text: 'hand-overs agreed', detail: joinWords(leaders) }] : []),
    { id: 'self', text: 'water, towel, shoes; warmed up enough to speak and ride' },
  ]
}
