import type { StoreApi } from 'zustand/vanilla'
import type { BackupSlice } from './backupSlice.ts'
import type { ClipSlice } from './clipSlice.ts'
import type { HabitsSlice } from './habitsSlice.ts'
import type { HearingSlice } from './hearingSlice.ts'
import type { LeadSlice } from './leadSlice.ts'
import type { ListSlice } from './listSlice.ts'
import type { LogSlice } from './logSlice.ts'
import type { MergeSlice } from './mergeSlice.ts'
import type { NoticeSlice } from './noticeSlice.ts'
import type { PlaceSlice } from './placeSlice.ts'
import type { ProfileSlice } from './profileSlice.ts'
import type { RehearsalSlice } from './rehearsalSlice.ts'
import type { RideSlice } from './rideSlice.ts'
import type { SearchSlice } from './searchSlice.ts'
import type { SelectionSlice } from './selectionSlice.ts'
import type { ShelfSlice } from './shelfSlice.ts'
import type { ShownOnSlice } from './shownOnSlice.ts'
import type { SongPlansSlice } from './songPlansSlice.ts'
import type { SongSlice } from './songSlice.ts'
import type { SoundSlice } from './soundSlice.ts'
import type { VersionSlice } from './versionSlice.ts'
import type { ViewSlice } from './viewSlice.ts'

/** All the app knows at one moment, and everything it can do. */
export type AppState = RideSlice &
  SelectionSlice &
  PlaceSlice &
  ShelfSlice &
  ProfileSlice &
  LeadSlice &
  LogSlice &
  HabitsSlice &
  VersionSlice &
  MergeSlice &
  BackupSlice &
  ShownOnSlice &
  SongSlice &
  SongPlansSlice &
  SoundSlice &
  RehearsalSlice &
  ClipSlice &
  HearingSlice &
  ListSlice &
  SearchSlice &
  NoticeSlice &
  ViewSlice &
  Makers

/** For the parts of a command that the one who gives it has to bring. */
interface Makers {
  /** Another id at every call. */
  newId: () => string
}

export type AppStore = StoreApi<AppState>
export type SetState = AppStore['setState']
export type GetState = AppStore['getState']
