import type { Profile } from '#plan/kept/profile.ts'
import type { AppState, SetState } from './state.ts'

/** Something the user has to know, until they put it away. */
export interface Notice {
  kind: 'problem' | 'warning' | 'info'
  sentence: string
  details?: readonly string[]
  /** A place to look at it; with `entry` the log, with an entry for the class that was led. Or to keep the ride that another window deleted, or what was removed from what is kept. */
  offer?: { label: string; place: AppState['place']; entry?: true } | { label: string; keep: true } | { label: string; profile: Profile }
}

export interface NoticeSlice {
  notice: Notice | null
  /** Spoken to screen readers. */
  announcement: string
  /** Rises with every announcement, so that the same words twice are heard twice. */
  announcementTurn: number

  notify: (notice: Notice) => void
  dismissNotice: () => void
  announce: (sentence: string) => void
}

export function createNoticeSlice(set: SetState): NoticeSlice {
  return {
    notice: null,
    announcement: '',
    announcementTurn: 0,
    notify: (notice) => set({ notice }),
    dismissNotice: () => set({ notice: null }),
    announce: (sentence) => set((state) => announced(state, sentence)),
  }
}

/** The fields of a new announcement. */
export const announced = (state: Pick<NoticeSlice, 'announcementTurn'>, announcement: string) => ({
  announcement,
  announcementTurn: state.announcementTurn + 1,
})
