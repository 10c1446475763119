import { told } from '#tests/support/told.ts'
import { Said } from '#words/said.ts'

/** A report as lines of text, one for each value, numbers to five digits: what a change of the engine has changed is seen in them. */
export function sayReport(report: object, left: ReadonlySet<string>): string {
  const lines: string[] = []
  const walk = (value: unknown, path: string): void => {
    if (value === undefined || typeof value === 'function') return
    if (value instanceof Said) {
      lines.push(`${path}: ${told(value)}`)
      return
    }
    if (Array.isArray(value)) {
      if (value.length === 0) return
      if (value.every(isPlain)) lines.push(`${path}: ${value.map(say).join(' ')}`)
      else for (const [index, one] of value.entries()) walk(one, `${path}.${index}`)
    } else if (typeof value === 'object' && value !== null) {
      const fields = Object.entries(value).filter(([name]) => !left.has(name))
      const plain = fields.filter(([, one]) => one !== undefined && isPlain(one) && typeof one !== 'function')
      if (plain.length > 0) lines.push(`${path}: ${plain.map(([name, one]) => `${name} ${say(one)}`).join(', ')}`)
      for (const [name, one] of fields) if (!isPlain(one)) walk(one, `${path}.${name}`)
    } else lines.push(`${path}: ${say(value)}`)
  }
  walk(report, '')
  return `${lines.join('\n')}\n`
}

const isPlain = (value: unknown): boolean => typeof value !== 'object' || value === null || value instanceof Said

const say = (value: unknown): string =>
  value instanceof Said ? told(value) : typeof value === 'number' ? `${Number(value.toPrecision(5))}` : String(value)
