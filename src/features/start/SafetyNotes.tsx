/**
 * The usual cautions of the trade: common practice, except the newcomers' line
 * (Brogan and others 2017, Am J Med 130:484–487: muscle breakdown after a first class).
 */
const NOTES = [
  [
    'clearance',
    'Riders with symptoms or a known heart, metabolic or kidney condition need medical clearance where your screening says so.',
  ],
  ['stop', 'Stop on dizziness, chest pain or unusual breathlessness, and fetch help.'],
  ['bike', 'Set every bike up and show the brake. Never pedal fast with no resistance.'],
  ['newcomers', 'Build up slowly: muscle breakdown after a first hard class is documented. Give a ceiling and leave to sit out.'],
  ['room', 'Water within reach, air moving, heat watched, and the sound kept kind to ears.'],
  ['estimates', 'Figures here are estimates. You, the bike’s manual, the facility, local codes and your certifying body come first.'],
] as const

/** The cautions, once and briefly, at the foot of the start page. */
export function SafetyNotes() {
  return (
    <section className="start-safety" aria-labelledby="start-safety-title">
      <h2 id="start-safety-title">before any class</h2>
      <dl>
        {NOTES.map(([name, text]) => (
          <div key={name}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
