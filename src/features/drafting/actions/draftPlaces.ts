import type { ActionPlace } from '#actions/action.ts'
import type { Chord } from '#actions/keys/chord.ts'
import { CUE_LINE_KEYS } from '#features/drafting/cueLine/cueLineKeys.ts'
import { TAP_KEYS } from '#features/drafting/panel/section/tapping/tapKeys.ts'
import { DRAG_KEYS } from '#features/drafting/stage/drag/dragKeys.ts'
import { OVERVIEW_EDGE_KEYS, OVERVIEW_KEYS } from '#features/drafting/stage/overviewKeys.ts'
import { READ_OUT_KEYS } from '#features/drafting/stage/readOut/readOutKeys.ts'
import { ZOOM_WHEEL } from '#features/drafting/stage/zoomWheel.ts'
import type { PatternId } from '#plan/patterns/blockPattern.ts'
import { PATTERNS } from '#plan/patterns/patterns.ts'
import { say } from '#words/said.ts'
import { CUT_SECTION } from './changing/cutSection.ts'
import { DELETE } from './changing/deleteIt.ts'
import { DUPLICATE } from './changing/duplicate.ts'
import { LESS_EFFORT, MORE_EFFORT } from './changing/effort.ts'
import { FILL } from './changing/fill.ts'
import { GROUP } from './changing/group.ts'
import { JOIN } from './changing/join.ts'
import { KEEP_PATTERN } from './changing/keepPattern.ts'
import { MOVE_AFTER, MOVE_BEFORE, MOVE_TO_SONG_AFTER, MOVE_TO_SONG_BEFORE } from './changing/move.ts'
import { ONLY_ROUND } from './changing/onlyRound.ts'
import { RENAME, TWO_PRESSES } from './changing/rename.ts'
import { LITTLE_LONGER, LITTLE_SHORTER, LONGER, SHORTER } from './changing/resize.ts'
import { SHIFT_EARLIER, SHIFT_LATER } from './changing/shift.ts'
import { SPLIT } from './changing/split.ts'
import { EARLIER, LATER, LITTLE_EARLIER, LITTLE_LATER } from './changing/start.ts'
import { EDIT_LINE, TYPE_LINE } from './changing/typeLine.ts'
import { UNGROUP } from './changing/ungroup.ts'
import { WRITE_CUE } from './changing/writeCue.ts'
import { COPY, CUT, PASTE, PASTE_BLOCKS, PASTE_CUES, PASTE_RESISTANCE } from './clipboard/copyAndPaste.ts'
import { MENU, PASTE_ONLY } from './clipboard/menu.ts'
import type { DraftAction } from './draftAction.ts'
import type { DraftGround } from './draftGround.ts'
import { GO_DOWN, GO_UP } from './gettingAbout/goAcross.ts'
import { GO_AFTER, GO_BEFORE, GO_FIRST, GO_LAST } from './gettingAbout/goAlong.ts'
import { LAST_REGION, NEXT_REGION } from './gettingAbout/regions.ts'
import { DETAILS, GO_OUT, SELECT_AFTER, SELECT_BEFORE, TOGGLE } from './gettingAbout/select.ts'
import { SELECT_ALIKE } from './gettingAbout/selectAlike.ts'
import { SELECT_ALL } from './gettingAbout/selectAll.ts'
import { LEAVE_DETAILS } from './leaveDetails.ts'
import { HABITS } from './rehearsing/habits.ts'
import { HEARING } from './rehearsing/hearBeat.ts'
import { BACK_A_BLOCK, NEXT_BLOCK } from './rehearsing/jump.ts'
import { MARK_SONG } from './rehearsing/markSong.ts'
import { FROM_SELECTION, FROM_START, PLAY } from './rehearsing/play.ts'
import type { RehearsalGround } from './rehearsing/rehearsalGround.ts'
import { CLOSE_REHEARSAL, REHEARSE } from './rehearsing/rehearse.ts'
import { REPEAT } from './rehearsing/repeat.ts'
import { MARK_SHAKY, REHEARSE_SHAKY } from './rehearsing/shaky.ts'
import { FIT_RIDE, FIT_SECTION } from './view/fit.ts'
import { LINES } from './view/lines.ts'
import { ZOOM_IN, ZOOM_OUT } from './view/zoom.ts'
import { ADD_SECTION, addBlock } from './whole/add.ts'
import { FIT_SLOT, NEW_FROM_THIS, OTHER_LENGTH, ROUGH_IN } from './whole/offers.ts'
import { REPLACE_WORDS } from './whole/replaceWords.ts'

