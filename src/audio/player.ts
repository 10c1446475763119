import type { Score } from '#plan/sound/score.ts'
import type { Seconds } from '#units/units.ts'
import { createClickTrack } from './clickTrack.ts'
import { createOpenSongs } from './openSongs.ts'
import { type PlayClock, playClock } from './playClock.ts'
import { type SongVoice, startVoice } from './songVoice.ts'

/** What playing needs of the browser; tests bring their own. */
export interface PlayerWorld {
  openContext: () => AudioContext
  /** Calls again and again until told to stop. */
  every: (milliseconds: number, run: () => void) => () => void
  /** How far ahead the sound card has to be served; further while the page is hidden and its timers are slow. */
  horizon: () => Seconds
}

interface PlayerEvents {
  /** Often while it plays, with the place in the score that is heard. */
  onTick: (at: Seconds) => void
  /** The score is over. */
  onEnd: () => void
  /** The file of a song is gone or cannot be read. */
  onFailed: (song: string) => void
}

/** Time the sound card gets to begin, so that nothing of the beginning is lost. */
const HEAD_START: Seconds = 0.06
const TICK_MS = 40
/** Songs are decoded this long before they begin. */
const OPENED_BEFORE: Seconds = 45
/** The same second of a song, for going on without a break. */
const SAME: Seconds = 0.005

interface Run {
  score: Score
  clock: PlayClock
  /** Where it was begun, on this clock: nothing before it can be heard. */
  earliest: Seconds
  /** Clicks are given up to here. */
  clicked: Seconds
  voices: Map<string, SongVoice>
}

/**
 * Plays scores on the clock of the sound card. Clicks and songs are given to it a fraction of a second
 * ahead, each with the exact time at which it is to sound; a timer only sees to it that the next
 * fraction is always there, so that its own lateness is never heard.
 */
