import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { codes } from './index.ts'

/** The members of a union of string literals, read from the source that declares it. */
function union(file: string, name: string): readonly string[] {
  const source = readFileSync(new URL(`../../../keywork/src/remote/${file}`, import.meta.url), 'utf8')
  const body = new RegExp(`export type ${name} =([^;]*?)\\n\\n`).exec(`${source}\n\n`)?.[1] ?? ''
  return [...body.matchAll(/'([^']+)'/g)].map((match) => match[1] ?? '')
}

const limits = union('types.ts', 'LimitCode')

describe('the words of the remote', () => {
  it.each([
    ['remote-verdict', union('compare.ts', 'RemoteVerdict')],
    ['remote-reason', [...limits, ...union('compare.ts', 'ReasonCode')]],
    ['remote-finding', [...limits, ...union('types.ts', 'RemoteFindingCode')]],
  ])('have a text for every code of "%s" and none without', (prefix, members) => {
    expect(members.length).toBeGreaterThan(2)
    const told = codes.filter((code) => code.startsWith(`${prefix}.`))
    expect(told.map((code) => code.slice(prefix.length + 1)).sort()).toEqual([...members].sort())
  })
})
