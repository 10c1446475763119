import { and, duration, number, percent, plural } from '#words/forms.ts'

/** The checklist before class. */

const gap = (seconds: number): string =>
  seconds === 0 ? 'no gap' : seconds < 0 ? `a ${number(-seconds, 1)}-second crossfade` : `${number(seconds, 1)} s`

export const prepare = {
  music: 'music',
  room: 'room',
  camera: 'camera and sound',
  riders: 'riders',
  yourself: 'you',

  // Music
  playlist: ({ songs }: { songs: number }) => `playlist in order, ${plural(songs, 'song', 'songs')}`,
  oneSong: ({ title }: { title: string }) => `“${title}”`,
  firstLast: ({ first, last }: { first: string; last: string }) => `first “${first}”, last “${last}”`,
  crossfadeOff: 'crossfade off',
  crossfadeOffGap: ({ seconds }: { seconds: number }) => `crossfade off, ${gap(seconds)} between songs`,
  playerSetTo: ({ seconds }: { seconds: number }) => `player set to ${gap(seconds)}`,
  /** Joints that differ from the most common one, each before a song by its place. */
  otherGaps: ({ gaps }: { gaps: readonly { seconds: number; place: number }[] }) =>
    [...gaps.map(({ seconds, place }) => `${gap(seconds)} before song ${place}`), 'all times count on it'].join(
      gaps.length > 0 ? '; ' : '',
    ),
  shuffleOff: 'shuffle and repeat off',
  offline: 'every song downloaded and test-played; airplane mode on, notifications off',
  unclean: 'lyrics that may not suit the room',
  titles: ({ titles }: { titles: readonly string[] }) => and(titles.map((title) => `“${title}”`)),
  spare: 'a second player or phone with the same playlist, cable, and charger',
  noMusicPage: 'the backup page in case the music fails, printed',

  // Room, or camera and sound
  mic: 'microphone and spare battery',
  mics: 'microphone and spare battery, one for each of you or a planned hand-over',
  soundLevel: 'sound level checked from the back row; best at 85 dB(A) or under',
  /** Doses by NIOSH 98-126, the week's share by WHO-ITU H.870. */
  soundDose: ({ measured, share, shareAt85, week }: { measured: number; share: number; shareAt85: number; week: number }) =>
    `at a typical ${number(measured, 1)} dB(A) this class uses ${percent(share)} of a safe day’s noise, at 85 dB(A) ${percent(shareAt85)} (NIOSH 98-126), and ${percent(week)} of a listener’s week (WHO-ITU H.870); national rules differ`,
  air: 'fans, doors, and lights as the room has them; clock in sight',
  bikes: 'your own bike set up; broken ones marked',
  picture: 'camera sees knob, feet, and shoulders; light from the front',
  voice: 'voice over music heard on a second device with headphones',
  line: 'cable instead of Wi-Fi; everything else on it switched off',
  opening: 'opening card at hand',
  toSay: ({ seconds }: { seconds: number }) => `${duration(seconds)} to say`,

  // Riders
  brake: 'brake shown: push the knob down to stop the wheel; no coasting',
  briefing: ({ seconds }: { seconds: number }) => `${duration(seconds)} planned`,
  noBriefing: 'no time is planned for it: do it before class starts',
  firstTimers: 'first-timers met: bike set up, base found, “your own ride”, injuries and pregnancy mentioned to you',
  firstTimersAtHome:
    'words for first-timers ready: set up the bike by its manual, find your base, “your own ride”, ask a doctor first if in doubt',
  water: 'water and towel on every bike',
  waterAtHome: 'riders told to keep water and a towel within reach',
  drinks: ({ first, count }: { first: number; count: number }) => `first drink at ${duration(first)}, ${count} planned`,
  noDrinks: ({ seconds }: { seconds: number }) => `no drink is planned in ${duration(seconds)}`,

  // You
  sheet: 'cue sheet on the bike; check you can read it in class lighting',
  team: 'hand-overs agreed',
  names: ({ names }: { names: readonly string[] }) => and(names),
  self: 'water, towel, shoes; warmed up enough to talk and ride',
}
