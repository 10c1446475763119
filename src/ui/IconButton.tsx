import type { ReactNode } from 'react'
import { Button, type ButtonProps } from './Button.tsx'

interface IconButtonProps extends Omit<ButtonProps, 'figure' | 'children' | 'aria-label'> {
  /** What the button does, for screen readers and as its tooltip. */
  label: string
  children: ReactNode
}

/** A button that shows a figure only; its label is always there for those who cannot see or do not know it. */
export function IconButton({ label, className, children, ...rest }: IconButtonProps) {
  return (
    <Button title={label} {...rest} aria-label={label} className={`ui-icon-button ${className ?? ''}`}>
      {children}
    </Button>
  )
}
