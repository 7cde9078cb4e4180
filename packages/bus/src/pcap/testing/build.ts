/** @module Builds pcap and pcapng bytes for tests, after draft-ietf-opsawg-pcap and -pcapng. */

export interface Order {
  readonly littleEndian: boolean
}

function numbers(
  littleEndian: boolean,
  parts: readonly (readonly [bits: 16 | 32, value: number])[],
): Uint8Array {
  const view = new DataView(new ArrayBuffer(parts.reduce((size, [bits]) => size + bits / 8, 0)))
  let at = 0
  for (const [bits, value] of parts) {
    if (bits === 16) view.setUint16(at, value, littleEndian)
    else view.setUint32(at, value >>> 0, littleEndian)
    at += bits / 8
  }
  return new Uint8Array(view.buffer)
}

export function joined(...parts: readonly (Uint8Array | readonly number[])[]): Uint8Array {
  return Uint8Array.from(parts.flatMap((part) => [...part]))
}

/** A SocketCAN frame of link type 227. */
export function socketCan(
  id: number,
  data: readonly number[],
  choices: { fd?: boolean; swapped?: boolean } = {},
): Uint8Array {
  const word = numbers(choices.swapped === true, [[32, id > 0x7ff ? id + 0x8000_0000 : id]])
  return joined(word, [data.length, choices.fd ? 4 : 0, 0, 0], data)
}

/** A cooked (SLL) packet around a frame. */
export function sll(protocol: number, frame: Uint8Array): Uint8Array {
  return joined([0, 1, 1, 24, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, protocol >> 8, protocol & 255], frame)
}

/** An SLL2 packet around a frame, from the interface of that index. */
export function sll2(protocol: number, index: number, frame: Uint8Array): Uint8Array {
  return joined(
    [protocol >> 8, protocol & 255, 0, 0, 0, 0, 0, index, 1, 24, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0],
    frame,
  )
}

export interface PcapPacket {
  readonly seconds: number
  readonly fraction: number
  readonly data: Uint8Array
}

export function pcap(
  packets: readonly PcapPacket[],
  choices: Order & { readonly linkType: number; readonly nanoseconds?: boolean },
): Uint8Array {
  const magic = choices.nanoseconds ? 0xa1b23c4d : 0xa1b2c3d4
  const header = numbers(choices.littleEndian, [
    [32, magic],
    [16, 2],
    [16, 4],
    [32, 0],
    [32, 0],
    [32, 65535],
    [32, choices.linkType],
  ])
  const records = packets.map(({ seconds, fraction, data }) =>
    joined(
      numbers(choices.littleEndian, [
        [32, seconds],
        [32, fraction],
        [32, data.length],
        [32, data.length],
      ]),
      data,
    ),
  )
  return joined(header, ...records)
}

/** A pcapng block; the body is padded to four bytes. */
export function block(type: number, body: Uint8Array, { littleEndian }: Order): Uint8Array {
  const padded = joined(body, new Array<number>((4 - (body.length % 4)) % 4).fill(0))
  const length = numbers(littleEndian, [[32, padded.length + 12]])
  return joined(numbers(littleEndian, [[32, type]]), length, padded, length)
}

export function sectionHeader(order: Order): Uint8Array {
  return block(
    0x0a0d0d0a,
    numbers(order.littleEndian, [
      [32, 0x1a2b3c4d],
      [16, 1],
      [16, 0],
      [32, 0xffffffff],
      [32, 0xffffffff],
    ]),
    order,
  )
}

export function interfaceDescription(
  linkType: number,
  order: Order & { readonly name?: string; readonly resolution?: number; readonly offset?: number },
): Uint8Array {
  const option = (code: number, value: readonly number[]): Uint8Array =>
    joined(
      numbers(order.littleEndian, [
        [16, code],
        [16, value.length],
      ]),
      value,
      new Array<number>((4 - (value.length % 4)) % 4).fill(0),
    )
  const options: Uint8Array[] = []
  if (order.name !== undefined) options.push(option(2, [...Buffer.from(order.name)]))
  if (order.resolution !== undefined) options.push(option(9, [order.resolution]))
  if (order.offset !== undefined) {
    const value = Buffer.alloc(8)
    if (order.littleEndian) value.writeBigInt64LE(BigInt(order.offset))
    else value.writeBigInt64BE(BigInt(order.offset))
    options.push(option(14, [...value]))
  }
  const head = numbers(order.littleEndian, [
    [16, linkType],
    [16, 0],
    [32, 0],
  ])
  return block(1, joined(head, ...options, ...(options.length > 0 ? [[0, 0, 0, 0]] : [])), order)
}

/** An enhanced packet block; `options` stand behind data of whole words. */
export function enhancedPacket(
  index: number,
  ticks: bigint,
  data: Uint8Array,
  order: Order,
  options: readonly number[] = [],
): Uint8Array {
  const head = numbers(order.littleEndian, [
    [32, index],
    [32, Number(ticks >> 32n)],
    [32, Number(ticks & 0xffffffffn)],
    [32, data.length],
    [32, data.length],
  ])
  return block(6, joined(head, data, options), order)
}
