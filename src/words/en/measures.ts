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

/** A size or a place on the knob: steps in the bike's own unit. */
export interface KnobSize {
  readonly steps: number
  /** The bike's word for one of it: "turn", "level". */
  readonly unit: string
  readonly stepsPerUnit: number
}

/** A size on the knob: "¾ turn", "1½ turns", "2 levels". */
const knob = (size: KnobSize): string => settingOf(size.steps, size)

/** A place on the knob: "¾ turn over base", "base", "2 levels below base". */
const overBase = (size: KnobSize): string =>
  size.steps === 0 ? 'base' : `${knob({ ...size, steps: Math.abs(size.steps) })} ${size.steps > 0 ? 'over' : 'below'} base`

/** What riders may have on, an end that nobody knows being null: "1½", "3–4", "4¼ or more", "3 or less", "about 2". */
const standing = ({ low, nominal, high }: { low: number | null; nominal: number; high: number | null }, stepsPerUnit: number): string => {
  if (low === null) return high === null ? `about ${setting(nominal, stepsPerUnit)}` : `${setting(high, stepsPerUnit)} or less`
  return high === null ? `${setting(low, stepsPerUnit)} or more` : settingRange({ from: low, to: high }, stepsPerUnit)
}

/** A range of paces: "80 rpm", "70–80.5 rpm". */
const rpmRange = ({ from, to }: { from: number; to: number }, decimals = 1): string => {
  const [first, last] = [number(from, decimals), number(to, decimals)]
  return first === last ? `${first} rpm` : `${first}–${last} rpm`
}

export const measures = {
  eights,
  settingRange,
  unitOf,
  settingOf,
  knob,
  overBase,
  standing,
  rpmRange,
  rpm: (rpm: number, decimals = 0) => `${number(rpm, decimals)} rpm`,
  bpm: (bpm: number, decimals = 1) => `${number(bpm, decimals)} bpm`,
}
