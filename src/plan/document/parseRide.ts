import * as v from 'valibot'
import { migrate } from '#plan/migrations/migrate.ts'
import type { Ride } from '#plan/model.ts'
import { checkRules } from '#plan/rules/checkRules.ts'
import type { Fault, Path } from '#plan/rules/rule.ts'
import { say, type Text } from '#words/said.ts'
import { plainCopy } from './plainCopy.ts'
import { comparePaths, pathText, placeOf } from './problemPlaces.ts'
import { problemText } from './problemText.ts'
import { rideSchema } from './schema.ts'
import { wrongIn } from './wrong.ts'

/** What is wrong with a document: where (empty for the whole of it), and the same as a sentence. */
export interface Problem {
  path: string
  text: Text
}

type ParsedRide = { ok: true; ride: Ride } | { ok: false; problems: Problem[] }

/** Problems reported before the rest is only counted. */
const MOST_PROBLEMS = 20

/**
 * Reads a ride from anything at all: a file, a link, what storage gave back.
 *
 * A document of an older version is brought up to date first. Unknown keys are dropped,
 * so the result holds what the schema names and nothing else, and parsing it again gives
 * an equal ride. The result shares nothing with the input.
 *
 * @returns the ride, or one to twenty problems in the order of their paths (a last one
 *   counts the rest); never throws, whatever the input. Cost: linear in its size.
 */
export function parseRide(input: unknown): ParsedRide {
  const copy = plainCopy(input)
  if (!copy.ok) return refused(say(`documents.${copy.reason}`))
  const migrated = migrate(copy.value)
  if (!migrated.ok) return refused(migrated.text)
  const shaped = v.safeParse(rideSchema, migrated.document, { abortPipeEarly: true })
  const faults = shaped.success ? checkRules(shaped.output) : shaped.issues.map(faultOf)
  return shaped.success && faults.length === 0
    ? { ok: true, ride: shaped.output }
    : { ok: false, problems: problemsOf(faults, migrated.document) }
}

const refused = (text: Text): ParsedRide => ({ ok: false, problems: [{ path: '', text }] })

function faultOf(issue: v.BaseIssue<unknown>): Fault {
  const path: Path = (issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)))
  if (issue.input === undefined) return { path, wrong: { problem: 'missing' } }
  return { path, wrong: wrongIn(issue.message), found: isLeaf(issue.input) ? issue.input : undefined }
}

/** Whether naming the value helps: a length "out of bounds; it is 14" does, "must be a list; it is a list" does not. */
const isLeaf = (value: unknown) => typeof value !== 'object' || value === null

function problemsOf(faults: Fault[], document: unknown): Problem[] {
  const sorted = [...faults].sort((a, b) => comparePaths(a.path, b.path))
  const problems = sorted.slice(0, MOST_PROBLEMS).map(({ path, wrong, found }) => ({
    path: pathText(path),
    text: problemText(placeOf(path, document), wrong, found),
  }))
  const rest = sorted.length - problems.length
  return rest === 0 ? problems : [...problems, { path: '', text: say('documents.more', { count: rest }) }]
}
