import type { en } from '#words/en/index.ts'
import { number, type PluralWords, plural, setting } from '#words/forms.ts'

const eights = (counts: number, unit = 8): string => {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  if (whole === 0) return plural(rest, 'Zählzeit', 'Zählzeiten')
  const said = unit === 6 ? plural(whole, 'Sechser', 'Sechser') : plural(whole, 'Achter', 'Achter')
  return rest === 0 ? said : `${said} + ${number(rest)}`
}

const settingRange: typeof en.measures.settingRange = ({ from, to, orMore }, stepsPerUnit) => {
  if (orMore) return `${setting(from, stepsPerUnit)} oder mehr`
  if (from === to) return setting(from, stepsPerUnit)
  return `${setting(from, stepsPerUnit)}${from < 0 || to < 0 ? ' bis ' : '–'}${setting(to, stepsPerUnit)}`
}

/** What one of a bike's own unit is called, and several. */
const UNITS: Readonly<Record<string, PluralWords>> = {
  turn: { one: 'Umdrehung', other: 'Umdrehungen' },
  level: { one: 'Stufe', other: 'Stufen' },
  gear: { one: 'Gang', other: 'Gänge' },
}

const unitOf: typeof en.measures.unitOf = (unit, several) => UNITS[unit]?.[several ? 'other' : 'one'] ?? unit

const settingOf: typeof en.measures.settingOf = (steps, { unit, stepsPerUnit }) =>
  `${setting(steps, stepsPerUnit)} ${unitOf(unit, steps === 0 || Math.abs(steps) > stepsPerUnit)}`

const knob: typeof en.measures.knob = (size) => settingOf(size.steps, size)

const overBase: typeof en.measures.overBase = (size) =>
  size.steps === 0
    ? 'Grundwiderstand'
    : `${knob({ ...size, steps: Math.abs(size.steps) })} ${size.steps > 0 ? 'über' : 'unter'} Grundwiderstand`

const standing: typeof en.measures.standing = ({ low, nominal, high }, stepsPerUnit) => {
  if (low === null) return high === null ? `etwa ${setting(nominal, stepsPerUnit)}` : `${setting(high, stepsPerUnit)} oder weniger`
  return high === null ? `${setting(low, stepsPerUnit)} oder mehr` : settingRange({ from: low, to: high }, stepsPerUnit)
}

const rpmRange: typeof en.measures.rpmRange = ({ from, to }, decimals = 1) => {
  const [first, last] = [number(from, decimals), number(to, decimals)]
  return first === last ? `${first} U/min` : `${first}–${last} U/min`
}

export const measures: typeof en.measures = {
  eights,
  settingRange,
  unitOf,
  settingOf,
  knob,
  overBase,
  standing,
  rpmRange,
  rpm: (rpm, decimals = 0) => `${number(rpm, decimals)} U/min`,
  bpm: (bpm, decimals = 1) => `${number(bpm, decimals)} bpm`,
}
