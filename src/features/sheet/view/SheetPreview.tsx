import { type ReactNode, useLayoutEffect, useRef, useState } from 'react'
import { type Paper, PX_PER_MM } from '#features/sheet/paging/paper.ts'
import { readableWords } from '#features/sheet/readableWords.ts'
import { words } from '#words/words.ts'
import { printedSize } from './SheetPages.tsx'
import { smallestCap } from './smallestCap.ts'
import type { LaidSheet } from './useSheetPlan.ts'

interface SheetPreviewProps {
  plan: LaidSheet
  paper: Paper
  fourUp?: boolean
  children: ReactNode
}

/** The pages in the room the screen has: real size where it fits, else smaller as a whole, so that no line breaks otherwise than in print. */
export function SheetPreview({ plan, paper, fourUp = false, children }: SheetPreviewProps) {
  const frame = useRef<HTMLDivElement>(null)
  const pages = useRef<HTMLDivElement>(null)
  const [room, setRoom] = useState<{ width: number; height: number } | null>(null)
  const [cap, setCap] = useState<number | null>(null)

  useLayoutEffect(() => {
    const observer = new ResizeObserver(() => {
      if (frame.current && pages.current) setRoom({ width: frame.current.clientWidth, height: pages.current.offsetHeight })
    })
    observer.observe(frame.current!)
    observer.observe(pages.current!)
    return () => observer.disconnect()
  }, [])
  // biome-ignore lint/correctness/useExhaustiveDependencies: measured anew whenever the pages are laid out anew
  useLayoutEffect(() => setCap(smallestCap(pages.current!)), [plan])

  const scale = room ? Math.min(1, room.width / (printedSize(paper, plan.layout, fourUp).width * PX_PER_MM)) : 1
  return (
    <>
      <p className="sheet-summary" role="status">
        {amountWords(plan, fourUp)} {cap !== null && readableWords(cap, plan.layout.page)}
      </p>
      <div ref={frame} className="sheet-frame" style={{ height: room ? room.height * scale : undefined }}>
        <div ref={pages} className="sheet-scaled" style={{ transform: scale < 1 ? `scale(${scale})` : undefined }}>
          {children}
        </div>
      </div>
    </>
  )
}

/** "2 pages, portrait.", "6 cards on 2 pages.", "9 screens." */
function amountWords({ pages, layout }: LaidSheet, fourUp: boolean): string {
  const { length } = pages
  if (layout.page === 'phone') return words.sheet.screens({ screens: length })
  if (layout.page === 'sheet') return words.sheet.pages({ pages: length, orientation: layout.orientation })
  return fourUp ? words.sheet.cardsOn({ cards: length, pages: Math.ceil(length / 4) }) : words.sheet.cardsEach({ cards: length })
}
