/**
 * The files of a drop, those inside dropped folders among them, at any depth; files that cannot be reached are left out.
 * The browser forgets a drop once its event is over, so this is to be called in it.
 */
export async function filesOfDrop(data: DataTransfer): Promise<File[]> {
  const entries = [...data.items].map((item) => item.webkitGetAsEntry())
  // Files made by a program instead of a disk have no entries.
  if (entries.every((entry) => entry === null)) return [...data.files]
  const found = await Promise.all(entries.map((entry) => (entry ? filesUnder(entry) : [])))
  return found.flat()
}

async function filesUnder(entry: FileSystemEntry): Promise<File[]> {
  if (isFile(entry))
    return new Promise((resolve) =>
      entry.file(
        (file) => resolve([file]),
        () => resolve([]),
      ),
    )
  if (!isFolder(entry)) return []
  const files: File[] = []
  for (const inner of await entriesOf(entry)) files.push(...(await filesUnder(inner)))
  return files
}

const isFile = (entry: FileSystemEntry): entry is FileSystemFileEntry => entry.isFile
const isFolder = (entry: FileSystemEntry): entry is FileSystemDirectoryEntry => entry.isDirectory

/** All of a folder, by name: a reader hands out a hundred at a time in no order, and nothing once it is through. */
async function entriesOf(folder: FileSystemDirectoryEntry): Promise<FileSystemEntry[]> {
  const reader = folder.createReader()
  const all: FileSystemEntry[] = []
  for (;;) {
    const some = await new Promise<FileSystemEntry[]>((resolve) => reader.readEntries(resolve, () => resolve([])))
    if (some.length === 0) break
    all.push(...some)
  }
  return all.sort((a, b) => a.name.localeCompare(b.name, 'en', { numeric: true }))
}
