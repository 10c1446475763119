import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { clickSamples } from '#audio/clickSounds.ts'
import { createPlayer } from '#audio/player.ts'
import { songScore } from '#engine/rehearsal/songScore.ts'
import type { BeatGrid } from '#plan/model.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import type { Score } from '#plan/sound/score.ts'
import { arbitraryGrid } from '#tests/support/arbitraryRide.ts'
import { fakeSoundCard } from '#tests/support/fakeSoundCard.ts'
import { aSong } from '#tests/support/smallRide.ts'

/** Files of the songs by their names, as many seconds as bytes. */
const files = new Map([
  ['tune', 60],
  ['next', 30],
  ['third', 20],
  ['torn', 0],
])
const fileOf = async (song: string) => (files.has(song) ? new Blob([new Uint8Array(files.get(song)!)]) : null)

function playing(options: { horizon?: number; rate?: number } = {}) {
  const card = fakeSoundCard(options)
  const heard = { ends: 0, failed: [] as string[], ticks: [] as number[] }
  const player = createPlayer(card.world, fileOf, {
    onTick: (at) => heard.ticks.push(at),
    onEnd: () => heard.ends++,
    onFailed: (song) => heard.failed.push(song),
  })
  return { card, heard, player }
}

const score = (grid: BeatGrid = gridOfTempo(120, 0.25), sounds = true): Score =>
  songScore(aSong('tune', { grid, lengthSeconds: 60, fingerprint: 'tune' }), 0, { sounds, clicks: true })

/** One after another: songs of these names and lengths. */
const row = (songs: [name: string, seconds: number][]): Score => {
  let from = 0
  const soundings = songs.map(([song, seconds]) => {
    const one = { key: `${song} ${from}`, song, from, to: from + seconds, songFrom: 0, fadeIn: 0.01, fadeOut: 0.01 }
    from += seconds
    return one
  })
  const end = from
  return { end, clicks: () => [], sounding: (a, b) => soundings.filter((one) => one.from < b && one.to > a) }
}

const settle = () => new Promise((done) => setTimeout(done, 0))

describe('clicks', () => {
  it('sound each exactly once and on their very second, however late the timer is within its horizon, at every pace, over every grid', async () => {
    const acts = fc.oneof(
      { weight: 6, arbitrary: fc.record({ pass: fc.double({ min: 0.001, max: 0.19, noNaN: true }) }) },
      { weight: 1, arbitrary: fc.record({ rate: fc.double({ min: 0.5, max: 1.5, noNaN: true }) }) },
    )
    await fc.assert(
      fc.asyncProperty(
        arbitraryGrid,
        fc.double({ min: 0, max: 40, noNaN: true }),
        fc.array(acts, { minLength: 5, maxLength: 60 }),
        async (grid, from, steps) => {
          const { card, player } = playing()
          const tune = score(grid, false)
          await player.play(tune, from)
          // The clock as it should be: pieces of constant pace, from the moment of each change.
          const pieces = [{ time: card.now + 0.06, at: from, rate: 1 }]
          const atTime = (time: number) => {
            const { time: since, at, rate } = pieces.findLast((piece) => piece.time <= time + 1e-9) ?? pieces[0]!
            return at + (time - since) * rate
          }
          for (const step of steps) {
            if ('pass' in step) card.pass(step.pass)
            else {
              const time = Math.max(card.now, pieces[0]!.time)
              pieces.push({ time, at: Math.max(from, atTime(time)), rate: step.rate })
              player.setRate(step.rate)
            }
          }
          const until = atTime(card.now)
          const due = tune.clicks(from, Math.min(60, until)).map(({ at }) => at)
          const sounded = card
            .clicks()
            .map(({ when }) => atTime(when))
            .filter((at) => at < until - 1e-6)
          expect(sounded).toHaveLength(due.filter((at) => at < until - 1e-6).length)
          for (const [i, at] of sounded.entries()) expect(at).toBeCloseTo(due[i]!, 6)
        },
      ),
      { numRuns: 60 },
    )
  })

  it('leave none behind and lose none where one goes elsewhere again and again', async () => {
    const visit = fc.record({
      from: fc.double({ min: 0, max: 50, noNaN: true }),
      passes: fc.array(fc.double({ min: 0.001, max: 0.19, noNaN: true }), { maxLength: 12 }),
    })
    await fc.assert(
      fc.asyncProperty(arbitraryGrid, fc.array(visit, { minLength: 1, maxLength: 6 }), async (grid, visits) => {
        const { card, player } = playing()
        const tune = score(grid, false)
        for (const { from, passes } of visits) {
          const before = new Set(card.clicks())
          await player.play(tune, from)
          const start = card.now + 0.06
          for (const pass of passes) card.pass(pass)
          player.stop()
          const sounded = card.clicks().filter((click) => !before.has(click))
          const due = tune.clicks(from, Math.min(60, from + Math.max(0, card.now - start)))
          expect(sounded.map(({ when }) => when)).toEqual(due.map(({ at }) => expect.closeTo(start + at - from, 6)))
        }
      }),
      { numRuns: 60 },
    )
  })

  it('that were given ahead are taken back on stopping and on going elsewhere', async () => {
    const { card, player } = playing()
    await player.play(score(), 0)
    card.pass(0.1)
    const stoppedAt = card.now
    expect(player.stop()).toBeCloseTo(0.1 - 0.06 - 0.02, 9)
    expect(card.clicks().filter(({ when }) => when >= stoppedAt)).toEqual([])
    expect(card.ticks).toBe(false)
    await player.play(score(), 30)
    const begun = card.now + 0.06
    card.pass(0.15)
    expect(card.clicks().at(-1)!.when).toBeCloseTo(begun + 0.25, 9)
  })

  it('are told apart by their pitch, and begin at their loudest', () => {
    const crossings = (kind: 'eight' | 'bar' | 'beat' | 'second') =>
      clickSamples(kind, 48_000).filter((sample, i, all) => i > 0 && sample < 0 !== all[i - 1]! < 0).length
    expect(crossings('eight')).toBeGreaterThan(crossings('bar') * 1.2)
    expect(crossings('bar')).toBeGreaterThan(crossings('beat') * 1.2)
    const samples = clickSamples('eight', 48_000)
    expect(Math.max(...samples.map(Math.abs))).toBe(Math.abs(samples[0]!))
    expect(Math.abs(samples.at(-1)!)).toBeLessThan(0.002)
  })
})

