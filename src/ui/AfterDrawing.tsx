import { type Ref, useImperativeHandle } from 'react'
import { useAfterDrawing } from './useAfterDrawing.ts'

/** What `useAfterDrawing` gives, as a handle: for a large component that must not be drawn again for every such task. Draws nothing. */
export function AfterDrawing({ ref }: { ref: Ref<(task: () => void) => void> }) {
  const afterDrawing = useAfterDrawing()
  useImperativeHandle(ref, () => afterDrawing, [afterDrawing])
  return null
}
