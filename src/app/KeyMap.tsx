import { useRef } from 'react'
import { useSought } from '#store/useSought.ts'
import { Dialog } from '#ui/Dialog.tsx'
import { showFound } from '#ui/showFound.ts'
import { words } from '#words/words.ts'
import { ALL_PLACES } from './actions/allPlaces.ts'
import { keyGroups } from './actions/keyGroups.ts'
import './KeyMap.css'

/** Every key of the program on one page. */
export function KeyMap({ open, onClose }: { open: boolean; onClose: () => void }) {
  const map = useRef<HTMLDivElement>(null)
  useSought('shortcut', (sought) =>
    showFound([...(map.current?.querySelectorAll('dd') ?? [])].find((does) => does.textContent === sought.words)?.parentElement),
  )
  return (
    <Dialog open={open} title={words.actions.shortcuts} onClose={onClose} wide>
      <div className="app-keys" ref={map}>
        {keyGroups(ALL_PLACES).map((group) => (
          <section key={group.title}>
            <h3>{group.title}</h3>
            <dl>
              {group.rows.map((row) => (
                <div key={row.does} tabIndex={-1}>
                  <dt>
                    {row.keys.map((keys) => (
                      <kbd key={keys}>{keys}</kbd>
                    ))}
                  </dt>
                  <dd>{row.does}</dd>
                </div>
              ))}
            </dl>
          </section>
        ))}
      </div>
    </Dialog>
  )
}
