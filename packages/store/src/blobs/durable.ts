import { open } from 'node:fs/promises'

/** Makes renames and new names in a folder survive a power cut. Windows keeps names itself and refuses this. */
export async function syncFolder(folder: string): Promise<void> {
  if (process.platform === 'win32') return
  const handle = await open(folder, 'r')
  try {
    await handle.sync()
  } finally {
    await handle.close()
  }
}
