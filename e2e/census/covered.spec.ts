import { expect, test } from '@playwright/test'
import { allPlaces, drawnByAll, placesIn } from './drawn.ts'
import { NOT_DRAWN } from './exceptions.ts'

test('places that are told of a hand are found in a source', () => {
  const source = ['export const A = () => (', '  <button', '    type="button"', '    onClick={() => go({ onEnd: 1 })}', '  />', ')'].join(
    '\n',
  )
  expect(placesIn('src/features/a.tsx', source)).toEqual(['src/features/a.tsx:4 onClick'])
})

/** Runs after the census: what it has not brought to the screen nobody has operated either. */
test('every control of the source was on the screen in the census', async () => {
  const drawn = await drawnByAll()
  const missing = (await allPlaces(process.cwd())).filter((place) => !drawn.has(place))
  const excused = (place: string) => NOT_DRAWN.some(({ file }) => place.startsWith(`${file}:`))
  expect(missing.filter((place) => !excused(place))).toEqual([])
  expect(NOT_DRAWN.filter(({ file }) => !missing.some((place) => place.startsWith(`${file}:`)))).toEqual([])
})
