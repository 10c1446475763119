import { describe, expect, it } from 'vitest'
import { keyWords } from '#actions/action.ts'
import { ALL_PLACES } from '#app/actions/allPlaces.ts'
import { keyGroups } from '#app/actions/keyGroups.ts'
import { told } from '#tests/support/told.ts'

const actionsOf = (place: (typeof ALL_PLACES)[number]) => place.groups.flatMap(({ actions }) => actions)
const ALL = ALL_PLACES.flatMap(actionsOf)

/** Places that can be on the page at the same time and are asked in one breath. */
const TOGETHER = [
  ['clipboard', 'stage'],
  ['details'],
  ['fields'],
  ['finding', 'everywhere'],
  ['received', 'regions', 'wholeRide', 'rehearsing', 'habits', 'hearing'],
  ['received', 'sheet', 'phoneScreens'],
  ['received', 'shelf'],
  ['received', 'log'],
  ['received', 'backup'],
  ['received', 'link', 'file'],
  ['received', 'beforeClass', 'screen'],
  ['received', 'leading', 'screen'],
  ['received', 'otherClass', 'screen'],
]

const twice = <Value>(values: readonly Value[]) => values.filter((value, index) => values.indexOf(value) !== index)

describe('every action', () => {
  it('has an id of its own', () => {
    expect(twice(ALL.map(({ id }) => id))).toEqual([])
    expect(ALL.length).toBeGreaterThan(100)
  })

  it.each(TOGETHER.map((ids) => [ids] as const))('of what is on the page together has a name of its own and shares no key: %j', (ids) => {
    const actions = ALL_PLACES.filter(({ id }) => ids.includes(id)).flatMap(actionsOf)
    expect(twice(actions.map(({ name }) => told(name)))).toEqual([])
    expect(twice(actions.flatMap(({ keys = [] }) => keys))).toEqual([])
  })

  it('stands in a place that was looked at', () => {
    const ids = ALL_PLACES.map(({ id }) => id)
    expect(twice(ids)).toEqual([])
    expect([...new Set(TOGETHER.flat())].sort()).toEqual([...ids].sort())
  })

  it('is done by a key, a button, or the menu at the pointer', () => {
    expect(ALL.filter(({ keys = [], keyOnly, inMenu }) => keyOnly && !inMenu && keys.length === 0)).toEqual([])
  })

  it('stands in the key map with all its keys, in the words of its button', () => {
    const groups = keyGroups(ALL_PLACES)
    for (const place of ALL_PLACES)
      for (const { title, actions, also = [] } of place.groups)
        for (const row of [...actions, ...also]) {
          const rows = groups.find((group) => group.title === told(title))?.rows.filter(({ does }) => does === told(row.does)) ?? []
          expect(
            rows.flatMap(({ keys }) => keys),
            told(row.does),
          ).toEqual(expect.arrayContaining(keyWords(row)))
        }
  })
})

it('the key map has each heading once, no row twice, and no row without a key', () => {
  const groups = keyGroups(ALL_PLACES)
  expect(twice(groups.map(({ title }) => title))).toEqual([])
  for (const { title, rows } of groups) {
    expect(twice(rows.map(({ does }) => does)), title).toEqual([])
    expect(rows.filter(({ keys }) => keys.length === 0)).toEqual([])
  }
  expect(groups.map(({ title }) => title)).toEqual([
    'everywhere',
    'copy and paste',
    'moving around',
    'changing',
    'view',
    'dragging',
    'writing a cue',
    'tapping a tempo',
    'the ride',
    'rehearsing',
    'before class',
    'teaching',
    'while another class is running',
    'a cue sheet on this screen',
    'in a field',
    'on the effort scale',
  ])
})
