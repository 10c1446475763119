import { Button, type ButtonProps } from '#ui/Button.tsx'
import type { Action, Ground } from './action.ts'
import { useAction } from './useAction.ts'

interface ActionButtonProps<On extends Ground> extends Omit<ButtonProps, 'onClick' | 'disabled' | 'title' | 'pressed' | 'children'> {
  action: Action<On>
  on: On
}

/** The button of an action; draws nothing where the action means nothing. */
export function ActionButton<On extends Ground>({ action, on, ...look }: ActionButtonProps<On>) {
  const { words, pressed, drawn, props } = useAction(action, on)
  if (!drawn) return null
  return (
    <Button {...look} {...props} pressed={pressed}>
      {words}
    </Button>
  )
}
