import type { Page } from '@playwright/test'

/** What the page gave to the browser's sound card, and its clock. */
interface SoundCard {
  started: { source: AudioBufferSourceNode; when: number; offset: number; stopped: number }[]
  contexts: AudioContext[]
}

declare global {
  var soundCard: SoundCard
}

/** Notes everything the page plays from now on, on the browser's own audio clock; the page hears no difference. */
export async function watchSoundCard(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const card: SoundCard = { started: [], contexts: [] }
    globalThis.soundCard = card
    const { start, stop } = AudioBufferSourceNode.prototype
    AudioBufferSourceNode.prototype.start = function (this: AudioBufferSourceNode, when = 0, offset = 0, ...rest) {
      card.started.push({ source: this, when, offset, stopped: Number.POSITIVE_INFINITY })
      start.call(this, when, offset, ...rest)
    }
    AudioBufferSourceNode.prototype.stop = function (this: AudioBufferSourceNode, when = this.context.currentTime) {
      for (const one of card.started) if (one.source === this) one.stopped = when
      stop.call(this, when)
    }
    const Context = globalThis.AudioContext
    globalThis.AudioContext = class extends Context {
      constructor(options?: AudioContextOptions) {
        super(options)
        card.contexts.push(this)
      }
    }
  })
}

/** Seconds on the audio clock, and how much was given to it: sounds shorter than a second are clicks. */
export const soundNow = (page: Page) =>
  page.evaluate(() => {
    const context = soundCard.contexts.at(-1)
    const sounded = soundCard.started.filter(({ when, stopped }) => stopped > when)
    const isClick = ({ source }: SoundCard['started'][number]) => source.buffer!.duration < 1
    return {
      time: context?.currentTime ?? 0,
      state: context?.state ?? 'none',
      clicks: sounded.filter(isClick).map(({ when }) => when),
      songs: sounded.filter((one) => !isClick(one)).map(({ when, offset, stopped }) => ({ when, offset, stopped })),
    }
  })

/**
 * Renders what was given to the sound card once more without a sound card, clicks and song apart, and
 * measures where in the rendered samples each begins: seconds since the song's own first sample.
 *
 * @param beats seconds of the song's file around which its own onsets are looked for
 */
export const renderedOnsets = (page: Page, beats: readonly number[]) =>
  page.evaluate(async (known) => {
    const isClick = (source: AudioBufferSourceNode) => source.buffer!.duration < 1
    const sounded = soundCard.started.filter(({ when, stopped }) => stopped > when)
    const song = sounded.find(({ source }) => !isClick(source))!
    const { sampleRate } = song.source.buffer!
    const length = song.source.buffer!.duration + 1
    const from = song.when - song.offset

    async function render(kind: 'clicks' | 'song'): Promise<Float32Array> {
      const context = new OfflineAudioContext(1, Math.ceil(length * sampleRate), sampleRate)
      for (const { source, when, offset } of sounded) {
        if (isClick(source) !== (kind === 'clicks')) continue
        const copy = context.createBufferSource()
        copy.buffer = source.buffer
        copy.connect(context.destination)
        copy.start(Math.max(0, when - from), kind === 'song' ? offset : 0)
      }
      return (await context.startRendering()).getChannelData(0)
    }

    const clicks = await render('clicks')
    const clickOnsets: number[] = []
    let quietUntil = 0
    for (let i = 0; i < clicks.length; i++) {
      if (Math.abs(clicks[i]!) < 0.2 || i < quietUntil) continue
      clickOnsets.push(i / sampleRate)
      quietUntil = i + 0.1 * sampleRate
    }

    // An onset is where the energy of the highs rises most within two milliseconds.
    const music = await render('song')
    const energy = (at: number, samples: number) => {
      let sum = 1e-9
      for (let i = Math.max(1, at); i < at + samples; i++) sum += (music[i]! - music[i - 1]!) ** 2
      return sum
    }
    const span = Math.round(0.002 * sampleRate)
    const songOnsets = known.map((beat) => {
      const middle = Math.round(beat * sampleRate)
      let best = { at: middle, rise: 0 }
      for (let at = middle - 5 * span; at <= middle + 5 * span; at++) {
        const rise = energy(at, span) / energy(at - span, span)
        if (rise > best.rise) best = { at, rise }
      }
      return best.at / sampleRate
    })
    return { clickOnsets, songOnsets }
  }, beats)
