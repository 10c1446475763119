import { useDraggable } from '@dnd-kit/core'
import type { ReactNode } from 'react'
import { useApp } from '#store/useApp.ts'

export type DragKind = 'block' | 'set' | 'section' | 'pattern' | 'own'

/**
 * What can be picked up with the pointer. Only the listeners of the drag library are used: roles, names
 * and keys are the stage's own.
 */
export function DragHandle({ kind, id, children }: { kind: DragKind; id: string; children: ReactNode }) {
  const disabled = useApp((state) => state.received !== null)
  const { setNodeRef, listeners } = useDraggable({ id: `${kind}:${id}`, data: { kind, id }, disabled })
  return (
    <div ref={setNodeRef} className="drag-handle" {...listeners}>
      {children}
    </div>
  )
}
