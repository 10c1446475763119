import { drinkStops } from '#engine/cues/drinkWords.ts'
import { MEASURED_CLASS_LEVEL, noiseDose, weeklyShare } from '#engine/hearing/noiseDose.ts'
import type { RideReport } from '#engine/report.ts'
import { speechOf } from '#engine/speech/speechOf.ts'
import { openingCard } from '#engine/words/openingCard.ts'
import type { Ride } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'
import { gapsOf } from './gapsOf.ts'

/** Something to see to before the doors open. */
interface CheckItem {
  /** Stable while the ride keeps its shape, so that a tick stays where it was made. */
  id: string
  text: Text
  /** Figures from this ride. */
  detail?: Text
}

export interface CheckGroup {
  name: Text
  items: CheckItem[]
}

/** What to see to before this class, in the order it is seen to. Common practice, with figures of the ride. */
export function checklist(ride: Ride, report: RideReport): CheckGroup[] {
  const online = ride.room === 'online'
  return [
    { name: say('prepare.music'), items: music(ride) },
    { name: say(online ? 'prepare.camera' : 'prepare.room'), items: online ? camera(ride, report) : room(ride, report) },
    { name: say('prepare.riders'), items: riders(ride, report) },
    { name: say('prepare.yourself'), items: yourself(ride) },
  ].filter(({ items }) => items.length > 0)
}

function music(ride: Ride): CheckItem[] {
  const songs = ride.sections.flatMap(({ song }) => (song ? [song] : []))
  if (songs.length === 0) return []
  const [first, last] = [songs[0]!.title, songs.at(-1)!.title]
  const titles = songs.flatMap(({ clean, title }) => (clean === false ? [title] : []))
  return [
    {
      id: 'order',
      text: say('prepare.playlist', { songs: songs.length }),
      detail: songs.length === 1 ? say('prepare.oneSong', { title: first }) : say('prepare.firstLast', { first, last }),
    },
    { id: 'player', ...gapsOf(ride) },
    { id: 'shuffle', text: say('prepare.shuffleOff') },
    { id: 'offline', text: say('prepare.offline') },
    ...(titles.length > 0 ? [{ id: 'clean', text: say('prepare.unclean'), detail: say('prepare.titles', { titles }) }] : []),
    { id: 'spare', text: say('prepare.spare') },
    { id: 'silence', text: say('prepare.noMusicPage') },
  ]
}

const room = (ride: Ride, report: RideReport): CheckItem[] => [
  { id: 'mic', text: say(ride.leaders.length > 1 ? 'prepare.mics' : 'prepare.mic') },
  sound(report),
  { id: 'air', text: say('prepare.air') },
  { id: 'bikes', text: say('prepare.bikes') },
]

/** What a class at its usual level costs of a day's limit, and what it costs at the limit's own level. */
function sound({ overall }: RideReport): CheckItem {
  const minutes = overall.total / 60
  const detail = say('prepare.soundDose', {
    measured: MEASURED_CLASS_LEVEL,
    share: noiseDose(MEASURED_CLASS_LEVEL, minutes) / 100,
    shareAt85: noiseDose(85, minutes) / 100,
    week: weeklyShare(MEASURED_CLASS_LEVEL, minutes) / 100,
  })
  return { id: 'sound', text: say('prepare.soundLevel'), detail }
}

function camera(ride: Ride, report: RideReport): CheckItem[] {
  const { seconds } = openingCard(ride, report)
  return [
    { id: 'picture', text: say('prepare.picture') },
    { id: 'voice', text: say('prepare.voice') },
    { id: 'line', text: say('prepare.line') },
    { id: 'opening', text: say('prepare.opening'), detail: say('prepare.toSay', { seconds: Math.ceil(seconds) }) },
  ]
}

function riders(ride: Ride, { blocks, cues, overall }: RideReport): CheckItem[] {
  const drinks = drinkStops(blocks, cues.lines, speechOf(ride))
  const online = ride.room === 'online'
  const briefing = ride.briefingSeconds > 0 ? say('prepare.briefing', { seconds: ride.briefingSeconds }) : say('prepare.noBriefing')
  return [
    { id: 'brake', text: say('prepare.brake'), detail: briefing },
    { id: 'newcomers', text: say(online ? 'prepare.firstTimersAtHome' : 'prepare.firstTimers') },
    {
      id: 'water',
      text: say(online ? 'prepare.waterAtHome' : 'prepare.water'),
      detail:
        drinks.length > 0
          ? say('prepare.drinks', { first: drinks[0]!, count: drinks.length })
          : say('prepare.noDrinks', { seconds: overall.total }),
    },
  ]
}

function yourself(ride: Ride): CheckItem[] {
  const names = ride.leaders.map(({ name }) => name)
  return [
    { id: 'sheet', text: say('prepare.sheet') },
    ...(names.length > 1 ? [{ id: 'team', text: say('prepare.team'), detail: say('prepare.names', { names }) }] : []),
    { id: 'self', text: say('prepare.self') },
  ]
}
