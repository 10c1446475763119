import { words } from '#words/words.ts'

/** The cautions, once and briefly, at the foot of the start page. */
export function SafetyNotes() {
  return (
    <section className="start-safety" aria-labelledby="start-safety-title">
      <h2 id="start-safety-title">{words.start.beforeClass}</h2>
      <dl>
        {notes().map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}

/**
 * The usual cautions of the trade: common practice, except the newcomers' line
 * (Brogan and others 2017, Am J Med 130:484–487: muscle breakdown after a first class).
 */
function notes(): readonly (readonly [name: string, text: string])[] {
  const { start } = words
  return [
    [start.clearance, start.clearanceText],
    [start.stop, start.stopText],
    [start.bikes, start.bikesText],
    [start.newcomers, start.newcomersText],
    [start.room, start.roomText],
    [start.estimates, start.estimatesText],
  ]
}
