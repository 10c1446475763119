import { type RefObject, useLayoutEffect, useState } from 'react'
import type { SheetJob } from '#features/sheet/jobs.ts'
import { type FitJob, fitSheet, type SheetPlan } from '#features/sheet/paging/fitSheet.ts'
import { type ColumnStyle, measureColumns } from '#features/sheet/paging/measureColumns.ts'
import { measureSheet } from '#features/sheet/paging/measureSheet.ts'
import type { Paper } from '#features/sheet/paging/paper.ts'

export interface LaidSheet extends SheetPlan {
  columnStyle: ColumnStyle
}

/**
 * Lays the sheet out once the browser has its fonts, and again when what it says, its paper or its
 * kind changes. Null until then: pages measured in another font would lie.
 *
 * @param host the hidden copy that is measured
 * @param says another object whenever the sheet says something else
 */
export function useSheetPlan(host: RefObject<HTMLElement | null>, says: object, paper: Paper, job: SheetJob): LaidSheet | null {
  const [laid, setLaid] = useState<{ says: object; paper: Paper; job: SheetJob; plan: LaidSheet } | null>(null)

  useLayoutEffect(() => {
    let current = true
    document.fonts.ready.then(() => {
      if (!current || !host.current) return
      const element = host.current
      const measure: FitJob['measure'] = (layout, detail, cap) => measureSheet(element, paper, layout, detail, cap)
      const columnStyle = measureColumns(element)
      setLaid({ says, paper, job, plan: { ...fitSheet({ ...job, measure }), columnStyle } })
    })
    return () => {
      current = false
    }
  }, [host, says, paper, job])

  return laid?.says === says && laid.paper === paper && laid.job === job ? laid.plan : null
}
