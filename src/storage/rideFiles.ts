import type { RideCopy } from './rideCopy.ts'

const ENDING = '.json'

/**
 * The second copy, one file a ride (or a profile) in the origin's private file system. Browsers write
 * beside the old file and change the two over when the new one is closed, so a file is
 * always whole. Null where there is no such file system or no writing to it from a page.
 *
 * @param root the origin's private directory
 * @param things what is kept, as the name of the folder
 */
export async function openRideFiles(root: () => Promise<FileSystemDirectoryHandle>, things = 'rides'): Promise<RideCopy | null> {
  const open = async () => (await root()).getDirectoryHandle(things, { create: true })
  let folder: FileSystemDirectoryHandle
  try {
    folder = await open()
    if (!('createWritable' in FileSystemFileHandle.prototype)) return null
  } catch {
    return null
  }

  const read = async (name: string): Promise<unknown> => {
    try {
      const file = await (await folder.getFileHandle(name)).getFile()
      return parsed(await file.text())
    } catch (error) {
      if (isMissing(error)) return undefined
      throw error
    }
  }

  return {
    read: (id) => read(fileName(id)),
    readAll: async () => {
      const found: { id: string; value: unknown }[] = []
      for await (const name of folder.keys()) {
        // A write cut short leaves its swap file behind, under another ending.
        if (name.endsWith(ENDING)) found.push({ id: decodeURIComponent(name.slice(0, -ENDING.length)), value: await read(name) })
      }
      return found
    },
    has: async (id) => {
      try {
        await folder.getFileHandle(fileName(id))
        return true
      } catch {
        return false
      }
    },
    write: async (id, value) => {
      const text = JSON.stringify(value)
      try {
        await writeFile(folder, fileName(id), text)
      } catch (error) {
        if (!isMissing(error)) throw error
        // The folder itself is gone: somebody cleared this site's data. It is made anew, once.
        folder = await open()
        await writeFile(folder, fileName(id), text)
      }
    },
    remove: async (id) => {
      try {
        await folder.removeEntry(fileName(id))
      } catch (error) {
        if (!isMissing(error)) throw error
      }
    },
  }
}

async function writeFile(folder: FileSystemDirectoryHandle, name: string, text: string): Promise<void> {
  const writable = await (await folder.getFileHandle(name, { create: true })).createWritable()
  await writable.write(text)
  await writable.close()
}

const fileName = (id: string): string => encodeURIComponent(id) + ENDING

const isMissing = (error: unknown): boolean => error instanceof DOMException && error.name === 'NotFoundError'

/** A file that is no JSON is given as its text: it is no ride, but it is not thrown away. */
function parsed(text: string): unknown {
  try {
    return JSON.parse(text)
  } catch {
    return text
  }
}
