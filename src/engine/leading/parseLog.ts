import type { Cut, LeadEvent, LeadLog } from './leadLog.ts'

/** Far more than any leader presses in an hour. */
const MOST_EVENTS = 2000
const PLAIN = ['one', 'next', 'back', 'again', 'hold', 'go', 'skipSong', 'breakOff'] as const

/** The log a value is, or null when it is none: read from a browser's storage, where anything may stand. */
export function parseLog(value: unknown): LeadLog | null {
  if (!isRecord(value) || !isNumber(value.slotFrom) || !isNumber(value.startedAt) || !Array.isArray(value.events)) return null
  const { slotFrom, startedAt, events } = value
  if (events.length > MOST_EVENTS) return null
  const parsed = events.map(parseEvent)
  if (!parsed.every((event) => event !== null) || parsed.some(({ at }, i) => at < (parsed[i - 1]?.at ?? at))) return null
  return { slotFrom, startedAt, events: parsed }
}

function parseEvent(value: unknown): LeadEvent | null {
  if (!isRecord(value) || !isNumber(value.at)) return null
  const { at, kind } = value
  const plain = PLAIN.find((known) => known === kind)
  if (plain) return { at, kind: plain }
  if (kind !== 'cut' || !Array.isArray(value.cuts)) return null
  const cuts = value.cuts.map(parseCut)
  return cuts.every((cut) => cut !== null) ? { at, kind: 'cut', cuts } : null
}

function parseCut(value: unknown): Cut | null {
  if (!isRecord(value) || !isIndex(value.section)) return null
  const { kind, section, block, counts, rounds, setId } = value
  if (kind === 'song') return { kind, section }
  if (kind === 'outro' && isNumber(counts) && counts > 0) return { kind, section, counts }
  if (kind === 'phrase' && isIndex(block) && isNumber(counts) && counts > 0) return { kind, section, block, counts }
  if (kind === 'rounds' && typeof setId === 'string' && isIndex(rounds)) return { kind, section, setId, rounds }
  return null
}

const isRecord = (value: unknown): value is Record<string, unknown> => typeof value === 'object' && value !== null
const isNumber = (value: unknown): value is number => Number.isFinite(value)
const isIndex = (value: unknown): value is number => Number.isSafeInteger(value) && (value as number) >= 0
