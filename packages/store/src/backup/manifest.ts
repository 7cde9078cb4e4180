import { createHash } from 'node:crypto'
import { createReadStream } from 'node:fs'
import { open, readdir, readFile, rename } from 'node:fs/promises'
import { join, sep } from 'node:path'
import { StoreError } from '../contract/index.ts'
import type { DoctorFinding } from '../doctor/finding.ts'

/** Lists the SHA-256 of every file of a backup, in the form `sha256sum --check` reads. Written last: it ends a backup. */
export const manifestName = 'MANIFEST.sha256'

/** Hashes a file without holding it in memory; hex. */
export async function hashOfFile(file: string): Promise<string> {
  const hash = createHash('sha256')
  for await (const chunk of createReadStream(file)) hash.update(chunk as Uint8Array)
  return hash.digest('hex')
}

/** Every file below a folder but the manifest, by its path with `/`, in order. */
export async function filesBelow(folder: string): Promise<readonly string[]> {
  const entries = await readdir(folder, { recursive: true, withFileTypes: true })
  return entries
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .split(sep)
        .join('/'),
    )
    .filter((name) => name !== manifestName)
    .sort()
}

/** Writes the manifest of what a folder holds, durably. Returns the number of files. */
export async function writeManifest(folder: string): Promise<number> {
  const names = await filesBelow(folder)
  const part = join(folder, `${manifestName}.part`)
  const lines: string[] = []
  for (const name of names) lines.push(`${await hashOfFile(join(folder, name))}  ${name}\n`)
  const handle = await open(part, 'w', 0o600)
  try {
    await handle.writeFile(lines.join(''))
    await handle.sync()
  } finally {
    await handle.close()
  }
  await rename(part, join(folder, manifestName))
  return names.length
}

/** Compares every file of a backup with its manifest. Throws StoreError `backup-broken` when there is none. */
export async function checkManifest(folder: string): Promise<readonly DoctorFinding[]> {
  const text = await readFile(join(folder, manifestName), 'utf8').catch(() => null)
  if (text === null) {
    throw new StoreError(
      'backup-broken',
      `${folder} is no whole backup: it has no ${manifestName}, which is written last.`,
      'Name the folder that "shearline backup" wrote, or make the backup again.',
    )
  }
  const findings: DoctorFinding[] = []
  const say = (where: string, what: string) =>
    findings.push({
      code: 'backup-file-changed',
      severity: 'error',
      where,
      what,
      doNext: 'Use another backup, or another copy of this one.',
    })
  const listed = new Set<string>()
  for (const [index, line] of text.split('\n').entries()) {
    if (line === '') continue
    const [, expected = '', name = ''] = /^([0-9a-f]{64}) {2}(.+)$/.exec(line) ?? []
    if (name === '') {
      say(`${manifestName}, line ${index + 1}`, 'It is not a hash and a file name.')
      continue
    }
    listed.add(name)
    const found = await hashOfFile(join(folder, name)).catch(() => null)
    if (found === null) say(name, 'The file is not there.')
    else if (found !== expected) say(name, `The file was changed: it hashes to ${found}.`)
  }
  for (const name of await filesBelow(folder))
    if (!listed.has(name)) say(name, `The file is not in ${manifestName}.`)
  return findings
}
