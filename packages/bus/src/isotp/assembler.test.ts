/**
 * @module Reassembly rules of ISO 15765-2:2016, clause 9 (numbers in the titles are ours).
 *
 * Byte values are written by hand from the standard's tables of protocol control information, as listed in the
 * public documentation `can.rst` of mdabrowski1990/uds.
 */

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { at, frame } from '../decode/testing/decode.ts'
import type { Finding } from '../finding/index.ts'
import { type CanFrame, keepTime, keepWhere } from '../frame/index.ts'
import type { Assembled } from './assembled.ts'
import { Assembler, MOST_MESSAGE_BYTES } from './assembler.ts'
import { type Addressing, type Lane, newLane } from './lane.ts'
import { continueToSend, type SegmentChoices, segment } from './segment.ts'

const hex = (bytes: Uint8Array): string => Buffer.from(bytes).toString('hex')

/** A copy that may be kept: what an assembler tells is written over by the next message. */
function kept(message: Assembled) {
  const { bytes, start, length, startTime, time, where } = message
  const payload = bytes.slice(start, start + length)
  return {
    ...message,
    payload,
    startTime: keepTime(startTime),
    time: keepTime(time),
    where: keepWhere(where),
  }
}

/** Feeds frames to one assembler, a lane per identifier; peers are eight apart. */
function assemble(frames: readonly CanFrame[], addressing: Addressing = 'normal') {
  const messages: ReturnType<typeof kept>[] = []
  const findings: Finding[] = []
  const lanes = new Map<number, Lane>()
  const assembler = new Assembler({
    assembled: (message) => messages.push(kept(message)),
    odd: (_, finding) => findings.push(finding),
    peerOf: (lane) => lanes.get(lane.canId ^ 8),
  })
  for (const one of frames) {
    const lane =
      lanes.get(one.id) ??
      newLane('can0', one.id, one.extended, addressing, one.id.toString(16).toUpperCase())
    lanes.set(one.id, lane)
    assembler.frame(lane, one)
  }
  assembler.end()
  return {
    lines: messages.map(
      (m) => `${m.lane.id} ${hex(m.payload)}${m.incomplete === undefined ? '' : ` !${m.incomplete}`}`,
    ),
    codes: findings.map((finding) => finding.code),
    findings,
    messages,
  }
}

/** `7E8 1014...` per frame, one every 10 ms. */
function play(...lines: readonly string[]): readonly CanFrame[] {
  return lines.map((line, index) => {
    const [id, data] = line.split(' ') as [string, string]
    return frame(index * 10, Number.parseInt(id, 16), data, index + 1)
  })
}

describe('single frames', () => {
  it('ISO-01 a single frame is a message of its stated length, whatever the padding', () => {
    expect(assemble(play('7E8 0241005555555555', '7E8 0143AAAAAAAAAAAA', '7E8 037F1031')).lines).toEqual([
      '7E8 4100',
      '7E8 43',
      '7E8 7f1031',
    ])
  })

  it('ISO-02 a length of zero, or more than the frame holds, is malformed', () => {
    const { lines, codes, findings } = assemble(
      play('7E8 0041000000000000', '7E8 0541', '7E8 0841000000000000'),
    )
    expect(lines).toEqual([])
    expect(codes).toEqual(['isotp-malformed', 'isotp-malformed', 'isotp-malformed'])
    expect(findings.map((finding) => finding.where.line)).toEqual([1, 2, 3])
  })

  it('ISO-03 on CAN FD a frame of more than 8 bytes states its length in the second byte', () => {
    const long = `000A${'62F19001020304050607'}`
    expect(assemble([frame(0, 0x7e8, long)]).lines).toEqual(['7E8 62f19001020304050607'])
    expect(assemble([frame(0, 0x7e8, `05${'11'.repeat(11)}`)]).codes).toEqual(['isotp-malformed'])
  })

  it('ISO-04 frame types 4 to F are reserved, and an empty frame is none', () => {
    expect(assemble(play('7E8 4041000000000000', '7E8 F0', '7E8 ')).codes).toEqual(
      Array(3).fill('isotp-malformed'),
    )
  })
})

