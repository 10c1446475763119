import { describe, expect, it } from 'vitest'
import { meaningOf } from '#app/meaningOf.ts'

const NONE = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false }

describe('meaningOf', () => {
  it.each([
    [{ key: 'z', ctrlKey: true }, 'undo'],
    [{ key: 'z', metaKey: true }, 'undo'],
    [{ key: 'Z', ctrlKey: true, shiftKey: true }, 'redo'],
    [{ key: 'z', metaKey: true, shiftKey: true }, 'redo'],
    [{ key: 'y', ctrlKey: true }, 'redo'],
    [{ key: '?', shiftKey: true }, 'keys'],
    [{ key: '?' }, 'keys'],
    [{ key: 'z' }, null],
    [{ key: 'y', metaKey: true }, null],
    [{ key: 'z', ctrlKey: true, altKey: true }, null],
    [{ key: '?', altKey: true }, null],
    [{ key: '/', ctrlKey: true }, null],
  ] as const)('takes %o for %s', (pressed, meaning) => {
    expect(meaningOf({ ...NONE, ...pressed })).toBe(meaning)
  })
})
