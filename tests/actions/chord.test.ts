import { describe, expect, it } from 'vitest'
import { ariaChord, type Chord, chordWords, fitOf } from '#actions/keys/chord.ts'

const NONE = { ctrlKey: false, metaKey: false, altKey: false, shiftKey: false }

describe('fitOf', () => {
  it.each([
    ['Mod+Z', { key: 'z', ctrlKey: true }, 'exact'],
    ['Mod+Z', { key: 'z', metaKey: true }, 'exact'],
    ['Mod+Z', { key: 'Z', ctrlKey: true, shiftKey: true }, null],
    ['Mod+Z', { key: 'z' }, null],
    ['Mod+Z', { key: 'z', ctrlKey: true, altKey: true }, null],
    ['Mod+Shift+Z', { key: 'Z', ctrlKey: true, shiftKey: true }, 'exact'],
    ['Mod+Shift+Z', { key: 'z', metaKey: true, shiftKey: true }, 'exact'],
    ['Ctrl+Y', { key: 'y', ctrlKey: true }, 'exact'],
    ['Ctrl+Y', { key: 'y', metaKey: true }, null],
    ['?', { key: '?' }, 'exact'],
    ['?', { key: '?', shiftKey: true }, 'loose'],
    ['?', { key: '?', altKey: true }, null],
    ['G', { key: 'g' }, 'exact'],
    ['G', { key: 'G', shiftKey: true }, 'loose'],
    ['G', { key: 'g', ctrlKey: true }, null],
    ['+', { key: '=' }, 'exact'],
    ['+', { key: '+', shiftKey: true }, 'loose'],
    ['-', { key: '−' }, 'exact'],
    ['Alt++', { key: '+', altKey: true }, 'exact'],
    ['Alt+-', { key: '-', altKey: true }, 'exact'],
    ['Space', { key: ' ' }, 'exact'],
    ['ArrowLeft', { key: 'ArrowLeft', altKey: true }, null],
    ['Alt+ArrowLeft', { key: 'ArrowLeft', altKey: true, shiftKey: true }, 'loose'],
    ['Alt+Shift+ArrowLeft', { key: 'ArrowLeft', altKey: true }, null],
    ['Alt+Shift+ArrowLeft', { key: 'ArrowLeft', altKey: true, shiftKey: true }, 'exact'],
  ] satisfies [Chord, { key: string } & Partial<KeyboardEvent>, string | null][])('takes %s for %o: %s', (chord, pressed, fit) => {
    expect(fitOf(chord, { ...NONE, ...pressed })).toBe(fit)
  })
})

it('chords are written as they are pressed', () => {
  expect(['Mod+Z', 'Ctrl+Y', 'Alt++', 'Alt+Shift+ArrowLeft', '-', 'PageDown', 'Escape', 'Alt+drag'].map(chordWords)).toEqual([
    ['Ctrl+Z', '⌘+Z'],
    ['Ctrl+Y'],
    ['Alt++'],
    ['Alt+Shift+←'],
    ['−'],
    ['Page Down'],
    ['Esc'],
    ['Alt+drag'],
  ])
  const chords: Chord[] = ['Mod+Shift+Z', 'Alt++', 'Space', 'D']
  expect(chords.map(ariaChord)).toEqual(['Control+Shift+Z Meta+Shift+Z', 'Alt+Plus', 'Space', 'D'])
})
