import * as v from 'valibot'
import { jsonOf } from '#plan/document/jsonOf.ts'
import { avoidMovesSchema, bikeSchema, houseRulesSchema, itemSchema, LIMITS, ridersSchema } from '#plan/document/schema.ts'
import type { Bike, HouseRules } from '#plan/model.ts'
import { blankRide } from '#plan/newRide.ts'
import { LONGEST_NAME, MOST_ITEMS, type OwnPattern } from '#plan/patterns/ownPattern.ts'
import type { Rider } from '#plan/riderModel.ts'
import { bikeFaults } from '#plan/rules/bikeInOrder.ts'
import { checkRules } from '#plan/rules/checkRules.ts'
import { riderFaults } from '#plan/rules/ridersInOrder.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'

/** The version of profiles this build writes. */
const CURRENT_PROFILE = 1

interface Named {
  id: string
  name: string
}

/** Something of the room or its people that many rides share; a ride has its own copy of it. */
export type Profile =
  | (Named & { kind: 'bike'; bike: Bike })
  | (Named & { kind: 'riders'; riders: Rider[] })
  | (Named & { kind: 'rules'; houseRules: HouseRules; avoidMoves: string[] })
  | (Named & { kind: 'pattern'; pattern: OwnPattern })

export type ProfileKind = Profile['kind']
export type ProfileOf<Kind extends ProfileKind> = Extract<Profile, { kind: Kind }>

const named = {
  profile: v.literal(CURRENT_PROFILE),
  id: v.pipe(v.string(), v.minLength(1), v.maxLength(2 * LIMITS.id)),
  name: v.pipe(v.string(), v.maxLength(LIMITS.name)),
}

const profileSchema = v.variant('kind', [
  v.object({ ...named, kind: v.literal('bike'), bike: bikeSchema }),
  v.object({ ...named, kind: v.literal('riders'), riders: v.pipe(ridersSchema, v.minLength(1)) }),
  v.object({ ...named, kind: v.literal('rules'), houseRules: houseRulesSchema, avoidMoves: avoidMovesSchema }),
  v.object({
    ...named,
    kind: v.literal('pattern'),
    name: v.pipe(v.string(), v.minLength(1), v.maxLength(LONGEST_NAME)),
    pattern: v.object({
      items: v.pipe(v.array(itemSchema), v.minLength(1), v.maxLength(MOST_ITEMS)),
      entered: v.pipe(v.number(), v.integer(), v.minValue(-LIMITS.steps), v.maxValue(LIMITS.steps)),
      bike: bikeSchema,
      beat: v.optional(
        v.object({
          bpm: v.pipe(v.number(), v.minValue(LIMITS.tempo.low), v.maxValue(LIMITS.tempo.high)),
          beatsPerBar: v.picklist([3, 4, 6]),
          strikesPerBeat: v.nullable(v.picklist([0.5, 1, 2])),
        }),
      ),
    }),
  }),
])

/** A profile as text to keep. */
export const writeProfile = (profile: Profile): string => JSON.stringify({ profile: CURRENT_PROFILE, ...profile })

/** Reads such a text; null where it is none, is of a version to come, or breaks the rules a ride's own values keep. Never throws. */
export function readProfile(text: string): Profile | null {
  const read = v.safeParse(profileSchema, jsonOf(text))
  if (!read.success) return null
  const { profile: _version, ...profile } = read.output
  if (profile.kind === 'bike' && bikeFaults(profile.bike).length > 0) return null
  if (profile.kind === 'riders' && riderFaults(profile.riders).length > 0) return null
  if (profile.kind === 'pattern' && !makesARide(profile.pattern)) return null
  return profile
}

/** Whether a ride of nothing but this pattern would be one: ids told apart, lengths by beat or clock, ranges that rise. */
function makesARide({ items, bike, beat }: OwnPattern): boolean {
  const ride = blankRide({ newId: () => 'ride', title: '', bike })
  const song = beat && {
    id: 'beat',
    title: '',
    lengthSeconds: 1,
    grid: gridOfTempo(beat.bpm, 0, beat.beatsPerBar),
    strikesPerBeat: beat.strikesPerBeat,
  }
  return checkRules({ ...ride, sections: [{ ...ride.sections[0]!, id: 'the.section', song: song ?? null, blocks: items }] }).length === 0
}

/** The profile of a bike: one a bike, by the bike's own id. */
export const profileOfBike = (bike: Bike): ProfileOf<'bike'> => ({ kind: 'bike', id: `bike.${bike.id}`, name: bike.name, bike })
