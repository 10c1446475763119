/** Hands a text, or bytes, to the browser as a download of that name. */
export function saveTextFile(name: string, text: string | Uint8Array, type = 'application/json'): void {
  const address = URL.createObjectURL(new Blob([text as BlobPart], { type }))
  const link = document.createElement('a')
  link.href = address
  link.download = name
  document.body.append(link)
  link.click()
  link.remove()
  // The download reads the address after this turn; it is given back once that has surely begun.
  setTimeout(() => URL.revokeObjectURL(address), 10_000)
}
