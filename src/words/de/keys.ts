import type { en } from '#words/en/index.ts'

const NAMES: Readonly<Record<string, string>> = {
  Ctrl: 'Strg',
  Shift: 'Umschalt',
  Enter: 'Eingabe',
  Escape: 'Esc',
  Space: 'Leertaste',
  Delete: 'Entf',
  Backspace: 'Rücktaste',
  ContextMenu: 'Menütaste',
  PageUp: 'Bild auf',
  PageDown: 'Bild ab',
  Home: 'Pos1',
  End: 'Ende',
  drag: 'ziehen',
  wheel: 'Mausrad',
  'Space+drag': 'Leertaste+ziehen',
  doubleClick: 'Doppelklick',
  middleDrag: 'mittlere Taste+ziehen',
  pinch: 'zwei Finger spreizen',
}

export const keys: typeof en.keys = {
  named: ({ key }) => NAMES[key] ?? key,
}
