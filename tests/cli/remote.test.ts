/** @module Two remotes by the real command, one of them recorded live by a command that stands in for a receiver. */

import { spawn } from 'node:child_process'
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { root, shearline } from '../support/shearline.ts'

const radio = join(root, '..', 'shared', 'radio', 'files')
const present = existsSync(radio)
const why = present ? '' : ' [skipped: no recordings at ../shared/radio/files]'

const folder = mkdtempSync(join(tmpdir(), 'shearline-remote-'))
afterAll(() => rmSync(folder, { recursive: true, force: true, maxRetries: 5 }))
/** Where the command puts what it records; nothing may be left in it. */
const temporary = join(folder, 'temporary')
mkdirSync(temporary)
const env = { TMPDIR: temporary }

// A receiver for the tests: gives back a recording made earlier, and notes what it was asked for.
const receiver = join(folder, 'receiver.sh')
writeFileSync(
  receiver,
  `#!/bin/sh
echo "$@" >> "${folder}/asked"
case "$1" in
  once) cp "$2" "$3" ;;
  for-ever) cp "$2" "$3"; echo $$ > "${folder}/pid"; while :; do sleep 1; done ;;
  deaf) trap '' TERM; cp "$2" "$3"; echo $$ > "${folder}/pid"; while :; do sleep 1; done ;;
  silent) : ;;
  broken) echo "no receiver found" >&2; exit 3 ;;
esac
`,
)
const recorded = (name: string) => join(radio, name)
const remoteB = 'car-remote-b-1_433.92M_250k.cu8'
const setting = ['--rate', '250e3', '--centre', '433.92e6']
const command = (how: string, name: string) =>
  `/bin/sh '${receiver}' ${how} "${recorded(name)}" {file} {rate} {centre}`

/** Recordings still there; Node keeps its compiled code in the same place. */
const left = () => readdirSync(temporary).filter((name) => name.startsWith('shearline'))

function alive(): boolean {
  try {
    process.kill(Number(readFileSync(join(folder, 'pid'), 'utf8')), 0)
    return true
  } catch {
    return false
  }
}

describe.skipIf(!present)(`shearline remote with a live recording${why}`, () => {
  it('compares it with a recording on the disk, and deletes it', () => {
    const ran = shearline(
      [
        'remote',
        recorded('car-remote-b-2_433.92M_250k.cu8'),
        'live',
        '--json',
        ...setting,
        '--capture',
        command('once', remoteB),
      ],
      { env },
    )
    expect(ran.err).toContain('Hold a button of the new remote')
    // The same remote pressed twice (truth column of ../shared/radio/MANIFEST.tsv).
    expect(JSON.parse(ran.out)).toMatchObject({ verdict: 'same', new: { modulation: 'OOK' } })
    expect(ran.code).toBe(0)
    expect(readFileSync(join(folder, 'asked'), 'utf8')).toMatch(/capture\.cu8 250000 433920000\n$/)
    expect(left()).toEqual([])
  })

  it('takes both live, with the command from the environment, and says different for different remotes', () => {
    const turns = join(folder, 'turns.sh')
    writeFileSync(
      turns,
      `if [ -e '${folder}/second' ]; then cp '${recorded('car-remote-a-1_433.92M_250k.cu8')}' "$1"
else : > '${folder}/second'; cp '${recorded(remoteB)}' "$1"; fi\n`,
    )
    const ran = shearline(['remote', 'live', 'live', '--json', ...setting], {
      env: { ...env, SHEARLINE_CAPTURE: `sh ${turns} {file}` },
    })
    // OOK against 2-FSK (MANIFEST.tsv).
    expect(JSON.parse(ran.out)).toMatchObject({ verdict: 'different' })
    expect(ran.code).toBe(1)
    expect(left()).toEqual([])
  })

  it.each(['for-ever', 'deaf'])(
    'ends a receiver that runs on (%s) and measures what it has written',
    (how) => {
      const ran = shearline(
        ['remote', 'live', '--json', ...setting, '--seconds', '1', '--capture', command(how, remoteB)],
        { env },
      )
      expect(JSON.parse(ran.out)).toMatchObject({ modulation: 'OOK' })
      expect(alive()).toBe(false)
      expect(left()).toEqual([])
    },
  )

  it.each([
    ['broken', 'ended with 3: no receiver found'],
    ['silent', 'The receiver wrote nothing'],
  ])('says what is wrong when the receiver is %s, and leaves nothing', (how, words) => {
    const ran = shearline(['remote', 'live', ...setting, '--capture', command(how, remoteB)], { env })
    expect([ran.code, ran.out]).toEqual([2, ''])
    expect(ran.err).toContain(words)
    expect(left()).toEqual([])
  })

  it('leaves neither file nor receiver behind when it is interrupted', async () => {
    rmSync(join(folder, 'pid'), { force: true })
    const bin = join(root, 'apps', 'cli', 'bin', 'shearline.js')
    const args = ['remote', 'live', ...setting, '--seconds', '60', '--capture', command('for-ever', remoteB)]
    const child = spawn(process.execPath, [bin, ...args], {
      env: { ...process.env, ...env },
      stdio: 'ignore',
    })
    const ended = new Promise<number | null>((resolve) => child.once('exit', resolve))
    await expect.poll(() => existsSync(join(folder, 'pid'))).toBe(true)
    expect(left()).toHaveLength(1)
    child.kill('SIGINT')
    expect(await ended).toBe(130)
    await expect.poll(alive).toBe(false)
    expect(left()).toEqual([])
  })
})

describe('shearline remote live', () => {
  it.each([
    [['--capture', 'true {file}'], 'needs a sample rate and a centre'],
    [setting, 'No command to record with'],
    [[...setting, '--capture', 'true'], 'Put {file} into it'],
    [[...setting, '--capture', 'true "{file}'], 'Close the quote'],
    [[...setting, '--capture', '/no/such/program {file}'], 'could not be started'],
    [[...setting, '--capture', 'true {file}', '--seconds', 'long'], 'is no time to record'],
  ])('without what it needs (%j) says so', (flags, words) => {
    const ran = shearline(['remote', 'live', ...flags], { env })
    expect(ran.code).toBe(2)
    expect(ran.err).toContain(words)
  })
})
