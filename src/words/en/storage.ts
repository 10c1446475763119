/** What is said of saving, of what is saved here, and of files of music that cannot be heard. */

export const storage = {
  nothingKept:
    'Nothing can be saved in this window: the browser gives it no storage, as in some private windows. Save the ride as a file or a link before you close it.',
  notHere: 'This ride isn’t saved in this browser.',
  unreadable: 'This saved ride couldn’t be read. It stays as it is.',
  damaged: 'Some of what was stored is missing or damaged.',
  full: 'The ride couldn’t be saved: this browser’s storage is full. Save it as a file or a link.',
  notSaved: 'The ride couldn’t be saved. Save it as a file or a link.',
  cleared:
    'This site’s data was cleared in this browser while the page was open. The open ride has been saved again; everything else saved here is gone. A backup restores it.',
  deletedElsewhere: 'This ride was deleted in another window. It’s open here but saved nowhere.',

  // Bikes, riders, and studio rules
  notListed: 'What’s saved on this device couldn’t be listed.',
  kept: ({ name }: { name: string }) => `Saved ${name} on this device`,
  notKept: ({ name }: { name: string }) => `${name} couldn’t be saved on this device.`,
  removed: ({ name }: { name: string }) => `Removed ${name} from this device`,
  notRemoved: ({ name }: { name: string }) => `${name} couldn’t be removed.`,

  // Files of music
  notMusic: ({ file }: { file: string }) => `This browser can’t read “${file}” as music.`,
  noBeat: ({ file }: { file: string }) => `The beat of “${file}” couldn’t be found: the analysis stopped.`,
}
