import { patchSection, type SectionPatch } from '#plan/commands/patchSection.ts'
import { setSong } from '#plan/commands/setSong.ts'
import { setTempo, type Tempo } from '#plan/commands/setTempo.ts'
import type { Song } from '#plan/model.ts'
import type { AppStore } from '#store/state.ts'

export type SectionActions = ReturnType<typeof actionsOnSection>

/** What the panel can do to one section, each as one undo step. */
export function actionsOnSection(store: AppStore, sectionId: string) {
  const now = () => store.getState()
  return {
    edit: (patch: SectionPatch) => void now().run(patchSection(now().ride!, { sectionId, patch })),
    setSong: (song: Song | null) => void now().run(setSong(now().ride!, { sectionId, song })),
    setTempo: (tempo: Tempo | null) => void now().run(setTempo(now().ride!, { sectionId, tempo })),
    newId: () => now().newId(),
  }
}
