import { clock, duration, grouped, number, plural } from '#words/forms.ts'

/** Two copies of a ride side by side: what differs, what follows, and the versions that are kept. */

const THINGS = { section: 'song', set: 'set', block: 'block', cue: 'cue' }

const DONE = { added: 'new', deleted: 'removed', moved: 'moved' }

const FIGURES = {
  total: 'ride time',
  slack: 'class time left',
  workSeconds: 'work',
  easySeconds: 'easy time',
  meanEffort: 'average effort',
  sessionLoad: 'load',
  longestStanding: 'longest standing',
  highestTotal: 'highest resistance',
}

export const merging = {
  // The place where two copies become one
  title: ({ title }: { title: string }) => `What changed in “${title}”`,
  inWindows:
    'This ride was changed in two windows at once. What only one of them changed is already in it. Where both did, “mine” is this window and “theirs” is the other.',
  unrelated: ({ title }: { title: string }) =>
    `No version that both rides were made from is saved here, so this only compares the two. Nothing from “${title}” is used unless you choose it.`,
  nothingNew: ({ title }: { title: string }) => `“${title}” has nothing that yours doesn’t have already.`,
  related:
    'Yours and theirs are compared with the last version you both had. What only one of you changed is kept. Where you both changed something, you decide.',
  outcome: 'outcome',
  curve: 'effort of the whole ride, mine dashed',
  lasts: ({ seconds }: { seconds: number }) => `${clock(seconds)} long`,
  /** Behind how long the ride is now. */
  besideMine: ({ mine, slack }: { mine: number; slack: number }) =>
    `mine is ${clock(mine)} · ${slack >= 0 ? `${clock(slack)} of class time left` : `${clock(-slack)} over class time`}`,
  keepMine: 'use mine as is',
  useChanges: 'use these changes',
  cancel: 'cancel',

  conflicts: 'conflicts',
  different: 'different',
  toResolve: ({ count }: { count: number }) => `${grouped(count)} to resolve`,
  allMine: 'use mine for all',
  allTheirs: 'use theirs for all',
  changedByThem: 'changed by them',
  onlyTheirs: 'only in theirs',
  nothing: 'nothing',
  used: ({ used, of }: { used: number; of: number }) => `${grouped(used)} of ${grouped(of)} used`,
  changedByMe: ({ count }: { count: number }) => `changed only by me: ${grouped(count)}, kept`,
  onlyMine: ({ count }: { count: number }) => `only in mine: ${grouped(count)}, kept`,

  // One difference
  wholeRide: 'whole ride',
  side: ({ side }: { side: 'mine' | 'theirs' }): string => side,
  was: ({ value }: { value: string }) => `was ${value}`,
  cueAt: ({ block }: { block: string }) => `cue at ${block}`,
  otherDetails: ({ value }: { value: string }) => `${value}, with other details`,
  newCue: ({ text }: { text: string }) => `new cue: “${text}”`,
  newSong: ({ blocks }: { blocks: number }) => `new song with ${plural(blocks, 'block', 'blocks')}`,
  newSet: ({ rounds }: { rounds: number }) => `new set of ${plural(rounds, 'round', 'rounds')}`,
  newBlock: ({ length, effort }: { length: string; effort: string }) => `new block, ${length}, effort ${effort}`,
  /** Something was done to a thing as a whole: "block removed". */
  done: ({ thing, done }: { thing: keyof typeof THINGS; done: keyof typeof DONE }) => `${THINGS[thing]} ${DONE[done]}`,
  there: 'there',
  thereChanged: ({ changes, more }: { changes: readonly string[]; more: boolean }) =>
    `there, changed: ${changes.join(', ')}${more ? ', and more' : ''}`,
  notThere: 'not there',
  removed: 'removed',
  moved: 'moved',
  first: ({ list }: { list?: string | undefined }) => (list === undefined ? 'first' : `first in ${list}`),
  after: ({ neighbor, list }: { neighbor?: string | undefined; list?: string | undefined }) =>
    `after ${neighbor ?? 'another'}${list === undefined ? '' : ` in ${list}`}`,
  tooMuch: 'together they’re more than one ride can hold',
  allOfMine: 'my ride as is',
  allOfTheirs: 'theirs as is',
  /** When a thing stands, and how long the ride is with it. */
  times: ({ times, total }: { times: string; total: number }) => `${times} · ride ${clock(total)}`,
  fromTo: ({ from, to }: { from: number; to: number }) => `${clock(from)} to ${clock(to)}`,

  // What follows from it
  effect: 'effect on the ride',
  noEffect: 'Nothing else changes.',
  moreByBlock: ({ count }: { count: number }) => `${grouped(count)} more, block by block`,
  figure: ({ figure }: { figure: keyof typeof FIGURES }) => FIGURES[figure],
  later: ({ seconds }: { seconds: number }) => `starts ${duration(seconds)} later`,
  earlier: ({ seconds }: { seconds: number }) => `starts ${duration(seconds)} earlier`,
  call: 'call',
  resistance: 'resistance',
  foot: 'foot on beat 1',
  noFoot: 'none',
  newCheck: ({ check }: { check: string }) => `New check: ${check}`,
  checkGone: ({ check }: { check: string }) => `No longer applies: ${check}`,

  // Versions
  versions: 'versions',
  versionsAbout: 'This ride as it was at one point, saved on this device and in backups, never in a link.',
  versionName: 'name of this version',
  versionExample: 'e.g. before class',
  saveVersion: 'save this version',
  savedForYou: ({ count }: { count: number }) => `saved automatically when you shared, received, or taught it: ${number(count)}`,
  sent: ({ title }: { title: string }) => `Shared: ${title}`,
  received: ({ title }: { title: string }) => `Received: ${title}`,
  taught: ({ title }: { title: string }) => `Taught: ${title}`,
  compare: 'compare',
  compareNamed: ({ version }: { version: string }) => `compare ${version}`,
  restore: 'restore',
  restoreNamed: ({ version }: { version: string }) => `restore ${version}`,
  delete: 'delete',
  deleteNamed: ({ version }: { version: string }) => `delete ${version}`,
  deleted: ({ version }: { version: string }) => `“${version}” is deleted.`,
  undelete: 'restore it',
  compareVersions: 'compare versions',
  from: 'from',
  to: 'to',
  asItIsNow: 'as it is now',
  versionAt: ({ version, at }: { version: string; at: string }) => `${version}, ${at}`,
  opening: 'opening…',
  same: 'These two are the same.',
  curveBefore: 'effort of the whole ride, before dashed',

  // Said as it happens
  ownNotOpened: 'Your own ride couldn’t be opened.',
  allMineChosen: 'Mine is used in every conflict',
  allTheirsChosen: 'Theirs is used in every conflict',
  windowsResolved: 'Resolved what two windows changed',
  changesUsed: ({ title }: { title: string }) => `Used changes from “${title}”`,
  otherWindow: 'from another window',
  windowsDiffer: ({ count }: { count: number }) =>
    `Another window changed ${plural(count, 'thing', 'things')} differently. This window’s version stands; the other ride is saved as a version.`,
  resolve: 'resolve',
  nothingChanged: 'Nothing was changed',
  versionsNotListed: 'The versions saved on this device couldn’t be listed.',
  versionUnreadable: 'This version couldn’t be read. It’s kept as it is.',
  versionNotSaved: ({ version }: { version: string }) => `“${version}” couldn’t be saved on this device.`,
  versionSaved: ({ version }: { version: string }) => `Saved this ride as “${version}”`,
  versionRestored: ({ version }: { version: string }) => `Restored “${version}”`,
  versionDeleted: ({ version }: { version: string }) => `Deleted the version “${version}”`,
  versionNotDeleted: 'The version couldn’t be deleted.',
  versionUndeleted: ({ version }: { version: string }) => `Restored the version “${version}”`,
  versionNotUndeleted: 'The version couldn’t be restored.',
  sentNotNoted: 'What you shared couldn’t be noted, so changes that come back can’t be told from yours.',
  receivedNotNoted: 'What you received couldn’t be noted, so later changes to it can’t be told from yours.',
  taughtNotNoted: 'The plan you taught couldn’t be kept, so its songs can’t be offered from this class.',
}
