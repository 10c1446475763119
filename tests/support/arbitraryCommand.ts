import fc from 'fast-check'
import { addCues } from '#plan/commands/addCues.ts'
import type { Command } from '#plan/commands/command.ts'
import { deleteItems } from '#plan/commands/deleteItems.ts'
import { deleteSection } from '#plan/commands/deleteSection.ts'
import { duplicateItems } from '#plan/commands/duplicateItems.ts'
import { duplicateSection } from '#plan/commands/duplicateSection.ts'
import { giveBlocks } from '#plan/commands/giveBlocks.ts'
import { groupIntoSet } from '#plan/commands/groupIntoSet.ts'
import { insertItem } from '#plan/commands/insertItem.ts'
import { insertSection } from '#plan/commands/insertSection.ts'
import { joinBlocks } from '#plan/commands/joinBlocks.ts'
import { linkSongs } from '#plan/commands/linkSongs.ts'
import { markShaky, unmarkShaky } from '#plan/commands/markShaky.ts'
import { markSong, quietSong } from '#plan/commands/markSong.ts'
import { moveBeats } from '#plan/commands/moveBeats.ts'
import { moveItem } from '#plan/commands/moveItem.ts'
import { movePart } from '#plan/commands/movePart.ts'
import { moveSection } from '#plan/commands/moveSection.ts'
import { moveStart } from '#plan/commands/moveStart.ts'
import { patchBlock } from '#plan/commands/patchBlock.ts'
import { patchRide } from '#plan/commands/patchRide.ts'
import { patchSection } from '#plan/commands/patchSection.ts'
import { patchSet } from '#plan/commands/patchSet.ts'
import { bringBack, putAside } from '#plan/commands/putAside.ts'
import { renameMove } from '#plan/commands/renameMove.ts'
import { rescaleBeats } from '#plan/commands/rescaleBeats.ts'
import { resizeBlock } from '#plan/commands/resizeBlock.ts'
import { setBars } from '#plan/commands/setBars.ts'
import { setBike } from '#plan/commands/setBike.ts'
import { setDatum } from '#plan/commands/setDatum.ts'
import { setOddBeats, withOddAt } from '#plan/commands/setOddBeats.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { setTempo } from '#plan/commands/setTempo.ts'
import { splitBlock } from '#plan/commands/splitBlock.ts'
import { splitSection } from '#plan/commands/splitSection.ts'
import { ungroupSet } from '#plan/commands/ungroupSet.ts'
import type { NewId } from '#plan/copies.ts'
import { DEFAULT_BIKE } from '#plan/defaults.ts'
import { isSet, type Ride, type Song } from '#plan/model.ts'
import { blockFromPattern, PATTERNS } from '#plan/patterns/patterns.ts'
import { gridOfTempo } from '#plan/songs/beatGrid.ts'
import { strikesForTempo } from '#plan/songs/sectionsFromPlaylist.ts'
import { aSection, aSong } from '#tests/support/smallRide.ts'

/** What to do, told without ids: numbers pick among what a ride has. In and out of every range. */
export interface Recipe {
  kind: number
  pick: number
  other: number
  index: number
  amount: number
}

/** One recipe, or up to twelve to be followed one after the other. */
export const arbitraryRecipes = (length?: number): fc.Arbitrary<Recipe[]> =>
  fc.array(
    fc.record({
      kind: fc.nat(KINDS.length - 1),
      pick: fc.nat(60),
      other: fc.nat(60),
      index: fc.oneof(fc.integer({ min: -3, max: 12 }), fc.constant(Number.NaN), fc.constant(-0)),
      amount: fc.oneof(
        fc.constant(-0),
        fc.integer({ min: -5, max: 200 }),
        fc.double({ min: -1e6, max: 1e6, noNaN: true }),
        fc.constant(Number.NaN),
      ),
    }),
    length === undefined ? { minLength: 1, maxLength: 12 } : { minLength: length, maxLength: length },
  )

