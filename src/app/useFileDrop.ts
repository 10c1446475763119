import { useEffect, useEffectEvent } from 'react'
import { filesOfDrop } from './filesOfDrop.ts'

/** Takes files and folders dropped anywhere on the page, in place of the browser, which would leave the page for them. */
export function useFileDrop(onFiles: (files: File[]) => void): void {
  const take = useEffectEvent(onFiles)
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
    }
    const drop = (event: DragEvent) => {
      if (!event.dataTransfer?.types.includes('Files')) return
      event.preventDefault()
      void filesOfDrop(event.dataTransfer).then((files) => files.length > 0 && take(files))
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [])
}
