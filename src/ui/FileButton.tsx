import { type ReactNode, useRef } from 'react'
import { Button } from './Button.tsx'

export interface FileButtonProps {
  /** As the `accept` of a file input. */
  accept: string
  onFile: (file: File) => void
  children: ReactNode
}

/** A button that asks for one file. The same file can be chosen twice in a row: it may have been mended in between. */
export function FileButton({ accept, onFile, children }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <Button onClick={() => input.current?.click()}>{children}</Button>
      <input
        ref={input}
        type="file"
        accept={accept}
        hidden
        onChange={(event) => {
          const file = event.currentTarget.files?.[0]
          event.currentTarget.value = ''
          if (file) onFile(file)
        }}
      />
    </>
  )
}
