/** Keys as they stand on the keyboard, and what is done while one is held. Those that are not here say their own name. */
const NAMES: Readonly<Record<string, string>> = {
  PageUp: 'Page Up',
  PageDown: 'Page Down',
  Escape: 'Esc',
  ContextMenu: 'Menu',
  doubleClick: 'double-click',
  middleDrag: 'middle button+drag',
  pinch: 'pinch with two fingers',
}

export const keys = {
  /** A key, a modifier, or a gesture by its name in the code: "Ctrl", "Enter", "drag". */
  named: ({ key }: { key: string }) => NAMES[key] ?? key,
}
