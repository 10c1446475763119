import { Dialog } from '#ui/Dialog.tsx'
import './KeyMap.css'

/** One line of the key map. */
interface KeyRow {
  /** Keys pressed together joined by "+", ways to the same end one after another. */
  keys: readonly string[]
  does: string
}

export interface KeyGroup {
  title: string
  rows: readonly KeyRow[]
}

interface Props {
  open: boolean
  groups: readonly KeyGroup[]
  onClose: () => void
}

/** Every key of the program on one page. */
export function KeyMap({ open, groups, onClose }: Props) {
  return (
    <Dialog open={open} title="keys" onClose={onClose} wide>
      <div className="app-keys">
        {groups.map((group) => (
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
