import { expect, test } from 'vitest'
import { isolated } from '#units/isolated.ts'

test.each(['أغنية الموج', 'שיר הגלים 7', 'Song (شرق)', 'ܫܠܡܐ', '𞤀𞤁'])('“%s” is put between isolates', (text) =>
  expect(isolated(text)).toBe(`\u2068${text}\u2069`),
)

test.each(['', 'Lamp Oil', '夜の歌', 'Ωδή 7', '½ turn – 3:40'])('“%s” stays as it is', (text) => expect(isolated(text)).toBe(text))
