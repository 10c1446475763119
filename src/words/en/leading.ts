import { chosen, clock, duration, effort, number } from '#words/forms.ts'

/** A number keeps its word on one line, and the dot stays at the end of one. */
const DOT = '\u00a0· '

const FOOT_ON_ONE = { left: 'left foot on beat 1', right: 'right foot on beat 1' }

const FOOT_LEADS = { left: 'left foot leads', right: 'right foot leads' }

const NEXT_SONG = { left: 'Next song. Left foot on beat 1.', right: 'Next song. Right foot on beat 1.' }

const HANDS = { centre: 'hands\u00a0center', wide: 'hands\u00a0wide', ends: 'hands\u00a0ends' }

/** The screens to teach from. */
export const leading = {
  place: 'teaching',
  keepsAwakeNot: 'This browser doesn’t keep the screen on. Turn off sleep in the system’s settings.',

  // Another window teaches, or another class is under way.
  follows: 'Another window is teaching this class. This one follows it.',
  teachHere: 'teach from here',
  otherClass: ({ led }: { led: string }) => `You’re still teaching “${led}”.`,
  oneAtATime: ({ opened }: { opened: string }) => `You opened “${opened}”. You can teach one class at a time.`,

  // Before class.
  fromBeatOne: ({ minutes }: { minutes: number }) => `${number(minutes)} minutes from beat 1.`,
  dueIn: ({ from, to, seconds }: { from: string; to: string; seconds: number }) => `Class ${from}–${to} · beat 1 in ${duration(seconds)}`,
  dueNow: ({ from, to }: { from: string; to: string }) => `Class ${from}–${to} · beat 1 is due now`,
  late: ({ from, to, seconds }: { from: string; to: string; seconds: number }) =>
    `Class ${from}–${to} · starting ${duration(seconds)} late`,
  toSay: ({ seconds }: { seconds: number }) => `About ${duration(seconds)} to say.`,
  toSayOf: ({ seconds, welcome }: { seconds: number; welcome: number }) =>
    `About ${duration(seconds)} to say; your welcome is ${duration(welcome)}.`,
  toSayOver: ({ seconds, welcome }: { seconds: number; welcome: number }) =>
    `About ${duration(seconds)} to say, longer than your ${duration(welcome)} welcome.`,
  /** Heads what the class begins with. */
  first: 'First:',
  atBase: 'at base',
  at: ({ total }: { total: string }) => `to ${total}`,

  // After class.
  ended: 'Class ended.',
  logIt: ({ title }: { title: string }) => `“${title}” is done. Log it now or later.`,
  log: 'log this class',

  // The clocks at the top.
  of: ({ seconds }: { seconds: number }) => `of ${clock(seconds)}`,
  songEight: ({ eight, of }: { eight: number; of: number }) => `eight ${number(eight)} of ${number(of)}`,
  nothingToSkip: ({ seconds }: { seconds: number }) => `${duration(seconds)} over, and no skippable song is long enough.`,

  // Now.
  holding: ({ seconds }: { seconds: number }) => `holding, ${duration(seconds)}`,
  leads: ({ name }: { name: string }) => `${name} leads`,
  leadsAndSpeaks: ({ leads, speaks }: { leads: string; speaks: string }) => `${leads} leads, ${speaks} speaks`,
  round: ({ round, of }: { round: number; of: number }) => `round ${number(round)} of ${number(of)}`,
  footOnOne: ({ foot }: { foot: keyof typeof FOOT_ON_ONE }) => FOOT_ON_ONE[foot],
  bodyWithHands: ({ posture, hands }: { posture: string; hands: keyof typeof HANDS }) => `${posture}, ${HANDS[hands]}`,
  effort: ({ from, to }: { from: number; to: number }) =>
    from === to ? `effort\u00a0${effort(from)}` : `effort\u00a0${effort(from)} to ${effort(to)}`,
  allOut: 'all out',
  water: 'water',
  /** Over the figure of resistance: what it is, the change, and where riders should be. */
  resistance: ({ turns, change }: { turns: boolean; change: string }) => `${turns ? 'turns on' : 'resistance'} · ${change}`,
  beAt: ({ range }: { range: string }) => `be at ${range}`,
  cadence: 'cadence',
  cadenceOf: ({ from, to }: { from: number; to: number }) => (from === to ? number(from, 0) : `${number(from, 0)} to ${number(to, 0)}`),
  /** The label of a wheel that does not turn, and what stands for its cadence. */
  wheel: 'wheel',
  stopped: 'stopped',
  feels: ({ feel }: { feel: string }) => `feels ${feel}`,
  easier: ({ text }: { text: string }) => `easier: ${text}`,
  harder: ({ text }: { text: string }) => `harder: ${text}`,
  eightsLeft: ({ eights, seconds }: { eights: number; seconds: number }) =>
    `${chosen(eights, { one: 'last eight', other: 'eights left' })}${DOT}${duration(seconds)}`,
  secondsLeft: 'seconds left',
  left: 'left',
  secondsToOne: 'seconds to beat 1',
  toOne: 'to beat 1',
  countIn: 'Count in.',
  /** For those who hear the screen. */
  spoken: ({ name, length, call }: { name: string; length: string; call: string }) => `${name}, ${length}, ${call}.`,

  // Between blocks.
  welcome: 'Welcome',
  musicNext: 'Music is next.',
  nextSong: 'Next song.',
  nextSongFoot: ({ foot }: { foot: keyof typeof NEXT_SONG }) => NEXT_SONG[foot],
  playsOn: 'The song plays on',
  nothingPlanned: 'Nothing planned.',
  stayIn: ({ block }: { block: string }) => `Nothing planned: stay with ${block} or move on.`,
  offTheBikes: 'Off the bikes',
  wipeDown: 'Wheels stopped, wipe down, water.',
  thatIsClass: 'That’s class!',
  stretch: 'Stop your wheels; stretch both sides.',
  endOfClass: 'End of class.',

  // Next.
  next: 'next:',
  inCounts: ({ counts }: { counts: number }) => `in ${number(counts)}`,
  ofSong: ({ song, block }: { song: string; block: string }) => `“${song}”: ${block}`,
  callTo: ({ call, total }: { call: string; total: string }) => `${call} (${total})`,
  footLeads: ({ foot }: { foot: keyof typeof FOOT_LEADS }) => FOOT_LEADS[foot],
  quote: ({ words }: { words: string }) => `“${words}”`,
  wipeDownNext: 'wipe-down',
  theEnd: 'the end',
}
