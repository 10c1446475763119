import { type ReactNode, useRef } from 'react'
import { Button, type ButtonProps } from './Button.tsx'

interface Common {
  /** As the `accept` of a file input. */
  accept: string
  tone?: ButtonProps['tone']
  children: ReactNode
}

interface FileButtonProps extends Common {
  onFile: (file: File) => void
}

/** A button that asks for one file. The same file can be chosen twice in a row: it may have been mended in between. */
export function FileButton({ onFile, ...rest }: FileButtonProps) {
  return <Chooser {...rest} onFiles={([file]) => onFile(file!)} />
}

interface FilesButtonProps extends Common {
  /** Asks for a folder, and gives all files in it at any depth, of whatever kind. */
  folder?: boolean
  onFiles: (files: File[]) => void
}

/** A button that asks for any number of files, or for a folder. */
export function FilesButton(props: FilesButtonProps) {
  return <Chooser {...props} several />
}

function Chooser({ accept, tone, children, folder, several, onFiles }: FilesButtonProps & { several?: boolean }) {
  const input = useRef<HTMLInputElement>(null)
  return (
    <>
      <Button tone={tone} onClick={() => input.current?.click()}>
        {children}
      </Button>
      <input
        ref={input}
        type="file"
        accept={folder ? undefined : accept}
        multiple={several}
        {...(folder && { webkitdirectory: '' })}
        hidden
        onChange={(event) => {
          const files = [...(event.currentTarget.files ?? [])]
          event.currentTarget.value = ''
          if (files.length > 0) onFiles(files)
        }}
      />
    </>
  )
}
