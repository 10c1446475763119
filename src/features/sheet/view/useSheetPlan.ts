import { type RefObject, useLayoutEffect, useState } from 'react'
import type { SheetContents } from '#features/sheet/contents/contents.ts'
import { LARGEST_CAP, LEAST_CAP } from '#features/sheet/legibility.ts'
import { DETAILS, fitSheet, type SheetPlan } from '#features/sheet/paging/fitSheet.ts'
import { measureSheet } from '#features/sheet/paging/measureSheet.ts'
import { LAYOUTS, type Paper } from '#features/sheet/paging/paper.ts'

/**
 * Lays the sheet out once the browser has its fonts, and again when what it says or its paper
 * changes. Null until then: pages measured in another font would lie.
 *
 * @param host the hidden copy that is measured
 */
export function useSheetPlan(host: RefObject<HTMLElement | null>, contents: SheetContents, paper: Paper): SheetPlan | null {
  const [laid, setLaid] = useState<{ contents: SheetContents; paper: Paper; plan: SheetPlan } | null>(null)

  useLayoutEffect(() => {
    let current = true
    document.fonts.ready.then(() => {
      if (!current || !host.current) return
      const element = host.current
      const measure: Parameters<typeof fitSheet>[0]['measure'] = (layout, detail, cap) => measureSheet(element, paper, layout, detail, cap)
      setLaid({ contents, paper, plan: fitSheet({ layouts: LAYOUTS, details: DETAILS, least: LEAST_CAP, largest: LARGEST_CAP, measure }) })
    })
    return () => {
      current = false
    }
  }, [host, contents, paper])

  return laid?.contents === contents && laid.paper === paper ? laid.plan : null
}
