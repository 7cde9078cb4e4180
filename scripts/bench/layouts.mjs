/** @module The first frames of a recording in the other layouts recorders write, made from its pcapng. */

import { existsSync, readFileSync, writeFileSync } from 'node:fs'

const HEADER_BYTES = 72
const BLOCK_BYTES = 48

/** Goes through the frames of a pcapng made by `writers.mjs`: nanoseconds, and the 16 bytes of the SocketCAN frame. */
function* framesOf(pcapng) {
  const bytes = readFileSync(pcapng)
  for (let at = HEADER_BYTES; at + BLOCK_BYTES <= bytes.length; at += BLOCK_BYTES) {
    const ticks = (BigInt(bytes.readUInt32LE(at + 12)) << 32n) | BigInt(bytes.readUInt32LE(at + 16))
    yield { ticks, frame: bytes.subarray(at + 28, at + 44) }
  }
}

function words(littleEndian, numbers) {
  const bytes = Buffer.alloc(numbers.length * 4)
  for (const [index, number] of numbers.entries()) {
    if (littleEndian) bytes.writeUInt32LE(number, index * 4)
    else bytes.writeUInt32BE(number, index * 4)
  }
  return bytes
}

/** SLL2 as tcpdump.org describes it: protocol CAN, interface 3, link type 280. */
const COOKED = Buffer.from('000c0000000000030118000000000000'.padEnd(40, '0'), 'hex')

function pcap(frames, littleEndian, cooked) {
  const [linkType, head] = cooked ? [276, COOKED] : [227, Buffer.alloc(0)]
  const parts = [
    words(littleEndian, [0xa1b2c3d4, littleEndian ? 0x00040002 : 0x00020004, 0, 0, 65535, linkType]),
  ]
  for (const { ticks, frame } of frames) {
    const micro = Number(ticks / 1000n)
    const length = head.length + frame.length
    const record = [Math.floor(micro / 1e6), micro % 1e6, length, length]
    parts.push(words(littleEndian, record), head, frame)
  }
  return Buffer.concat(parts)
}

function bigEndianPcapng(frames) {
  const parts = [
    words(false, [0x0a0d0d0a, 28, 0x1a2b3c4d, 0x00010000, 0xffffffff, 0xffffffff, 28]),
    words(false, [1, 20, 227 << 16, 0, 20]),
  ]
  for (const { ticks, frame } of frames) {
    const micro = ticks / 1000n
    const block = [6, 48, 0, Number(micro >> 32n), Number(micro & 0xffffffffn), 16, 16]
    parts.push(words(false, block), frame, words(false, [48]))
  }
  return Buffer.concat(parts)
}

/** Files in other layouts, made once beside the first lines and packets they hold. */
export function otherLayouts(text, pcapng) {
  const lines = () => readFileSync(text, 'latin1')
  const made = [
    ['text, lines that end with CR LF', 'crlf.log', () => lines().replaceAll('\n', '\r\n')],
    ['text, nanoseconds', 'nano.log', () => lines().replaceAll(') can0', '000) can0')],
    ['text, milliseconds', 'milli.log', () => lines().replace(/\d{3}\) can0/g, ') can0')],
    ['pcap, little-endian', 'le.pcap', () => pcap(framesOf(pcapng), true, false)],
    ['pcap, big-endian', 'be.pcap', () => pcap(framesOf(pcapng), false, false)],
    ['pcap, cooked (SLL2)', 'sll2.pcap', () => pcap(framesOf(pcapng), true, true)],
    ['pcapng, big-endian', 'be.pcapng', () => bigEndianPcapng(framesOf(pcapng))],
  ]
  return made.map(([what, ending, bytes]) => {
    const file = text.replace(/\.log$/, `-${ending}`)
    if (!existsSync(file)) writeFileSync(file, bytes())
    return { what, file }
  })
}
