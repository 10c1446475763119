import { type Said, say } from '#words/said.ts'

/** What is said about saving, by name. */
export const SAYS = {
  nothingKept: say('storage.nothingKept'),
  notHere: say('storage.notHere'),
  unreadable: say('storage.unreadable'),
  damaged: say('storage.damaged'),
  full: say('storage.full'),
  notSaved: say('storage.notSaved'),
  cleared: say('storage.cleared'),
  deletedElsewhere: say('storage.deletedElsewhere'),
} as const

/** The sentence for a save that failed. */
export function saySaveFailed(error: unknown): Said {
  if (error instanceof StorageMissing) return SAYS.nothingKept
  return error instanceof DOMException && error.name === 'QuotaExceededError' ? SAYS.full : SAYS.notSaved
}

/** Thrown by a save where nothing can be kept. */
export class StorageMissing extends Error {
  constructor() {
    super()
    this.name = 'StorageMissing'
  }
}
