import { useState } from 'react'
import { EffortFields } from '#features/drafting/panel/block/EffortFields.tsx'
import { EffortPicker } from '#ui/EffortPicker.tsx'
import { words } from '#words/words.ts'
import type { EachBlock } from './eachBlock.ts'
import { sharedOf } from './sharedOf.ts'

/** The effort of several blocks: as that of one while they share it; where they differ one level for all, or each end by itself. */
export function BlocksEffort({ each }: { each: EachBlock }) {
  const { blocks, edit, editEach, preview } = each
  const [byEnds, setByEnds] = useState(false)
  const effort = sharedOf(blocks, (block) => block.effort)
  if (effort !== null || !byEnds)
    return (
      <>
        <EffortFields
          effort={effort}
          onChange={(next) => edit({ effort: next })}
          onPreview={(next) => preview(next && (() => ({ effort: next })))}
        />
        {effort === null && (
          <p className="panel-beside panel-edit-only">
            <button type="button" className="panel-link" onClick={() => setByEnds(true)}>
              {words.many.startAndEnd}
            </button>
          </p>
        )}
      </>
    )
  const end = (which: 'from' | 'to', label: string) => (
    <EffortPicker
      label={label}
      value={sharedOf(blocks, (block) => block.effort[which])}
      onChange={(level) => editEach((block) => ({ effort: { ...block.effort, [which]: level } }))}
      onPreview={(level) => preview(level === null ? null : (block) => ({ effort: { ...block.effort, [which]: level } }))}
    />
  )
  return (
    <div className="panel-effort">
      {end('from', words.panelsBlock.effortStart)}
      {end('to', words.panelsBlock.effortEnd)}
      <p className="panel-effort-words">
        <span>{words.panels.mixed}</span>
        <button type="button" className="panel-link panel-edit-only" onClick={() => setByEnds(false)}>
          {words.many.oneLevel}
        </button>
      </p>
    </div>
  )
}
