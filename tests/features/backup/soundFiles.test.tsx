// @vitest-environment happy-dom
import { act } from 'react'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { BackupPart } from '#features/backup/BackupPart.tsx'
import { RestoreDialog } from '#features/backup/RestoreDialog.tsx'
import { writeBackup } from '#plan/kept/backup.ts'
import { aStore } from '#tests/support/aStore.ts'
import { type Rendered, rendered } from '#tests/support/rendered.tsx'
import { aSong } from '#tests/support/smallRide.ts'

let page: Rendered
afterEach(() => {
  page.close()
  vi.unstubAllGlobals()
})

const shelf = {
  list: async () => [],
  load: async () => ({ ok: false as const, sentence: '', details: [] }),
  save: async () => undefined,
  remove: async () => undefined,
}

describe('sound files and a backup', () => {
  it('are said not to be in it, where it is made, once one is kept', () => {
    const { store } = aStore(shelf)
    page = rendered(store, <BackupPart today={() => '2026-11-25'} onOpenFile={() => undefined} />)
    expect(page.text()).not.toContain('Not in it')
    act(() => store.setState({ keptSoundFiles: new Set(['one', 'two']) }))
    expect(page.text()).toContain('Not in it: 2 sound files you keep here.')
  })

  it('are asked for on putting it back, as far as they are not here', async () => {
    const { store, state } = aStore(shelf)
    const songs = ['here', 'away', 'typed'].map((id) => ({
      id,
      song: { ...aSong(id), id, ...(id !== 'typed' && { fingerprint: id }) },
    }))
    await state().receiveBackup(writeBackup({ rides: [], versions: [], profiles: [], songs }), 'all.backup.json')
    state().haveSoundFile('here', new Blob(['x']))
    page = rendered(store, <RestoreDialog />)
    expect(page.text()).toContain('The sound files of 1 song aren’t here, and a backup has none')
    act(() => state().haveSoundFile('away', new Blob(['x'])))
    expect(page.text()).not.toContain('sound files')
  })
})
