/** A private file system in memory, as far as saving rides uses one. */
export interface MemoryFiles {
  root: () => Promise<FileSystemDirectoryHandle>
  /** Texts by file name, to look at and to spoil. */
  texts: Map<string, string>
  /** Makes every write fail in the middle, as a full disk does. */
  full: boolean
}

/** Stands in for the browser's class of the same name, which rideFiles looks at to see whether a page may write. */
export class WritableFileHandle {
  createWritable(): void {}
}

export function memoryFiles(): MemoryFiles {
  const texts = new Map<string, string>()
  const missing = () => new DOMException('A requested file could not be found.', 'NotFoundError')
  const files: MemoryFiles = { texts, full: false, root: async () => root as unknown as FileSystemDirectoryHandle }

  const fileHandle = (name: string) => ({
    getFile: async () => ({ text: async () => texts.get(name)! }),
    createWritable: async () => {
      let written = ''
      return {
        write: async (text: string) => {
          if (files.full) throw new DOMException('No space left.', 'QuotaExceededError')
          written += text
        },
        // What is written takes the place of the old file only here.
        close: async () => void texts.set(name, written),
      }
    },
  })

  const folder = {
    getFileHandle: async (name: string, { create = false } = {}) => {
      if (!texts.has(name)) {
        if (!create) throw missing()
        texts.set(name, '')
      }
      return fileHandle(name)
    },
    removeEntry: async (name: string) => {
      if (!texts.delete(name)) throw missing()
    },
    async *keys() {
      yield* [...texts.keys()]
    },
  }
  const root = { getDirectoryHandle: async () => folder }
  return files
}
