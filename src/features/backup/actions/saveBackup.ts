import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { saveTextFile } from '#ui/saveTextFile.ts'

interface BackupGround extends Ground {
  /** "2026-11-25". */
  today: () => string
  /** Says beside it what was saved. */
  tell: (sentence: string) => void
}

export const SAVE_BACKUP: Action<BackupGround> = {
  id: 'backup.save',
  name: 'save a backup',
  does: 'everything that is kept on this machine, as one file',
  do: async ({ store, today, tell }) => {
    const made = await store.getState().makeBackup()
    if (!made) return
    const name = `ridewright-${today()}.backup.json`
    saveTextFile(name, `${JSON.stringify(made.file)}\n`)
    tell(`Saved ${name}: ${made.holds}`)
  },
}

/** The backup of everything. */
export const BACKUP: ActionPlace<BackupGround> = {
  id: 'backup',
  reach: 'page',
  repeats: false,
  groups: [{ title: 'a backup', actions: [SAVE_BACKUP] }],
}
