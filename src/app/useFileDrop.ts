import { useEffect, useEffectEvent } from 'react'

/** Takes a file dropped anywhere on the page, in place of the browser, which would leave the page for it. */
export function useFileDrop(onFile: (file: File) => void): void {
  const take = useEffectEvent(onFile)
  useEffect(() => {
    const over = (event: DragEvent) => {
      if (event.dataTransfer?.types.includes('Files')) event.preventDefault()
    }
    const drop = (event: DragEvent) => {
      const file = event.dataTransfer?.files[0]
      if (!file) return
      event.preventDefault()
      take(file)
    }
    window.addEventListener('dragover', over)
    window.addEventListener('drop', drop)
    return () => {
      window.removeEventListener('dragover', over)
      window.removeEventListener('drop', drop)
    }
  }, [])
}
