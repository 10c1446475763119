import { createStore } from 'zustand/vanilla'
import { computeRide } from '#engine/computeRide.ts'
import { createBackupSlice } from './backupSlice.ts'
import { createClipSlice } from './clipSlice.ts'
import { createHabitsSlice } from './habitsSlice.ts'
import { createHearingSlice } from './hearingSlice.ts'
import { createLeadSlice } from './leadSlice.ts'
import { createListSlice } from './listSlice.ts'
import { createLogSlice } from './logSlice.ts'
import { createMergeSlice } from './mergeSlice.ts'
import { createNoticeSlice } from './noticeSlice.ts'
import { createPlaceSlice } from './placeSlice.ts'
import type { Ports } from './ports.ts'
import { createProfileSlice } from './profileSlice.ts'
import { createRehearsalSlice } from './rehearsalSlice.ts'
import { readOnBike, reportCache } from './reportCache.ts'
import { createRideSlice } from './rideSlice.ts'
import { createSearchSlice } from './searchSlice.ts'
import { createSelectionSlice } from './selectionSlice.ts'
import { createShelfSlice } from './shelfSlice.ts'
import { createShownOnSlice } from './shownOnSlice.ts'
import { createSongPlansSlice } from './songPlansSlice.ts'
import { createSongSlice } from './songSlice.ts'
import { createSoundSlice } from './soundSlice.ts'
import type { AppState, AppStore } from './state.ts'
import { createVersionSlice } from './versionSlice.ts'
import { createViewSlice } from './viewSlice.ts'

/** A store with no ride open. Everything outside the page comes through the ports. */
export function createAppStore(ports: Ports): AppStore {
  const planned = reportCache(ports.compute ?? computeRide)
  return createStore<AppState>()((set, get) => {
    const reportOf = readOnBike(planned, () => get().readOn)
    return {
      ...createRideSlice(set, get, reportOf, ports.now),
      ...createSelectionSlice(set, get),
      ...createPlaceSlice(set, get, reportOf, ports.newId),
      ...createShelfSlice(set, get, ports),
      ...createProfileSlice(set, get, ports.profiles ?? null),
      ...createLeadSlice(set, get, reportOf),
      ...createLogSlice(set, get, ports.taught ?? null),
      ...createHabitsSlice(set),
      ...createVersionSlice(set, get, ports.versions ?? null, ports.newId),
      ...createMergeSlice(set, get, ports),
      ...createBackupSlice(set, get, ports),
      ...createShownOnSlice(set, get, reportOf),
      ...createSongSlice(set, get, ports.songs ?? null, ports.shelf),
      ...createSongPlansSlice(set, get, ports.shelf, ports.versions ?? null),
      ...createSoundSlice(set, get, ports.hearSong ?? null, ports.sounds ?? null),
      ...createHearingSlice(set, get),
      ...createListSlice(set, get),
      ...createSearchSlice(set, get, ports.shelf),
      ...createRehearsalSlice(set, get, ports),
      ...createClipSlice(set),
      ...createNoticeSlice(set),
      ...createViewSlice(set),
      newId: ports.newId,
    }
  })
}
