import { words } from '#words/words.ts'

/** Keys by the name the browser gives them; letters in capitals, "+" also for what stands on its key without Shift. */
type KeyName =
  | ('A' | 'B' | 'C' | 'D' | 'E' | 'F' | 'G' | 'H' | 'I' | 'J' | 'K' | 'L' | 'M')
  | ('N' | 'O' | 'P' | 'Q' | 'R' | 'S' | 'T' | 'U' | 'V' | 'W' | 'X' | 'Y' | 'Z')
  | ('0' | '1' | '2' | '3' | '4' | '5' | '6' | '7' | '8' | '9')
  | ('+' | '-' | '?' | ',' | '.' | '<' | '>')
  | ('ArrowLeft' | 'ArrowRight' | 'ArrowUp' | 'ArrowDown' | 'PageUp' | 'PageDown' | 'Home' | 'End')
  | ('Space' | 'Enter' | 'Escape' | 'Delete' | 'Backspace' | 'Insert' | 'F2' | 'F6' | 'F10' | 'ContextMenu')

/** Mod is what the system gives commands by: Ctrl, or ⌘ on a Mac. */
type Modifiers = '' | 'Mod+' | 'Mod+Shift+' | 'Ctrl+' | 'Alt+' | 'Alt+Shift+' | 'Shift+'

/** Keys pressed together. */
export type Chord = `${Modifiers}${KeyName}`

/** A press as the browser tells of it. */
export interface KeyPress {
  key: string
  ctrlKey: boolean
  metaKey: boolean
  altKey: boolean
  shiftKey: boolean
}

interface Parts {
  mod: boolean
  ctrl: boolean
  alt: boolean
  shift: boolean
  key: string
}

function partsOf(chord: string): Parts {
  const [modifiers = ''] = /^(?:(?:Mod|Ctrl|Alt|Shift)\+)*/.exec(chord) ?? []
  const has = (name: string) => modifiers.includes(`${name}+`)
  return { mod: has('Mod'), ctrl: has('Ctrl'), alt: has('Alt'), shift: has('Shift'), key: chord.slice(modifiers.length) }
}

const SAME_KEY: Readonly<Record<string, string>> = { ' ': 'Space', '=': '+', '−': '-' }

/** The letters mean the same in capitals, which a locked key makes of them. */
const nameOf = (key: string): string => SAME_KEY[key] ?? (key.length === 1 ? key.toUpperCase() : key)

/**
 * Whether a press is a chord. Shift where the chord names none is one too, but comes after a chord that
 * names it; beside Ctrl or ⌘ it never is.
 */
export function fitOf(chord: Chord, press: KeyPress): 'exact' | 'loose' | null {
  const { mod, ctrl, alt, shift, key } = partsOf(chord)
  if (nameOf(press.key) !== key || alt !== press.altKey) return null
  const commands = mod ? press.ctrlKey || press.metaKey : ctrl ? press.ctrlKey : !press.ctrlKey && !press.metaKey
  if (!commands) return null
  if (shift === press.shiftKey) return 'exact'
  return shift || mod || ctrl ? null : 'loose'
}

const SIGNS: Readonly<Record<string, string>> = {
  ArrowLeft: '←',
  ArrowRight: '→',
  ArrowUp: '↑',
  ArrowDown: '↓',
  '-': '−',
}

/** A chord, or keys and what is done with them held (“Alt+drag”), as it stands on the screen: “Ctrl+Z” and “⌘+Z” for Mod, since nobody is asked for their machine. */
export function chordWords(chord: string): string[] {
  const { mod, ctrl, alt, shift, key } = partsOf(chord)
  const named = (name: string) => words.keys.named({ key: name })
  const rest = [alt && named('Alt'), shift && named('Shift'), SIGNS[key] ?? named(key)].filter((part) => part !== false)
  const commands = mod ? [named('Ctrl'), '⌘'] : ctrl ? [named('Ctrl')] : []
  return commands.length > 0 ? commands.map((command) => [command, ...rest].join('+')) : [rest.join('+')]
}

/** A chord for `aria-keyshortcuts`. */
export function ariaChord(chord: Chord): string {
  const { mod, ctrl, alt, shift, key } = partsOf(chord)
  const rest = [alt && 'Alt', shift && 'Shift', key === '+' ? 'Plus' : key].filter((part) => part !== false).join('+')
  return mod ? `Control+${rest} Meta+${rest}` : ctrl ? `Control+${rest}` : rest
}
