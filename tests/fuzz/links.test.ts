import { expect, it } from 'vitest'
import { encodeLink } from '#plan/link/encodeLink.ts'
import { rideInText } from '#plan/link/rideInText.ts'
import { demoRide } from '#tests/support/demoRides.ts'

const MOST = 2_000_000
const ride = demoRide('spark')
const link = encodeLink(ride)

// Each of these takes hours, or for ever, where a link is looked for anew from every place one might begin.
it.each(
  ['r1.', 'r1.A ', 'r1.AAAAAAA ', '#r1.z0__', '#r1.AAAAAAAAAAAAAAAA*', 'r9.A_A_A_A_A_A_A_A_A_', 'r 1\n', 'A', 'A\n', 'a-'].concat([
    ' ',
    '\n',
    '\n> ',
    '>',
    '\\',
    '\u200b',
    '\u00a0',
    '%',
    '%2',
    '%25',
    '%e2%80',
    '&',
    '& ',
    '&#45;',
    '=',
    '=\n',
    '=3D',
    '=2',
    '–',
  ]),
)('a link behind two million characters of %j is found in one go', (junk) => {
  const text = `${junk.repeat(Math.floor((MOST - 2 * link.length) / junk.length))}\nhttps://rides.example/#${link}`
  expect(rideInText(text)).toMatchObject({ ok: true, link })
})