/** What is done to blocks, sets and songs; the row of buttons over the details has them in this order. */
export const CHANGES: readonly DraftAction[] = [
  MOVE_BEFORE,
  MOVE_AFTER,
  MOVE_TO_SONG_BEFORE,
  MOVE_TO_SONG_AFTER,
  SHIFT_EARLIER,
  SHIFT_LATER,
  LONGER,
  SHORTER,
  LITTLE_LONGER,
  LITTLE_SHORTER,
  EARLIER,
  LATER,
  LITTLE_EARLIER,
  LITTLE_LATER,
  MORE_EFFORT,
  LESS_EFFORT,
  TYPE_LINE,
  EDIT_LINE,
  RENAME,
  WRITE_CUE,
  DUPLICATE,
  KEEP_PATTERN,
  SPLIT,
  JOIN,
  GROUP,
  UNGROUP,
  ONLY_ROUND,
  FILL,
  CUT_SECTION,
  DELETE,
]

/** What is offered for the whole ride, beside its figures. */
export const OFFERS: readonly DraftAction[] = [ROUGH_IN, FIT_SLOT, OTHER_LENGTH, NEW_FROM_THIS, REPLACE_WORDS]

/** Those a class is mostly made of have a digit. */
const KEYS: Partial<Record<PatternId, Chord>> = {
  flat: '1',
  'standing-flat': '2',
  'seated-hill': '3',
  'standing-hill': '4',
  push: '5',
  run: '6',
  'jumps-8': '7',
  surge: '8',
  recover: '9',
}

/** The tray. */
export const ADD_BLOCKS = PATTERNS.map((pattern) => ({
  pattern,
  key: KEYS[pattern.id],
  action: addBlock(pattern, KEYS[pattern.id] && [KEYS[pattern.id]!]),
}))

/** What is copied and pasted, about what has the focus on the stage, and from elsewhere on the page about what is selected. */
export const CLIPBOARD: ActionPlace<DraftGround> = {
  id: 'clipboard',
  reach: 'focus',
  repeats: false,
  groups: [
    {
      title: say('clipboard.group'),
      actions: [CUT, COPY, PASTE, PASTE_ONLY, PASTE_BLOCKS, PASTE_CUES, PASTE_RESISTANCE, SELECT_ALL, MENU],
    },
  ],
}

/** The stage: its keys are about the block, the set or the song that has the focus. */
export const STAGE: ActionPlace<DraftGround> = {
  id: 'stage',
  reach: 'focus',
  repeats: true,
  groups: [
    {
      title: say('actions.group', { group: 'movingAround' }),
      actions: [GO_BEFORE, GO_AFTER, GO_UP, GO_DOWN, GO_FIRST, GO_LAST, SELECT_BEFORE, SELECT_AFTER, SELECT_ALIKE, TOGGLE, DETAILS, GO_OUT],
    },
    { title: say('actions.group', { group: 'changing' }), actions: CHANGES, also: [TWO_PRESSES] },
    {
      title: say('actions.group', { group: 'view' }),
      actions: [FIT_SECTION, FIT_RIDE, ZOOM_OUT, ZOOM_IN, ...LINES.map(({ action }) => action)],
      also: [OVERVIEW_KEYS, OVERVIEW_EDGE_KEYS, ZOOM_WHEEL, ...READ_OUT_KEYS],
    },
    { title: say('actions.group', { group: 'dragging' }), actions: [], also: DRAG_KEYS },
    { title: say('cueLine.keys'), actions: [], also: CUE_LINE_KEYS },
  ],
}

/** The details beside it. */
export const DETAILS_PLACE: ActionPlace<DraftGround> = {
  id: 'details',
  reach: 'focus',
  repeats: true,
  inFields: true,
  groups: [
    { title: say('actions.group', { group: 'movingAround' }), actions: [LEAVE_DETAILS] },
    { title: say('actions.group', { group: 'tapping' }), actions: [], also: TAP_KEYS },
  ],
}

/** From one part of the place to the next, from fields too. */
export const REGIONS_PLACE: ActionPlace<DraftGround> = {
  id: 'regions',
  reach: 'page',
  repeats: false,
  inFields: true,
  groups: [{ title: say('actions.group', { group: 'movingAround' }), actions: [NEXT_REGION, LAST_REGION] }],
}

/** The ride as a whole. */
export const WHOLE_RIDE: ActionPlace<DraftGround> = {
  id: 'wholeRide',
  reach: 'page',
  repeats: false,
  groups: [
    { title: say('actions.group', { group: 'ride' }), actions: [...OFFERS, ...ADD_BLOCKS.map(({ action }) => action), ADD_SECTION] },
  ],
}

/** A rehearsal, wherever the focus is but in a text. */
export const REHEARSING: ActionPlace<RehearsalGround> = {
  id: 'rehearsing',
  reach: 'page',
  repeats: false,
  groups: [
    {
      title: say('actions.group', { group: 'rehearsing' }),
      actions: [
        REHEARSE,
        PLAY,
        NEXT_BLOCK,
        BACK_A_BLOCK,
        REPEAT,
        MARK_SHAKY,
        MARK_SONG,
        REHEARSE_SHAKY,
        FROM_SELECTION,
        FROM_START,
        CLOSE_REHEARSAL,
      ],
    },
  ],
}

export const DRAFT_PLACES = [CLIPBOARD, STAGE, DETAILS_PLACE, REGIONS_PLACE, WHOLE_RIDE, REHEARSING, HABITS, HEARING] as const
