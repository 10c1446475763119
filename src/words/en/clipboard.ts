import { number, plural } from '#words/forms.ts'

/** Copy, cut, and paste, and the menu at the pointer. */

export const clipboard = {
  group: 'copy and paste',
  copy: 'copy',
  copyDo: 'copy the selection',
  cut: 'cut',
  cutDo: 'cut the selection',
  paste: 'paste',
  pasteDo: 'paste after the selection, also from another ride or window',
  pasteOnly: 'paste only…',
  pasteOnlyDo: 'paste only the blocks, the cues, or the resistance',
  onlyBlocks: 'paste only the blocks onto this song',
  onlyBlocksDo: 'replace the blocks of this song with the copied ones',
  onlyCues: 'paste only the cues',
  onlyCuesDo: 'replace the cues, block by block, with the copied ones',
  onlyResistance: 'paste only the resistance',
  onlyResistanceDo: 'replace the resistance, block by block, with the copied one',
  selectAll: 'select all',
  selectAllDo: 'select all blocks of the song; again, of the ride',
  menu: 'menu',
  menuDo: 'open the menu of what can be done here',
  menuOf: ({ name }: { name: string }) => `menu for ${name}`,
  menuOfRide: 'menu for the ride',
  menuButton: 'more…',
  copyCue: ({ place }: { place: number }) => `copy cue ${number(place)}`,

  // Undo and announcements.
  copied: ({ name }: { name: string }) => `Copied ${name}`,
  cutDone: ({ name }: { name: string }) => `Cut ${name}`,
  pasted: ({ name, where }: { name: string; where: string }) => `Pasted ${name} into ${where}`,
  pastedSongs: ({ name }: { name: string }) => `Pasted ${name}`,
  replacedBlocks: ({ where, count }: { where: string; count: number }) =>
    `Replaced the blocks of ${where} with ${plural(count, 'copy', 'copies')}`,
  pastedCues: ({ name }: { name: string }) => `Pasted cues into ${name}`,
  replacedCues: ({ name }: { name: string }) => `Replaced the cues of ${name}`,
  pastedResistance: ({ name }: { name: string }) => `Pasted the resistance into ${name}`,

  // What there is to say of what came over.
  rounded: ({ unit }: { unit: string }) => `Resistance is rounded to the steps of this ride’s bike (${unit}s).`,
  byLoad: ({ unit }: { unit: string }) => `Resistance is converted by load to this ride’s bike (${unit}s).`,
  toSeconds: 'Lengths are now in seconds: this song has no tempo.',
  toEights: 'Lengths are now in whole eights of this song.',
  leftOver: ({ done, of }: { done: number; of: number }) =>
    `Pasted ${number(done)} of ${plural(of, 'copied block', 'copied blocks')}; there were no more blocks to paste onto.`,
  notBlocks: ({ text, more }: { text: string; more: number }) =>
    more === 0 ? `“${text}” names no block.` : `“${text}” and ${plural(more, 'other line', 'other lines')} name no block.`,

  // Why not.
  nothing: 'The clipboard holds nothing to paste into a ride. Lines like “climb 8 effort 7” can be pasted.',
  noRoom: 'That doesn’t fit: it would be more than a ride can hold, or a set inside a set.',
  damaged: 'What is in the clipboard can’t be read as part of a ride.',
  tooNew: 'It was copied from a newer version of this page. Reload this window and try again.',
  needsBlock: 'Select the block these cues belong to, then paste.',
  needsSong: 'Select a song or one of its blocks, then paste.',
  holdsCues: 'Only cues were copied. Select a block and paste them.',
  notRead: ({ keys }: { keys: string }) => `This browser doesn’t let the page read the clipboard. Paste with ${keys}.`,
  onlyHere: ({ keys }: { keys: string }) =>
    `Copied for this window only, because this browser doesn’t let the page copy. For other windows, copy with ${keys}.`,
}
