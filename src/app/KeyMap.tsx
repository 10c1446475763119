import { Dialog } from '#ui/Dialog.tsx'
import { words } from '#words/words.ts'
import { ALL_PLACES } from './actions/allPlaces.ts'
import { keyGroups } from './actions/keyGroups.ts'
import './KeyMap.css'

/** Every key of the program on one page. */
export function KeyMap({ open, onClose }: { open: boolean; onClose: () => void }) {
  return (
    <Dialog open={open} title={words.actions.shortcuts} onClose={onClose} wide>
      <div className="app-keys">
        {keyGroups(ALL_PLACES).map((group) => (
          <section key={group.title}>
            <h3>{group.title}</h3>
            <dl>
              {group.rows.map((row) => (
                <div key={row.does}>
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