describe('segmented messages', () => {
  const VIN = ['7E8 1014490201303030', '7E8 2130303030303030', '7E8 2230303030303030']

  it('ISO-10 first and consecutive frames make one message, dated by its last frame', () => {
    const { lines, messages, codes } = assemble(
      play(VIN[0] as string, '7E0 3000000000000000', ...VIN.slice(1)),
    )
    expect(lines).toEqual([`7E8 490201${'30'.repeat(17)}`])
    expect(messages[0]?.time).toEqual(at(30))
    expect(messages[0]?.startTime).toEqual(at(0))
    expect(codes).toEqual([])
  })

  it('ISO-11 the sequence number wraps from F to 0', () => {
    const payload = Uint8Array.from({ length: 200 }, (_, index) => index)
    const frames = segment(payload).map((data, index) => frame(index, 0x7e8, hex(data)))
    expect(assemble(frames).lines).toEqual([`7E8 ${hex(payload)}`])
  })

  it('ISO-12 a missing consecutive frame breaks the transfer off; what follows is told, not accepted', () => {
    const { lines, codes, findings } = assemble(play(VIN[0] as string, VIN[2] as string))
    expect(lines).toEqual(['7E8 490201303030 !sequence-missing'])
    expect(codes).toEqual(['isotp-sequence-missing'])
    expect(findings[0]?.params).toMatchObject({ expected: 1, found: 2, received: 6, length: 20 })
  })

  it('ISO-13 a repeated consecutive frame breaks the transfer off', () => {
    const { lines, codes } = assemble(
      play(VIN[0] as string, VIN[1] as string, VIN[1] as string, VIN[2] as string),
    )
    expect(lines).toEqual([`7E8 490201${'30'.repeat(10)} !sequence-repeated`])
    expect(codes).toEqual(['isotp-sequence-repeated', 'isotp-consecutive-without-first'])
  })

  it('ISO-14 consecutive frames out of order break the transfer off', () => {
    const { lines } = assemble(play('7E8 101A000000000000', '7E8 2200000000000000', '7E8 2100000000000000'))
    expect(lines).toEqual(['7E8 000000000000 !sequence-missing'])
  })

  it('ISO-15 a new first frame, or a single frame, breaks off the transfer under way', () => {
    expect(assemble(play(VIN[0] as string, ...VIN)).lines).toEqual([
      '7E8 490201303030 !new-transfer',
      `7E8 490201${'30'.repeat(17)}`,
    ])
    expect(assemble(play(VIN[0] as string, '7E8 0143')).lines).toEqual([
      '7E8 490201303030 !new-transfer',
      '7E8 43',
    ])
  })

  it('ISO-16 a transfer cut by the end of the recording is incomplete', () => {
    expect(assemble(play(...VIN.slice(0, 2))).lines).toEqual([
      `7E8 490201${'30'.repeat(10)} !recording-ended`,
    ])
  })

  it('ISO-17 a consecutive frame without a first frame is told and belongs to nothing', () => {
    const { lines, codes } = assemble(play('7E8 2130303030303030'))
    expect(lines).toEqual([])
    expect(codes).toEqual(['isotp-consecutive-without-first'])
  })

  it('ISO-18 the last consecutive frame may be short, another may not', () => {
    expect(assemble(play('7E8 100A112233445566', '7E8 21778899AA')).lines).toEqual([
      '7E8 112233445566778899aa',
    ])
    expect(assemble(play('7E8 1014112233445566', '7E8 217788', '7E8 2211')).lines).toEqual([
      '7E8 112233445566 !short-frame',
    ])
  })

  it('ISO-19 a first frame must be full and announce more than a single frame holds', () => {
    expect(assemble(play('7E8 1014112233', '7E8 1007112233445566', '7E8 1000000000FF1122')).codes).toEqual(
      Array(3).fill('isotp-malformed'),
    )
  })

  it('ISO-20 transfers of several identifiers interleave', () => {
    const { lines } = assemble(
      play(
        '7EC 1008112233445566',
        '7ED 1008665544332211',
        '7E5 300000',
        '7E4 300000',
        '7ED 217788',
        '7EC 218877',
      ),
    )
    expect(lines).toEqual(['7ED 6655443322117788', '7EC 1122334455668877'])
  })

  it('ISO-21 a length above 4095 is stated in 32 bits', () => {
    const payload = Uint8Array.from({ length: 5000 }, (_, index) => index & 255)
    const frames = segment(payload).map((data, index) => frame(index, 0x7e8, hex(data)))
    expect(hex(frames[0]?.data.subarray(0, 6) as Uint8Array)).toBe('100000001388')
    expect(assemble(frames).lines).toEqual([`7E8 ${hex(payload)}`])
  })

  it('ISO-22 a length no message has is refused without taking memory for it', () => {
    expect(MOST_MESSAGE_BYTES).toBeLessThan(0xffffffff)
    const { lines, codes } = assemble(play('7E8 1000FFFFFFFF1122', '7E8 2100000000000000'))
    expect(lines).toEqual(['7E8 1122 !too-long'])
    expect(codes).toEqual(['isotp-too-long', 'isotp-consecutive-without-first'])
  })
})

