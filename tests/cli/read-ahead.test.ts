/** @module A recording is read ahead of what is being decoded; nothing is lost, doubled or out of order. */

import { appendFileSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, describe, expect, it } from 'vitest'
import { recordingPieces } from '../../apps/cli/src/output/input.ts'

const folder = mkdtempSync(join(tmpdir(), 'shearline-ahead-'))
afterAll(() => rmSync(folder, { recursive: true }))
const file = join(folder, 'recording.log')

const ROOM = 64
const bytes = (length: number) =>
  Uint8Array.from({ length }, (_, index) => (index * 31 + (index >> 6)) & 0xff)

async function readWhole(rooms: number, whileReading = () => {}): Promise<{ read: Buffer; counted: number }> {
  const pieces: Buffer[] = []
  let counted = 0
  const places = Array.from({ length: rooms }, () => new Uint8Array(ROOM))
  for await (const piece of recordingPieces(file, 1, places, (one) => {
    counted += one.length
  })) {
    // A copy: the place is filled anew afterwards.
    pieces.push(Buffer.from(piece))
    whileReading()
  }
  return { read: Buffer.concat(pieces), counted }
}

describe.each([2, 3, 5])('with %i places to read into', (rooms) => {
  it.each([0, 1, ROOM - 1, ROOM, ROOM + 1, 5 * ROOM, 17 * ROOM + 3])(
    'reads all of %i bytes',
    async (length) => {
      writeFileSync(file, bytes(length))
      const { read, counted } = await readWhole(rooms)
      expect(read.equals(bytes(length))).toBe(true)
      expect(counted).toBe(length)
    },
  )

  it('goes on where a file grew while it was read, though reads behind its end were asked for', async () => {
    writeFileSync(file, bytes(100))
    let times = 0
    const { read } = await readWhole(rooms, () => {
      if (times++ === 0) appendFileSync(file, bytes(500).subarray(100))
    })
    // What the end was when it was come to decides; what was read is the beginning without a gap.
    expect(read.length).toBeGreaterThanOrEqual(100)
    expect(read.equals(bytes(500).subarray(0, read.length))).toBe(true)
  })
})

it('says what is wrong with a file that cannot be read', async () => {
  rmSync(file)
  await expect(readWhole(2)).rejects.toThrow('recording.log does not exist. Check the name and the folder.')
  await expect(
    (async () => {
      for await (const _ of recordingPieces(folder, 1)) throw new Error('a folder was read')
    })(),
  ).rejects.toThrow('could not be read')
})
