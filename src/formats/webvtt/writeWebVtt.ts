import type { Seconds } from '#units/units.ts'

/** Something that holds from one moment to another. */
export interface VttCue {
  id?: string
  from: Seconds
  to: Seconds
  text: string
}

/**
 * A moment as WebVTT writes it: "00:01:00.000". Rounded to milliseconds as a whole first, so that
 * no part reads 60; hours have two digits or more. A moment before 0, which the format has no way to write, is 0.
 */
function vttTimestamp(seconds: Seconds): string {
  const whole = Math.max(0, Math.round(seconds * 1000))
  if (Number.isNaN(whole)) throw new RangeError('A caption needs a moment to stand at.')
  const part = (value: number, digits: number) => String(value).padStart(digits, '0')
  const [hours, minutes, rest] = [Math.floor(whole / 3_600_000), Math.floor(whole / 60_000) % 60, whole % 60_000]
  return `${part(hours, 2)}:${part(minutes, 2)}:${part(Math.floor(rest / 1000), 2)}.${part(rest % 1000, 3)}`
}

/**
 * A caption file: its title, then the cues by the time they start. A cue that would end as it
 * starts cannot be written and is left out, one that is over before 0 among them. Source: W3C WebVTT.
 */
export function writeWebVtt(cues: readonly VttCue[], title = ''): string {
  const head = title === '' ? 'WEBVTT' : `WEBVTT - ${oneLine(title).replaceAll('-->', '→')}`
  const blocks = [...cues]
    .sort((a, b) => a.from - b.from || a.to - b.to)
    .filter(({ from, to }) => vttTimestamp(from) !== vttTimestamp(to))
    .map(writeCue)
  return `${[head, ...blocks].join('\n\n')}\n`
}

function writeCue({ id, from, to, text }: VttCue): string {
  const name = id === undefined ? [] : [oneLine(id).replaceAll('-->', '→')]
  if (to < from) throw new RangeError(`A caption cannot end at ${to} s before it starts at ${from} s.`)
  return [...name, `${vttTimestamp(from)} --> ${vttTimestamp(to)}`, ...payload(text)].join('\n')
}

/** Lines of a cue: an empty one would end it, and three characters mean something in it. */
const payload = (text: string): string[] =>
  text
    .split(/\r\n|[\r\n]/)
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => line.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;'))

const oneLine = (text: string): string => text.replace(/\s+/g, ' ').trim()