describe('flow control', () => {
  const FIRST = '7E8 1008112233445566'
  const LAST = '7E8 217788'

  it('ISO-30 wait, then continue: the message is whole', () => {
    expect(assemble(play(FIRST, '7E0 310000', '7E0 310000', '7E0 300000', LAST))).toMatchObject({
      lines: ['7E8 1122334455667788'],
      codes: [],
    })
  })

  it('ISO-31 overflow: the sender had to break off', () => {
    expect(assemble(play(FIRST, '7E0 320000'))).toMatchObject({
      lines: ['7E8 112233445566 !overflow'],
      codes: ['isotp-overflow'],
    })
    expect(assemble(play(FIRST, '7E0 320000', LAST))).toMatchObject({
      lines: ['7E8 1122334455667788'],
      codes: ['isotp-overflow-ignored'],
    })
  })

  it('ISO-32 a flow control without its first frame, or sent again, is noted and changes nothing', () => {
    expect(assemble(play('7E0 300000')).codes).toEqual(['isotp-flow-control-alone'])
    expect(assemble(play(FIRST, '7E0 300000', '7E0 300000', LAST))).toMatchObject({
      lines: ['7E8 1122334455667788'],
      codes: ['isotp-flow-control-repeated'],
    })
  })

  it('ISO-33 a missing flow control is no fault of the message', () => {
    expect(assemble(play(FIRST, LAST)).codes).toEqual([])
  })

  it('ISO-34 a short flow control and one with a reserved status are told', () => {
    expect(assemble(play(FIRST, '7E0 30', '7E0 3F0000', LAST)).codes).toEqual([
      'isotp-malformed',
      'isotp-flow-status-reserved',
    ])
  })
})

describe('N_Cr, the longest pause before a consecutive frame', () => {
  const play2 = (gap: number, decimals: number): Assembled | undefined => {
    const frames = [frame(0, 0x7e8, '1008112233445566'), frame(gap, 0x7e8, '217788')]
    return assemble(frames.map((one) => ({ ...one, time: { ...one.time, decimals } }))).messages[0]
  }

  it('ISO-40 a pause up to 1000 ms is none', () => {
    expect(play2(1000, 6)?.late).toBeUndefined()
  })

  it('ISO-41 a longer pause is marked, with what had come before it', () => {
    expect(play2(1001, 6)?.late).toMatchObject({ received: 6, gap: 1.001 })
  })

  it('ISO-42 a coarse clock is given the benefit of its last digit', () => {
    expect(play2(1015, 2)?.late).toBeUndefined()
    expect(play2(1900, 0)?.late).toBeUndefined()
    expect(play2(1900, 1)?.late).toBeDefined()
  })

  it('ISO-43 a flow control starts the wait anew', () => {
    const frames = [
      frame(0, 0x7e8, '1008112233445566'),
      frame(900, 0x7e0, '310000'),
      frame(1800, 0x7e0, '300000'),
      frame(2700, 0x7e8, '217788'),
    ]
    expect(assemble(frames).messages[0]?.late).toBeUndefined()
  })
})

