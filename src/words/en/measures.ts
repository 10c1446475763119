import { number, plural, setting } from '#words/forms.ts'

/** Measures with words in them. Those without stand in `words/forms.ts`. */

/** A length in counts: 64 → "8 eights", 68 → "8 eights + 4", 4 → "4 counts"; in three and six the unit is a six. */
const eights = (counts: number, unit = 8): string => {
  const whole = Math.trunc(counts / unit)
  const rest = counts - whole * unit
  if (whole === 0) return plural(rest, 'count', 'counts')
  const said = unit === 6 ? plural(whole, 'six', 'sixes') : plural(whole, 'eight', 'eights')
  return rest === 0 ? said : `${said} + ${number(rest)}`
}

/** A range of settings: "1½–2", "−½ to ½" where a minus would meet the dash, "3 or more". */
const settingRange = ({ from, to, orMore }: { from: number; to: number; orMore?: boolean | undefined }, stepsPerUnit: number): string => {
  if (orMore) return `${setting(from, stepsPerUnit)} or more`
  if (from === to) return setting(from, stepsPerUnit)
  return `${setting(from, stepsPerUnit)}${from < 0 || to < 0 ? ' to ' : '–'}${setting(to, stepsPerUnit)}`
}

/** A bike's own unit, one of it or several: "turn", "turns". */
const unitOf = (unit: string, several: boolean): string => `${unit}${several && /[a-rt-z]$/.test(unit) ? 's' : ''}`

/** A setting with its unit: "¾ turn", "2½ turns". */
const settingOf = (steps: number, { unit, stepsPerUnit }: { unit: string; stepsPerUnit: number }): string =>
  `${setting(steps, stepsPerUnit)} ${unitOf(unit, steps === 0 || Math.abs(steps) > stepsPerUnit)}`

export const measures = {
  eights,
  settingRange,
  unitOf,
  settingOf,
  rpm: (rpm: number, decimals = 0) => `${number(rpm, decimals)} rpm`,
  bpm: (bpm: number, decimals = 1) => `${number(bpm, decimals)} bpm`,
}
