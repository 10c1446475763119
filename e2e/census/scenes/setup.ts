import type { Page } from '@playwright/test'
import { expect } from '#e2e/support/test.ts'
import { rich } from './richRide.ts'
import { at, inTurn, kept, press, type Scene, spark, unfolded, unlessSeen } from './steps.ts'

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
    name: 'the bike, calibrated by watts at two cadences',
    prepare: at('setup', spark),
    show: inTurn(unlessSeen('.calibrate-guide', press(/watts/)), async (page) => {
      for (const [setting, watts] of [
        ['2', '50'],
        ['3', '110'],
      ] as const) {
        const field = page.getByLabel(`watts shown at ${setting}`, { exact: true })
        if ((await field.inputValue()) !== '') continue
        await field.fill(watts)
        await field.press('Enter')
      }
      await expect(page.getByLabel('then at another')).toBeVisible()
    }),
    own: '.calibrate-feels section:last-child',
    ownOnly: true,
  },
  {
    name: 'the bike, calibrated by feel',
    prepare: at('setup', spark),
    show: unlessSeen('.calibrate', press(/by feel/)),
    own: '.setup-body',
  },
  {
    name: 'a bike of one’s own, and another kept',
    prepare: inTurn(at('setup', rich), async (page) => {
      await page.getByRole('button', { name: /^keep / }).click()
      await page.getByRole('button', { name: 'start from a copy of this one' }).click()
      await expect(page.getByRole('button', { name: /^use .* for this ride/ })).toBeVisible()
      await kept(page)
    }),
    show: (page) => unfolded(page, '.setup'),
    own: '.setup-body',
  },
  {
    name: 'riders of one’s own',
    prepare: at('setup', rich),
    show: part('riders'),
    own: '.setup-body',
    ownOnly: true,
  },
  {
    name: 'a rider from three minutes all out',
    prepare: at('setup', rich),
    show: inTurn(part('riders'), async (page) => {
      const chosen = page.locator('label:has(input[value="threeMinutes"])')
      if (!(await chosen.locator('input').isChecked())) await chosen.click()
    }),
    own: '.rider-test',
    ownOnly: true,
  },
  {
    name: 'rules of the house',
    prepare: at('setup', rich),
    show: inTurn(part('rules'), (page) => expect(page.getByRole('button', { name: 'reset all numbers' })).toBeVisible()),
  },
  { name: 'the riders', prepare: at('setup', spark), show: part('riders'), own: '.setup-body' },
  { name: 'the rules', prepare: at('setup', spark), show: part('rules'), own: '.setup-body' },
]
