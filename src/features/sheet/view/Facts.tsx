import { Fragment } from 'react'

/** Short phrases one after another, each kept on one line where it fits on one. */
export function Facts({ facts }: { facts: readonly (string | undefined | false)[] }) {
  const said = facts.filter((fact) => fact !== undefined && fact !== false)
  return said.map((fact, index) => (
    <Fragment key={fact}>
      {index > 0 && ' '}
      <span className="sheet-fact">
        {fact}
        {index < said.length - 1 && '\u00a0·'}
      </span>
    </Fragment>
  ))
}
