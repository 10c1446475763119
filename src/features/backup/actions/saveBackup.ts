import type { Action, ActionPlace, Ground } from '#actions/action.ts'
import { saveTextFile } from '#ui/saveTextFile.ts'
import { say } from '#words/said.ts'
import { words } from '#words/words.ts'

interface BackupGround extends Ground {
  /** "2026-11-25". */
  today: () => string
  /** Says beside it what was saved. */
  tell: (sentence: string) => void
}

export const SAVE_BACKUP: Action<BackupGround> = {
  id: 'backup.save',
  name: say('actions.saveBackup'),
  does: say('actions.saveBackupDo'),
  do: async ({ store, today, tell: tellBeside }) => {
    const made = await store.getState().makeBackup()
    if (!made) return
    const name = `ridewright-${today()}.backup.json`
    saveTextFile(name, `${JSON.stringify(made.file)}\n`)
    tellBeside(words.actions.savedBackup({ name, holds: made.holds }))
  },
}

/** The backup of everything. */
export const BACKUP: ActionPlace<BackupGround> = {
  id: 'backup',
  reach: 'page',
  repeats: false,
  groups: [{ title: say('actions.group', { group: 'backup' }), actions: [SAVE_BACKUP] }],
}
