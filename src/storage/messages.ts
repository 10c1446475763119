/** What is said about saving, in one place. */
export const SAYS = {
  nothingKept:
    'Nothing can be saved in this window: the browser gives it no storage, as in some private windows. Keep a ride as a file or a link before you close it.',
  notHere: 'This ride is not saved in this browser.',
  unreadable: 'This saved ride could not be read. It is kept as it is.',
  damaged: 'What was stored is not whole.',
  full: 'The ride could not be saved: the storage of this browser is full. Keep it as a file or a link.',
  notSaved: 'The ride could not be saved. Keep it as a file or a link.',
  cleared:
    'What this site keeps in this browser was cleared while the page was open. The open ride is saved again; what else was kept is gone from here. A backup brings it back.',
  deletedElsewhere: 'This ride was deleted in another window. It is open here, and saved nowhere.',
} as const

/** The sentence for a save that failed. */
export function saySaveFailed(error: unknown): string {
  if (error instanceof StorageMissing) return SAYS.nothingKept
  return error instanceof DOMException && error.name === 'QuotaExceededError' ? SAYS.full : SAYS.notSaved
}

/** Thrown by a save where nothing can be kept. */
export class StorageMissing extends Error {
  constructor() {
    super(SAYS.nothingKept)
    this.name = 'StorageMissing'
  }
}
