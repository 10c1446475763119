import type { Page } from '@playwright/test'
import { at, press, type Scene, spark, unfolded, unlessSeen } from './steps.ts'

const part = (value: string) => (page: Page) => page.locator(`.setup-head label:has(input[value="${value}"])`).click()

export const SETUP: readonly Scene[] = [
  { name: 'the bike', prepare: at('setup', spark), show: (page) => unfolded(page, '.setup') },
  {
    name: 'the bike, calibrated by watts',
    prepare: at('setup', spark),
    show: unlessSeen('.calibrate', press(/watts/)),
    own: '.setup-body',
  },
  {
    name: 'the bike, calibrated by feel',
    prepare: at('setup', spark),
    show: unlessSeen('.calibrate', press(/by feel/)),
    own: '.setup-body',
  },
  { name: 'the riders', prepare: at('setup', spark), show: part('riders'), own: '.setup-body' },
  { name: 'the rules', prepare: at('setup', spark), show: part('rules'), own: '.setup-body' },
]
