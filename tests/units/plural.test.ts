import { expect, it } from 'vitest'
import { plural } from '#units/plural.ts'

it('a noun follows its count, by its own plural where that is another than an s', () => {
  expect([0, 1, 2].map((count) => plural(count, 'song'))).toEqual(['0 songs', '1 song', '2 songs'])
  expect([0, 1, 2].map((count) => plural(count, 'class', 'classes'))).toEqual(['0 classes', '1 class', '2 classes'])
})
