/** A whole run of the vault on the command line and the real server: nothing that was written holds the secret. */
import { spawn, spawnSync } from 'node:child_process'
import { randomBytes } from 'node:crypto'
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, statSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { newIdentity } from '@shearline/jobfile'
import { recordingBefore } from '@shearline/jobfile/demo'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { lookFor, tracesOf } from '../../apps/bench/src/testing/traces.ts'
import { root, shearline } from '../support/shearline.ts'

let folder = ''
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'shearline-leaks-'))
})
afterAll(() => rmSync(folder, { recursive: true, force: true }))

const at = (name: string) => join(folder, name)

describe('a secret', () => {
  it('is in no file, log, answer or temporary folder after it was proven, sealed, served and opened', async () => {
    const secret = randomBytes(4096)
    const { identity, recipient } = await newIdentity()
    for (const name of ['in', 'out', 'temp', 'logs']) mkdirSync(at(name))
    writeFileSync(at('in/first.bin'), secret)
    writeFileSync(at('in/second.bin'), secret)
    writeFileSync(at('in/key.txt'), `${identity}\n`)
    const recording = recordingBefore(1_767_960_000)
    writeFileSync(at('in/arrival.log'), recording)
    const env = { SHEARLINE_DATA: at('data'), TMPDIR: at('temp'), SHEARLINE_BY: 'technician' }
    let said = ''
    const run = (...args: string[]) => {
      const ran = shearline(args, { env })
      said += ran.out + ran.err
      expect([ran.code, ran.err], args.join(' ')).toEqual([0, expect.any(String)])
      return ran.out
    }
    run('job', 'open', 'van-1', '--title', 'Van', '--place', 'Yard', '--vehicle', 'small van')
    run('vault', 'recipients', 'add', recipient, '--name', 'office')
    const proven = JSON.parse(
      run(
        'vault',
        'prove',
        'van-1',
        at('in/first.bin'),
        at('in/second.bin'),
        '--what',
        'body unit',
        '--json',
      ),
    )
    expect(proven.proven).toBe(true)
    run('job', 'import', 'van-1', at('in/arrival.log'), '--as', 'before', '--keep-sealed')
    const server = spawn(
      process.execPath,
      [join(root, 'apps/cli/bin/shearline.js'), 'serve', '--port', '0'],
      {
        env: { ...process.env, ...env },
      },
    )
    let logged = ''
    const ended = new Promise((resolve) => server.once('exit', resolve))
    const address = await new Promise<string>((resolve, reject) => {
      const hear = (piece: unknown) => {
        logged += String(piece)
        const found = /(http:\S+)\s/.exec(logged)?.[1]
        if (found !== undefined) resolve(found)
      }
      server.stdout.on('data', hear)
      server.stderr.on('data', hear)
      server.once('exit', () => reject(new Error(logged)))
    })
    try {
      const facts = await (await fetch(new URL('/api/jobs/van-1/facts', address))).text()
      expect(facts).toContain(proven.secret)
      said += facts
      const sealed = await (await fetch(new URL(`/api/blobs/${proven.secret}`, address))).bytes()
      expect(Buffer.from(sealed).subarray(0, 21).toString()).toBe('age-encryption.org/v1')
    } finally {
      server.kill('SIGTERM')
      await ended
    }
    const open = [
      'vault',
      'open',
      'van-1',
      proven.secret,
      '--identity',
      at('in/key.txt'),
      '--out',
      at('out/opened.bin'),
    ]
    expect(shearline([...open, '--reason', ' '], { env }).code).toBe(2)
    expect(existsSync(at('out/opened.bin'))).toBe(false)
    expect(JSON.parse(run(...open, '--reason', 'write it back', '--json'))).toMatchObject({
      bytes: 4096,
      asRecorded: true,
    })
    expect(readFileSync(at('out/opened.bin')).equals(secret)).toBe(true)
    expect(statSync(at('out/opened.bin')).mode & 0o077).toBe(0)
    expect(run('vault', 'list', 'van-1')).toContain('technician: write it back')
    run('job', 'export', 'van-1', '--bundle', at('data/b.zip'), '--with-secrets')

    writeFileSync(at('logs/said'), said + logged)
    const traces = [...tracesOf(secret), Buffer.from(identity)]
    for (const name of ['data', 'temp', 'logs']) expect(lookFor(traces, at(name)).found, name).toEqual([])
    // The recording's own frames, with the bytes of security services in them, stand nowhere in the clear either.
    const frame = Buffer.from(recording.split('\n').slice(0, 3).join('\n'))
    expect(lookFor([frame], at('data')).found).toEqual([])
    // The same search finds what is there.
    expect(lookFor(traces, at('in')).found).toHaveLength(3)
    expect(lookFor([frame], at('in')).found).toHaveLength(1)
  })

  it.skipIf(process.platform !== 'linux')(
    'stays out of a core file: a command of the vault takes its memory out of it',
    () => {
      const script = `import('${join(root, 'apps/cli/dist/vault/files.js')}').then(({ leaveNoCore }) => {
        leaveNoCore()
        process.stdout.write(require('node:fs').readFileSync('/proc/self/coredump_filter', 'utf8'))
      })`
      const ran = spawnSync(process.execPath, ['-e', script], { encoding: 'utf8' })
      expect([ran.stdout.trim(), ran.stderr]).toEqual(['00000000', ''])
    },
  )
})
