import { type ConversionConfig, type JsonSchema, toJsonSchema } from '@valibot/to-json-schema'
import type * as v from 'valibot'
import { rideSchema, SCHEMA_PARTS } from '#plan/document/schema.ts'

/** An either-or of the schema, which chooses by looking, becomes an anyOf. */
const overrideSchema: ConversionConfig['overrideSchema'] = ({ valibotSchema }) => {
  const choices = choicesOf(valibotSchema)
  return choices.length > 0 ? { anyOf: choices.map(partOf) } : undefined
}

/** The JSON Schema (2020-12) of a ride file: shapes and bounds. What holds between values is the application's to check. */
export function rideJsonSchema(): JsonSchema {
  const schema = toJsonSchema(rideSchema, { target: 'draft-2020-12', definitions: SCHEMA_PARTS, overrideSchema })
  const named = Object.entries(schema.$defs ?? {}).filter(([name]) => name in SCHEMA_PARTS)
  return {
    ...schema,
    title: 'Ridewright ride',
    description:
      'One indoor-cycling class: songs, blocks, resistance, effort and cues. Counts are beats; resistance is in whole steps of the bike.',
    $defs: Object.fromEntries(named),
  }
}

/** The shapes of an either-or, nested ones too, without the one that is none. */
function choicesOf(schema: unknown): v.GenericSchema[] {
  if (typeof schema !== 'object' || schema === null || !('choices' in schema)) return []
  const choices = schema.choices as v.GenericSchema[]
  return choices.flatMap((choice) => ('choices' in choice ? choicesOf(choice) : choice.type === 'never' ? [] : [choice]))
}

function partOf(schema: v.GenericSchema): JsonSchema {
  const name = Object.entries(SCHEMA_PARTS).find(([, held]) => held === schema)?.[0]
  if (name) return { $ref: `#/$defs/${name}` }
  const { $schema: _schema, $defs: _defs, ...part } = toJsonSchema(schema, { target: 'draft-2020-12', overrideSchema })
  return part
}