describe('extended and mixed addressing', () => {
  it('ISO-50 the first data byte is part of the address', () => {
    const { lines } = assemble(play('6F1 1210081122334455', '6F1 1221667788'), 'extended')
    expect(lines).toEqual(['6F1 1122334455667788'])
    expect(assemble(play('6F1 1207112233445566'), 'extended').codes).toEqual(['isotp-malformed'])
  })
})

describe('segmenting and assembling', () => {
  const sizes = [8, 8, 8, 12, 16, 20, 24, 32, 48, 64] as const
  const choices: fc.Arbitrary<SegmentChoices> = fc.record(
    {
      frameBytes: fc.constantFrom(...sizes),
      padding: fc.constantFrom(0x00, 0x55, 0xaa, 0xcc, 0xff),
      address: fc.integer({ min: 0, max: 255 }),
    },
    { requiredKeys: [] },
  )

  it('ISO-60 gives back any message at any padding, frame size and addressing', () => {
    fc.assert(
      fc.property(fc.uint8Array({ minLength: 1, maxLength: 6000, size: 'max' }), choices, (payload, how) => {
        const frames = segment(payload, how).map((data, index) => ({ ...frame(index, 0x7e8, ''), data }))
        const addressing = how.address === undefined ? 'normal' : 'extended'
        expect(assemble(frames, addressing)).toMatchObject({ lines: [`7E8 ${hex(payload)}`], codes: [] })
      }),
      { numRuns: 200 },
    )
  })

  it('ISO-61 keeps any number of interleaved messages apart, with flow control anywhere between', () => {
    fc.assert(
      fc.property(
        fc.array(fc.uint8Array({ minLength: 1, maxLength: 80 }), { minLength: 1, maxLength: 6 }),
        fc.infiniteStream(fc.nat()),
        (payloads, choose) => {
          const queues = payloads.map((payload, index) =>
            segment(payload, { padding: 0xcc }).map((data) => ({
              ...frame(0, 0x708 + index * 16, ''),
              data,
            })),
          )
          const frames: CanFrame[] = []
          const order: number[] = []
          while (queues.some((queue) => queue.length > 0)) {
            const open = queues.filter((queue) => queue.length > 0)
            const queue = open[(choose.next().value as number) % open.length] as CanFrame[]
            const next = queue.shift() as CanFrame
            frames.push(next)
            if ((next.data[0] as number) >> 4 === 1) {
              frames.push({ ...frame(0, next.id ^ 8, ''), data: continueToSend(0, 0, { padding: 0xcc }) })
            }
            if (queue.length === 0) order.push((next.id - 0x708) / 16)
          }
          expect(assemble(frames)).toMatchObject({
            lines: order.map(
              (index) => `${(0x708 + index * 16).toString(16)} ${hex(payloads[index] as Uint8Array)}`,
            ),
            codes: [],
          })
        },
      ),
      { numRuns: 150 },
    )
  })

  it('ISO-62 never accepts a message from which one consecutive frame was taken, doubled or swapped', () => {
    fc.assert(
      fc.property(
        fc.uint8Array({ minLength: 30, maxLength: 300 }),
        fc.nat(),
        fc.constantFrom('take', 'double', 'swap'),
        (payload, where, damage) => {
          const whole = segment(payload).map((data, index) => ({ ...frame(index, 0x7e8, ''), data }))
          const index = 1 + (where % (whole.length - 2))
          const damaged = [...whole]
          const [one, two] = whole.slice(index, index + 2) as [CanFrame, CanFrame]
          if (damage === 'take') damaged.splice(index, 1)
          else if (damage === 'double') damaged.splice(index, 0, one)
          else damaged.splice(index, 2, two, one)
          const { messages, codes } = assemble(damaged)
          expect(messages.every((message) => message.incomplete !== undefined)).toBe(true)
          expect(codes.length).toBeGreaterThan(0)
        },
      ),
    )
  })
})