describe('songs', () => {
  it('begin with the clock, from the second that is asked for', async () => {
    const { card, player } = playing()
    expect(await player.play(score(), 12.5)).toBe(true)
    expect(card.songs()).toMatchObject([{ offset: 12.5, when: card.now + 0.06, length: 60 }])
  })

  it('follow each other on the sample, decoded ahead, and no more than two are held', async () => {
    const { card, heard, player } = playing()
    await player.play(
      row([
        ['tune', 10],
        ['next', 10],
        ['third', 10],
      ]),
      0,
    )
    await settle()
    expect(card.state.decoded).toEqual([60, 30])
    const begun = card.songs()[0]!.when
    for (let i = 0; i < 120; i++) {
      card.pass(0.1)
      await settle()
    }
    expect(card.songs().map(({ when, offset }) => [when - begun, offset])).toEqual([
      [0, 0],
      [expect.closeTo(10, 9), 0],
    ])
    expect(card.state.decoded).toEqual([60, 30, 20])
    await player.play(row([['tune', 10]]), 0)
    expect(card.state.decoded).toEqual([60, 30, 20, 60])
    expect(heard.ends).toBe(0)
  })

  it('say when they are over', async () => {
    const { card, heard, player } = playing()
    await player.play(row([['third', 1]]), 0.5)
    for (let i = 0; i < 8; i++) card.pass(0.1)
    expect(heard.ends).toBe(1)
    expect(card.ticks).toBe(false)
    expect(player.heardAt()).toBeNull()
  })

  it('that cannot be read are told by name once, and the clicks go on', async () => {
    const { card, heard, player } = playing()
    const torn = { ...row([['torn', 30]]), clicks: score().clicks }
    await player.play(torn, 0)
    for (let i = 0; i < 20; i++) card.pass(0.1)
    await settle()
    expect(heard.failed).toEqual(['torn'])
    expect(card.songs()).toEqual([])
    expect(card.clicks().length).toBeGreaterThan(3)
    await player.play(row([['gone', 3]]), 0)
    expect(heard.failed).toEqual(['torn', 'gone'])
  })

  it('play on without a break where only the ride around them changes, and at another pace from the moment it is set', async () => {
    const { card, player } = playing()
    await player.play(score(), 5)
    for (let i = 0; i < 10; i++) card.pass(0.1)
    const late = row([
      ['next', 7],
      ['tune', 60],
    ])
    const shifted: Score = { ...late, sounding: (a, b) => late.sounding(a, b).filter(({ song }) => song === 'tune') }
    // The tune stands seven seconds later on the other score's clock.
    player.follow((at) => ({ score: shifted, at: at + 7 }))
    expect(card.songs()).toHaveLength(1)
    expect(card.songs()[0]!.stop).toBeGreaterThan(card.now)
    player.setRate(0.75)
    expect(card.songs()).toHaveLength(1)
    expect(card.songs()[0]!.rates.at(-1)).toEqual([card.now, 0.75])
    // Somewhere else in the song: a new beginning.
    player.follow((at) => ({ score: shifted, at: at + 3 }))
    expect(card.songs()).toHaveLength(2)
    expect(card.songs()[0]!.stop).toBeLessThan(card.now + 0.05)
  })

  it('do not begin once something else was asked for while they were opened', async () => {
    const { card, player } = playing()
    const first = player.play(score(), 0)
    const second = player.play(score(), 20)
    expect(await first).toBe(false)
    expect(await second).toBe(true)
    expect(card.songs()).toMatchObject([{ offset: 20 }])
    const third = player.play(score(), 30)
    player.stop()
    expect(await third).toBe(false)
    expect(player.heardAt()).toBeNull()
  })
})

describe('what is heard', () => {
  it('is behind what was given to the sound card by its latency, and never before the beginning', async () => {
    const { card, player } = playing()
    await player.play(score(), 5)
    expect(player.heardAt()).toBe(5)
    card.pass(1)
    expect(player.heardAt()).toBeCloseTo(5 + 1 - 0.06 - 0.02, 9)
  })

  it('is not before the beginning either where something is changed at once', async () => {
    const { card, player } = playing()
    await player.play(score(), 5)
    player.follow((at) => ({ score: score(), at: at + 10 }))
    expect(player.heardAt()).toBe(15)
    card.pass(0.07)
    player.setRate(0.5)
    expect(player.heardAt()).toBe(15)
    card.pass(0.1)
    expect(player.heardAt()).toBeCloseTo(15.01 + 0.05 - 0.01, 6)
  })

  it('closes with everything it opened', async () => {
    const { card, player }: { card: ReturnType<typeof fakeSoundCard>; player: ReturnType<typeof createPlayer> } = playing()
    await player.play(score(), 0)
    player.close()
    expect(card.state.closed).toBe(true)
    expect(card.ticks).toBe(false)
  })
})
