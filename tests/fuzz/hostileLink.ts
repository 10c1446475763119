import { deflateSync } from 'fflate'
import { seal } from '#plan/link/envelope.ts'
import { bitWriter } from '#plan/link/format1/bits.ts'
import { SMALL, writeNumber } from '#plan/link/format1/code.ts'
import { COLUMN_COUNT } from '#plan/link/format1/rideLayout.ts'
import { JOURNEYS } from '#tests/support/journeys.ts'
import type { Chance } from './chance.ts'
import { LINKS, PAYLOADS } from './corpus.ts'

/** Twenty million zeros, deflated: what a link would make of a browser that believed it. */
const BOMB = deflateSync(new Uint8Array(20_000_000), { level: 9 })

const STRANGE = ['\u0000', '\ud800', '\udfff', '\u202e', '😀', '%', '#', '.', 'r1.', ' ', '\n', '=', '-', '_', 'é', '<script>', '"']

type Maker = (chance: Chance) => string

/** A link that was damaged on its way, or made by someone who means harm. */
export const hostileLink: Maker = (chance) => chance.pick(MAKERS)(chance)

const damagedText: Maker = (chance) => {
  let text = chance.pick(LINKS)
  for (let times = 1 + chance.below(4); times > 0; times--) {
    const at = chance.below(text.length)
    const cut = chance.oneIn(3) ? chance.below(40) : 0
    text = text.slice(0, at) + (chance.oneIn(2) ? chance.pick(STRANGE) : '') + text.slice(at + cut + 1)
  }
  return text
}

const spliced: Maker = (chance) => {
  const [one, other] = [chance.pick(LINKS), chance.pick(LINKS)]
  return one.slice(0, chance.below(one.length)) + other.slice(chance.below(other.length))
}

const muddle: Maker = (chance) =>
  chance.pick(['', '#', 'r1.', 'r0.', 'r2.', 'r999999.', 'https://rides.example/#r1.']) +
  Array.from({ length: chance.below(60) }, () => (chance.oneIn(4) ? chance.pick(STRANGE) : chance.pick([...'AZaz09-_']))).join('')

/** Passed on twice by programs that mean well, whole or cut before it, between or after. */
const travelled: Maker = (chance) => {
  let text = `https://rides.example/#${chance.pick(LINKS)}`
  for (let times = 2; times > 0; times--) {
    if (chance.oneIn(4)) text = text.slice(0, chance.below(text.length))
    text = chance.pick(JOURNEYS).send(text, chance)
  }
  return text
}

/** Under a right checksum nothing but the content itself tells that it was changed. */
const changedBytes: Maker = (chance) => {
  const bytes = chance.pick(PAYLOADS).slice()
  for (let times = 1 + chance.below(6); times > 0; times--) {
    const at = chance.below(bytes.length)
    bytes[at] = chance.oneIn(2) ? bytes[at]! ^ (1 << chance.below(8)) : chance.pick([0, 0xff, chance.below(256)])
  }
  return seal(bytes)
}

const movedBytes: Maker = (chance) => {
  const [one, other] = [chance.pick(PAYLOADS), chance.pick(PAYLOADS)]
  const head = one.subarray(0, chance.below(one.length))
  const tail = other.subarray(chance.below(other.length))
  return seal(Uint8Array.from([...head, ...tail]))
}

const anyBytes: Maker = (chance) => seal(Uint8Array.from({ length: chance.below(400) }, () => chance.pick([0, 0xff, chance.below(256)])))

/** Columns of nothing, or of one value without end, and texts that unpack to far more than they say. */
const bomb: Maker = (chance) => {
  const to = bitWriter()
  for (let column = 0; column < COLUMN_COUNT; column++) {
    const isSame = chance.oneIn(12)
    to.bits(isSame ? 1 : 0, 1)
    if (!isSame) continue
    to.bits(0, 2)
    writeNumber(to, chance.pick([1, 2, 3, 50, 2 ** 20, 2 ** 40]), SMALL)
  }
  for (let texts = 0; texts < 2; texts++) writeNumber(to, chance.pick([0, 1, 4_000_000, 3_999_999, 2 ** 31, 2 ** 45]), SMALL)
  return seal(Uint8Array.from([...to.bytes(), ...(chance.oneIn(2) ? BOMB : new Uint8Array(chance.below(40)))]))
}

const MAKERS: readonly Maker[] = [
  damagedText,
  damagedText,
  spliced,
  muddle,
  travelled,
  travelled,
  changedBytes,
  changedBytes,
  changedBytes,
  movedBytes,
  anyBytes,
  bomb,
]