/** The command a recipe means for a ride; about ids that are not there where the ride has nothing of the kind. */
export function commandOf(recipe: Recipe, ride: Ride, newId: NewId): Command {
  const items = ride.sections.flatMap(({ blocks }) => blocks)
  const blocks = items.flatMap((item) => (isSet(item) ? item.parts : [item]))
  const at = (list: readonly { id: string }[], index: number) => list[index % Math.max(1, list.length)]?.id ?? 'nobody'
  const run = ride.sections[recipe.other % Math.max(1, ride.sections.length)]?.blocks ?? []
  return KINDS[recipe.kind]!({
    ride,
    newId,
    ...recipe,
    item: at(items, recipe.pick),
    block: at(blocks, recipe.pick),
    set: at(items.filter(isSet), recipe.pick),
    section: at(ride.sections, recipe.other),
    neighbours: run.slice(recipe.pick % 3, (recipe.pick % 3) + 2).map(({ id }) => id),
  })
}

type Chosen = Recipe & {
  ride: Ride
  newId: NewId
  item: string
  block: string
  set: string
  section: string
  neighbours: string[]
}

const tempoFrom = (amount: number): number => 60 + (Number.isFinite(amount) ? Math.abs(Math.round(amount)) % 140 : 0)

const songFrom = (amount: number) =>
  aSong('another', { grid: gridOfTempo(tempoFrom(amount)), strikesPerBeat: strikesForTempo(tempoFrom(amount)) })

/** Every song of a ride on the shelf, heard in a file, at one tempo. */
const shelfOf = (ride: Ride, amount: number) =>
  ride.sections.flatMap(({ song }) => (song ? [{ id: song.id, song: { ...songFrom(amount), ...nameOf(song), fingerprint: song.id } }] : []))

const nameOf = ({ title, artist }: Song) => ({ title, ...(artist !== undefined && { artist }) })