export function createPlayer(world: PlayerWorld, fileOf: (song: string) => Promise<Blob | null>, events: PlayerEvents) {
  const context = world.openContext()
  const [songOut, clickOut] = [context.createGain(), context.createGain()]
  for (const out of [songOut, clickOut]) out.connect(context.destination)
  const clicks = createClickTrack(context, clickOut)
  const songs = createOpenSongs((bytes) => context.decodeAudioData(bytes), fileOf, events.onFailed)
  let rate = 1
  let run: Run | null = null
  let stopTimer = () => {}
  /** Another one for every start and stop, so that what was waited for knows it is no longer wanted. */
  let turn = 0

  const nowIn = ({ clock }: Run): Seconds => Math.max(clock.from, clock.at(context.currentTime))

  function serve(): void {
    if (!run) return
    const now = nowIn(run)
    if (now >= run.score.end) {
      stop()
      events.onEnd()
      return
    }
    const until = Math.min(run.score.end, Math.max(now, run.clock.at(context.currentTime + world.horizon())))
    if (until > run.clicked) {
      for (const { at, kind } of run.score.clicks(run.clicked, until)) clicks.add(kind, run.clock.when(at))
      run.clicked = until
    }
    serveSongs(run, now, until)
  }

  function serveSongs({ score, clock, voices }: Run, now: Seconds, until: Seconds): void {
    songs.holdFirst(score.sounding(now, now + OPENED_BEFORE * rate).map(({ song }) => song))
    for (const sounding of score.sounding(now, until)) {
      const file = songs.get(sounding.song)
      if (!file || voices.has(sounding.key)) continue
      const voice = startVoice(context, songOut, file, sounding, clock, () => {
        if (voices.get(sounding.key) === voice) voices.delete(sounding.key)
      })
      if (voice) voices.set(sounding.key, voice)
    }
  }

  function stop(): void {
    turn++
    stopTimer()
    stopTimer = () => {}
    if (!run) return
    // What sounds this very moment dies away by itself.
    clicks.takeBackFrom(context.currentTime)
    for (const voice of run.voices.values()) voice.end(context.currentTime)
    run = null
  }

  /** Another score or pace from this moment on; a song that goes on at the same second is not touched. */
  function goOn(score: Score, at: Seconds): void {
    if (!run) return
    const time = Math.max(context.currentTime, run.clock.startedAt)
    const clock = playClock(time, at, rate)
    const going = score.sounding(at, at + SAME)
    const voices = new Map<string, SongVoice>()
    for (const voice of run.voices.values()) {
      const same = going.find(
        ({ song, from, songFrom }) => song === voice.song && Math.abs(songFrom + (at - from) - voice.songSecondAt(time)) < SAME,
      )
      if (same && voice.startsAt <= time && !voices.has(same.key)) {
        voice.goOnAs(same, clock, time)
        voices.set(same.key, voice)
      } else voice.end(time)
    }
    clicks.takeBackFrom(time)
    // What is heard is still a moment behind, in what was played before, if anything was.
    const earliest = at - (run.clock.at(time) - run.earliest)
    run = { score, clock, earliest, clicked: at, voices }
    serve()
  }

  /** The time of the sound card whose sound is being heard at a timestamp of the page, as far as the browser knows. */
  function heardTime(timestamp: number | undefined): Seconds {
    const { contextTime = 0, performanceTime = 0 } = context.getOutputTimestamp?.() ?? {}
    if (timestamp !== undefined && performanceTime > 0 && contextTime > 0)
      return Math.min(context.currentTime, contextTime + (timestamp - performanceTime) / 1000)
    return context.currentTime - (context.outputLatency || context.baseLatency || 0)
  }

  function heardAt(timestamp?: number): Seconds | null {
    if (!run) return null
    return Math.min(run.score.end, Math.max(run.earliest, run.clock.at(heardTime(timestamp))))
  }

  return {
    /**
     * Plays a score from a second of it. What is to sound at once is decoded first, so that music and
     * clock begin together. False where something else was asked for in the meantime.
     */
    play: async (score: Score, from: Seconds): Promise<boolean> => {
      stop()
      const mine = turn
      songs.forgetFailed()
      const first = score.sounding(from, from + HEAD_START).map(({ song }) => song)
      songs.holdFirst(first)
      await Promise.all([context.state === 'running' ? null : context.resume(), ...first.map(songs.open)])
      if (mine !== turn) return false
      run = { score, clock: playClock(context.currentTime + HEAD_START, from, rate), earliest: from, clicked: from, voices: new Map() }
      stopTimer = world.every(TICK_MS, () => {
        serve()
        const at = heardAt()
        if (at !== null) events.onTick(at)
      })
      serve()
      return true
    },
    /**
     * Goes on in another score; told where the one so far is, and how far that is ahead of what is being
     * heard, `change` says which and where in it. Nothing while nothing plays.
     */
    follow: (change: (at: Seconds, ahead: Seconds) => { score: Score; at: Seconds }): void => {
      if (!run) return
      const given = Math.max(context.currentTime, run.clock.startedAt)
      const { score, at } = change(run.clock.at(given), (given - heardTime(undefined)) * rate)
      goOn(score, at)
    },
    /** Stops, and says which second of the score was being heard; null where nothing played. */
    stop: (): Seconds | null => {
      const at = heardAt()
      stop()
      return at
    },
    /** Seconds of the score in a second, 0.5 to 1.5; songs change their pitch with it. */
    setRate: (next: number): void => {
      rate = next
      if (run) goOn(run.score, nowIn(run))
    },
    /** 0 to 1 each. */
    setVolumes: ({ song, click }: { song: number; click: number }): void => {
      songOut.gain.setTargetAtTime(song, context.currentTime, HEAD_START / 4)
      clickOut.gain.setTargetAtTime(click, context.currentTime, HEAD_START / 4)
    },
    /** The second of the score that is heard, at a timestamp of the page (a frame's or an event's) or now; null where nothing plays. */
    heardAt,
    close: (): void => {
      stop()
      void context.close()
    },
  }
}
