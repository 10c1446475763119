/** Texts whose answers are kept; the bound only keeps a long session from growing without end. */
const MOST_TEXTS = 5_000

/** What a text gives, worked out once for each text. */
export function remembered<Answer>(work: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>()
  return (text) => {
    let answer = known.get(text)
    if (answer === undefined) {
      if (known.size >= MOST_TEXTS) known.clear()
      answer = work(text)
      known.set(text, answer)
    }
    return answer
  }
}