const KINDS: ((chosen: Chosen) => Command)[] = [
  ({ ride, item, section, index }) => moveItem(ride, { itemId: item, sectionId: section, index }),
  ({ ride, block, set, index }) => movePart(ride, { blockId: block, to: { setId: set, index } }),
  ({ ride, block, section, index }) => movePart(ride, { blockId: block, to: { sectionId: section, index } }),
  ({ ride, section, index }) => moveSection(ride, { sectionId: section, index }),
  ({ ride, block, amount }) => resizeBlock(ride, { blockId: block, length: { counts: amount } }),
  ({ ride, block, amount }) => resizeBlock(ride, { blockId: block, length: { seconds: amount } }),
  ({ ride, section, pick, index, newId }) => {
    const target = ride.sections.find(({ id }) => id === section) ?? aSection(newId())
    const item = blockFromPattern(PATTERNS[pick % PATTERNS.length]!, ride, target, newId)
    return insertItem(ride, { sectionId: section, index, item })
  },
  ({ ride, item, block, newId }) => duplicateItems(ride, { ids: [item, block], newId }),
  ({ ride, item, block }) => deleteItems(ride, [item, block]),
  ({ ride, block, amount, newId }) => splitBlock(ride, { blockId: block, at: amount, newId }),
  ({ ride, block }) => joinBlocks(ride, { blockId: block }),
  ({ ride, neighbours, amount, newId }) => groupIntoSet(ride, { ids: neighbours, rounds: amount, newId }),
  ({ ride, set, newId }) => ungroupSet(ride, { setId: set, newId }),
  ({ ride, block, amount, index }) =>
    patchBlock(ride, {
      blockId: block,
      patch: {
        effort: { from: amount, to: index },
        resistance: { kind: 'total', from: amount, to: index, aim: index },
        length: { seconds: amount },
        cadence: { rpm: amount },
      },
    }),
  ({ ride, block, amount, index }) =>
    patchBlock(ride, { blockId: block, patch: { effort: { from: index, to: amount }, label: undefined, move: undefined } }),
  ({ ride, set, amount, index }) => patchSet(ride, { setId: set, patch: { rounds: amount, perRound: { steps: index } } }),
  ({ ride, section, amount, index }) =>
    patchSection(ride, { sectionId: section, patch: { inCount: index, outCount: amount, leadInSeconds: index } }),
  ({ amount, index }) => patchRide({ slotMinutes: amount, briefingSeconds: index, aim: undefined }),
  ({ ride, index, newId }) => insertSection(ride, { index, section: aSection(newId()) }),
  ({ ride, section, newId }) => duplicateSection(ride, { sectionId: section, newId }),
  ({ ride, section }) => deleteSection(ride, { sectionId: section }),
  ({ ride, item, newId }) => splitSection(ride, { itemId: item, foot: null, newId }),
  ({ ride, section, amount }) => setSong(ride, { sectionId: section, song: songFrom(amount) }),
  ({ ride, section }) => setSong(ride, { sectionId: section, song: null }),
  ({ ride, amount, newId }) => linkSongs(ride, { shelf: shelfOf(ride, amount), newId }),
  ({ ride, section, amount }) => setTempo(ride, { sectionId: section, tempo: { bpm: amount } }),
  ({ ride, section }) => setTempo(ride, { sectionId: section, tempo: null }),
  ({ ride, section, amount }) => moveBeats(ride, { sectionId: section, seconds: amount / 100 }),
  ({ ride, section, pick }) => rescaleBeats(ride, { sectionId: section, factor: pick % 2 === 0 ? 2 : 0.5 }),
  ({ ride, section, pick, amount }) => {
    const old = ride.sections.find(({ id }) => id === section)?.song?.grid?.odd
    return setOddBeats(ride, { sectionId: section, odd: withOddAt(old, [Math.round(amount), (pick % 9) - 3]) })
  },
  ({ ride, pick }) => setBike(ride, { ...DEFAULT_BIKE, name: 'another', stepsPerUnit: 1 + (pick % 8) }),
  ({ pick }) => setDatum(pick % 2 === 0 ? 'base' : 'loose'),
  ({ ride, block, amount }) => patchBlock(ride, { blockId: block, patch: { ownTotal: amount } }),
  ({ block, newId }) => addCues([{ blockId: block, cue: { id: newId(), moment: 'form', lead: { counts: 8 }, text: 'Light hands.' } }]),
  ({ ride, amount }) => renameMove(ride, { from: 'jump', to: `move ${Math.abs(Math.round(amount)) % 9}` }),
  ({ ride, block, item, index }) => giveBlocks(ride, { blockIds: [block, item], leads: ride.leaders.at(index)?.id ?? 'nobody' }),
  ({ ride, block, pick }) => giveBlocks(ride, { blockIds: [block], speaks: ride.leaders[pick % 2]?.id ?? 'nobody' }),
  ({ ride, block }) => markShaky(ride, { blockId: block }),
  ({ ride, block }) => unmarkShaky(ride, { blockId: block }),
  ({ ride, section, amount, pick }) => markSong(ride, { sectionId: section, count: Math.round(amount), label: `mark ${pick}` }),
  ({ ride, section, amount, index }) => quietSong(ride, { sectionId: section, from: Math.round(index), to: Math.round(amount) }),
  ({ ride, section, pick }) => setBars(ride, { sectionId: section, beatsPerBar: pick % 2 === 0 ? 4 : 3, shift: (pick % 7) - 3 }),
  ({ pick }) => putAside([`rule:${pick}`, `rule:${pick + 1}`].slice(0, 1 + (pick % 2))),
  ({ ride, pick }) => bringBack(ride.setAside?.[pick] ?? `rule:${pick}`),
  ({ ride, block, amount }) => moveStart(ride, { blockId: block, by: amount }),
]
