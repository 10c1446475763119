import { readFile } from 'node:fs/promises'
import { fileURLToPath } from 'node:url'
import type { Page } from '@playwright/test'
import { dropFiles, textFile } from '#e2e/support/dropFiles.ts'
import { drafted, kept, start } from './steps.ts'

const DEMO = fileURLToPath(new URL('../../../public/demo/twenty-minute-spark.ride.json', import.meta.url))

/** Every field of a ride that brings a control of its own, in two songs and a stretch by the clock; full of findings, too. */
async function richRide(): Promise<string> {
  const ride = JSON.parse(await readFile(DEMO, 'utf8'))
  const [first, second] = ride.sections
  const [settle, flat, ...rest] = first.blocks
  const cue = { id: 'rich-count', moment: 'countIn', lead: { counts: 0 }, text: '', count: 8 }
  return JSON.stringify({
    ...ride,
    id: 'rich',
    title: 'everything in it',
    startsAt: '18:30',
    briefingSeconds: 120,
    slotMinutes: 9,
    room: 'online',
    bike: {
      ...ride.bike,
      id: 'own',
      name: 'our own bike',
      brakeFit: { exponent: 1.4, error: 0.05 },
      calibration: 'watts',
      feelAnchors: [{ feel: 'flat road', setting: 1 }],
    },
    riders: [
      {
        id: 'me',
        name: 'me',
        age: 40,
        massKg: 70,
        vo2max: 40,
        criticalPower: 165,
        wPrime: 14_000,
        restingHr: 60,
        firstThresholdHr: 130,
        secondThresholdHr: 160,
        trials: [
          { seconds: 180, watts: 283 },
          { seconds: 720, watts: 213 },
        ],
        threeMinuteTest: { over: 180, watts: 285, endWatts: 205 },
        baseOffset: 0,
      },
    ],
    houseRules: { hardEffort: 9, fitUnder: 0 },
    avoidMoves: ['elbow circle'],
    sections: [
      {
        ...first,
        blocks: [
          {
            ...settle,
            cadence: { rpm: 85 },
            move: { name: 'elbow circle', counts: 8 },
            resistance: { kind: 'total', from: 4, to: 8, aim: 6 },
            cues: [cue],
          },
          { ...flat, posture: 'standing', resistance: { kind: 'total', from: 0, to: 0 }, effort: { from: 9, to: 9 }, cues: [] },
          ...rest,
        ],
      },
      second,
      {
        id: 'clocked',
        title: 'by the clock',
        leadInSeconds: 0,
        blocks: [{ ...settle, id: 'clocked1', label: 'stretch', length: { seconds: 90 }, cues: [] }],
      },
    ],
  })
}

/** Opens it, as a file that is dropped. */
export async function rich(page: Page): Promise<void> {
  await start(page)
  await dropFiles(page, page.locator('main'), [textFile('everything.ride.json', await richRide())])
  await drafted(page)
  await kept(page)
}
