import type { ReactNode } from 'react'
import { feet } from './feet.tsx'
import { hands } from './hands.tsx'
import { moves } from './moves.tsx'
import { riders } from './riders.tsx'
import { roads } from './roads.tsx'

/** Every figure of the family by name: shapes on a 16 × 16 grid, drawn in the colour of the text around them. */
const FIGURES = { ...riders, ...hands, ...roads, ...moves, ...feet } as const

export type FigureName = keyof typeof FIGURES

interface FigureProps {
  name: FigureName
  /** Side length: px, or any CSS length ("3.6mm", "1.3em"). */
  size?: number | string
  /** Read out where no word stands beside the figure; without it the figure is decoration. */
  label?: string
  className?: string
}

/** One figure. Strokes only, so it prints as it shows. */
export function Figure({ name, size = 16, label, className }: FigureProps) {
  return (
    <FigureFrame size={size} label={label} className={className}>
      {FIGURES[name]}
    </FigureFrame>
  )
}

function FigureFrame({ size, label, className, children }: Omit<FigureProps, 'name'> & { children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/noSvgWithoutTitle: named by its label, or hidden where a word stands beside it
    <svg
      className={`ui-figure ${className ?? ''}`}
      viewBox="0 0 16 16"
      style={{ width: size, height: size, flex: 'none' }}
      fill="none"
      stroke="currentColor"
      strokeWidth={1.5}
      strokeLinecap="round"
      strokeLinejoin="round"
      {...(label ? { role: 'img', 'aria-label': label } : { 'aria-hidden': true })}
    >
      {children}
    </svg>
  )
}
