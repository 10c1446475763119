import type { ButtonHTMLAttributes, ReactNode } from 'react'
import './Button.css'

export interface ButtonProps extends ButtonHTMLAttributes<HTMLButtonElement> {
  /** plain: ruled; action: a repair or main step, ruled in the action colour; solid: the one thing to do here; quiet: no rule. */
  tone?: 'plain' | 'action' | 'solid' | 'quiet'
  /** Drawn before the words. */
  figure?: ReactNode
  /** Makes the button a toggle and says its state. */
  pressed?: boolean
}

/** A button with words. Never submits a form unless told to. */
export function Button({ tone = 'plain', figure, pressed, className, children, type = 'button', ...rest }: ButtonProps) {
  return (
    <button type={type} {...rest} aria-pressed={pressed} className={`ui-button ${className ?? ''}`} data-tone={tone}>
      {figure}
      <span>{children}</span>
    </button>
  )
}
