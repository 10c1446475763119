import type { SetBlock } from '#plan/model.ts'
import { itemName } from '#plan/names.ts'
import { useApp } from '#store/useApp.ts'
import { tell, words } from '#words/words.ts'

/** What a set is called, where it stands, and its work against its easy time. */
export function SetHeader({ set }: { set: SetBlock }) {
  const report = useApp((state) => state.shownReport?.sets.find(({ setId }) => setId === set.id))
  return (
    <header className="panel-header">
      <h2>
        <span className="panel-name">{tell(itemName(set))}</span>
      </h2>
      {report && (
        <>
          <p className="panel-where">
            {words.panels.setPlace({
              from: report.from,
              to: report.to,
              rounds: set.rounds,
              each: (report.to - report.from) / set.rounds,
            })}
          </p>
          <p className="panel-where">
            {words.panels.setWork({
              work: report.workSeconds,
              easy: report.easySeconds,
              ratio: report.workSeconds > 0 ? report.ratio : null,
            })}
          </p>
        </>
      )}
    </header>
  )
}
