import { CURRENT_SCHEMA } from '#plan/model.ts'
import { say, type Text } from '#words/said.ts'
import type { Document, Migration } from './migration.ts'
import { MIGRATIONS } from './migrations.ts'

type Migrated = { ok: true; document: Document } | { ok: false; text: Text }

/**
 * Brings a document of any past version up to the current one, step by step.
 *
 * @param read plain data as read, unchecked but for its schema number
 * @param steps the steps there are; others than the real ones only in tests
 * @param current the version to reach
 * @returns the document with `schema` set to `current`, or the text that says why not; never throws
 */
export function migrate(read: unknown, steps: readonly Migration[] = MIGRATIONS, current: number = CURRENT_SCHEMA): Migrated {
  if (typeof read !== 'object' || read === null || Array.isArray(read) || !('schema' in read))
    return { ok: false, text: say('documents.notARide') }
  const { schema } = read
  if (typeof schema !== 'number' || !Number.isInteger(schema) || schema < 1) return { ok: false, text: say('documents.badSchema') }
  if (schema > current) return { ok: false, text: say('documents.newer', { schema }) }
  let document: Document = { ...read }
  for (let version = schema; version < current; version++) {
    const step = steps.find(({ from }) => from === version)
    if (!step) throw new Error(`There is no migration from document version ${version}`)
    try {
      document = { ...step.apply(document), schema: version + 1 }
    } catch {
      return { ok: false, text: say('documents.cannotMigrate', { schema }) }
    }
  }
  return { ok: true, document }
}
