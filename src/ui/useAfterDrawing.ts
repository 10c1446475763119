import { useCallback, useLayoutEffect, useState } from 'react'

/**
 * For what a handler does to the page its own change has made, such as moving the focus: done with the drawing of that
 * change, and so before the next key, which goes to whatever has the focus by then. An animation frame comes too late
 * for somebody who types quickly, or on a busy machine.
 *
 * @returns takes the task; of several in one go the last is done
 */
export function useAfterDrawing(): (task: () => void) => void {
  const [task, setTask] = useState<(() => void) | null>(null)
  useLayoutEffect(() => task?.(), [task])
  return useCallback((next) => setTask(() => next), [])
}
