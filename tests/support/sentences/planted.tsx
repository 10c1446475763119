// What a finder of sentences must find, and what it must leave alone.
export const title = 'Two words'
export const said = (name: string, count: number) => (count === 1 ? 'A sentence.' : `at ${name} of ${count}`)
export const cut = () => {
  throw new Error('For programmers only.')
}
export const Planted = () => (
  <button type="button" className="not a text" aria-label="hidden from the eye">
    between tags
  </button>
)
