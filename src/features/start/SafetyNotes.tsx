import { useRef } from 'react'
import { useSought } from '#store/useSought.ts'
import { showFound } from '#ui/showFound.ts'
import { words } from '#words/words.ts'
import { cautions } from './cautions.ts'

/** The cautions, once and briefly, at the foot of the start page. */
export function SafetyNotes() {
  const list = useRef<HTMLDListElement>(null)
  useSought('caution', (sought) =>
    showFound([...(list.current?.children ?? [])].find((line) => line.firstChild?.textContent === sought.words)),
  )
  return (
    <section className="start-safety" aria-labelledby="start-safety-title">
      <h2 id="start-safety-title">{words.start.beforeClass}</h2>
      <dl ref={list}>
        {cautions().map(([name, text]) => (
          <div key={name} tabIndex={-1}>
            <dt>{name}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
    </section>
  )
}
