import type { Aside } from '#features/sheet/contents/contents.ts'

/** Where the class's clock runs and no song does. */
export function AsideLine({ aside: { rideClock, words } }: { aside: Aside }) {
  return (
    <p className="sheet-aside">
      <span className="sheet-ride">{rideClock}</span> {words}
    </p>
  )
}
