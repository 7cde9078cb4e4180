/** Hands a file to the browser to save under a name. */
export function saveAsFile(name: string, blob: Blob): void {
  const address = URL.createObjectURL(blob)
  const link = document.createElement('a')
  link.href = address
  link.download = name
  link.click()
  // The browser reads the address after the click returns.
  setTimeout(() => URL.revokeObjectURL(address), 60_000)
}
