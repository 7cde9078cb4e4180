import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import { describe, expect, it } from 'vitest'
import { captures, lines, root, shearline } from '../support/shearline.ts'

interface Line {
  time: string
  id: string
  payload: string
  complete: boolean
  protocol: string
  service: string
  kind: string
}

const secretSession =
  '(1.000000) can0 7E0#0227010000000000\n(1.010000) can0 7E8#066701DEADBEEF00\n(1.020000) can0 7E0#062702CAFEBABE00\n(1.030000) can0 7E8#0267020000000000\n'

describe('shearline decode', () => {
  it('writes one object a message with the fields of the contract, from standard input too', () => {
    const ran = shearline(['decode', '-', '--json'], { input: secretSession })
    expect(ran.code).toBe(0)
    const messages = lines<Line>(ran.out)
    expect(
      messages.map(({ time, id, complete, protocol, service, kind }) => [
        time,
        id,
        complete,
        protocol,
        service,
        kind,
      ]),
    ).toEqual([
      ['1.000000', '7E0', true, 'uds', '27', 'request'],
      ['1.010000', '7E8', true, 'uds', '27', 'response'],
      ['1.020000', '7E0', true, 'uds', '27', 'request'],
      ['1.030000', '7E8', true, 'uds', '27', 'response'],
    ])
  })

  it('hides seeds and keys unless raw is asked for', () => {
    const hidden = shearline(['decode', '-', '--json'], { input: secretSession })
    expect(lines<Line>(hidden.out).map((line) => line.payload)).toEqual([
      '2701',
      '6701xxxxxxxx',
      '2702xxxxxxxx',
      '6702',
    ])
    expect((hidden.out + hidden.err).toLowerCase()).not.toMatch(/deadbeef|cafebabe/)
    const raw = shearline(['decode', '-', '--json', '--raw'], { input: secretSession })
    expect(lines<Line>(raw.out).map((line) => line.payload)).toEqual([
      '2701',
      '6701deadbeef',
      '2702cafebabe',
      '6702',
    ])
  })

  it('answers 2 for a file that is no recording, does not exist, or is empty, and says what to do', () => {
    for (const file of [join(root, 'LICENSE'), join(root, 'no-such-file'), '/dev/null', root]) {
      const ran = shearline(['decode', file, '--json'])
      expect([file, ran.code, ran.out]).toEqual([file, 2, ''])
      expect(ran.err).toMatch(/shearline: .+\. [A-Z]/)
    }
  })

  it.skipIf(captures === null)(
    'reports every bad line by number and decodes the rest (../shared/captures)',
    () => {
      const ran = shearline(['decode', join(captures ?? '', '20_bad_lines.log'), '--summary', '--json'])
      expect(ran.code).toBe(0)
      for (const line of [6, 10, 13, 16, 19, 22, 25, 28, 31, 34, 41])
        expect(ran.err).toContain(`line ${line}:`)
      expect(JSON.parse(ran.out)).toMatchObject({
        messages: 30,
        incomplete: 0,
        negative: 0,
        pending: 0,
        dtcRecords: 0,
      })
    },
  )

  it.skipIf(captures === null)(
    'gives the messages that tshark and scapy agree on, in every recording (../shared/captures)',
    () => {
      const names = [
        '01_can11_obd_uds_kwp_scan.log',
        '03_can11_uds22_multi_dir.log',
        '05_can11_uds_rsponly_nofc.log',
        '06_can29_plain150k_uds.log',
        '10_can11_uds_scan_be.pcap',
        '10_can11_uds_scan_be.pcapng',
        '11_can_mixed_uudt_be.pcap',
        '17_trunc_can.pcap',
        '19_can11_obd01_physical_cut.log',
      ]
      for (const name of names) {
        // Expected messages: tshark 4.0.17 and scapy, as stated in each file of ../shared/captures/expected.
        const expected = JSON.parse(
          readFileSync(
            join(captures ?? '', '..', 'expected', `${name.replace(/\.pcapng$/, '.pcap')}.json`),
            'utf8',
          ),
        ) as { messages: { id: string; payload: string }[] }
        const ran = shearline(['decode', join(captures ?? '', name), '--json', '--raw'])
        const ours = lines<Line>(ran.out)
          .filter((line) => line.complete)
          .map((line) => `${line.id} ${line.payload}`)
        expect(ours.sort(), name).toEqual(
          expected.messages.map((message) => `${message.id} ${message.payload}`).sort(),
        )
      }
    },
  )
})

describe('shearline scans', () => {
  it('lists unit, time and faults with their status', () => {
    const recording = '(5.000000) can0 7E0#031902FF00000000\n(5.010000) can0 7E8#075902FF05130009\n'
    const ran = shearline(['scans', '-', '--json'], { input: recording })
    expect(JSON.parse(ran.out)).toMatchObject([
      { unit: '7E8', time: '5.010000', faults: [{ code: 'P0513-00', raw: '051300', status: 9 }] },
    ])
  })
})

describe('shearline vin', () => {
  it('answers 0 for a well-formed VIN and 1 for one that is not', () => {
    // Worked example with check digit X: public encyclopaedia, also in ../shared/reference/vin_examples.tsv.
    const good = shearline(['vin', '1M8GDM9AXKP042788', '--json'])
    expect(good.code).toBe(0)
    expect(JSON.parse(good.out)).toMatchObject({
      vin: '1M8GDM9AXKP042788',
      wellFormed: true,
      checkDigit: { expected: 'X', found: 'X', ok: true },
    })
    expect(shearline(['vin', '1M8GDM9AXKP04278', '--json']).code).toBe(1)
  })

  it('lets the check digit decide only where the market requires it', () => {
    const wrong = '1M8GDM9A1KP042788'
    expect(shearline(['vin', wrong, '--json']).code).toBe(0)
    expect(shearline(['vin', wrong, '--json', '--market', 'na']).code).toBe(1)
  })
})

describe('the command line', () => {
  it('answers 2 for words it does not know and 0 for help', () => {
    expect(shearline(['no-such-verb']).code).toBe(2)
    expect(shearline(['vin']).code).toBe(2)
    for (const verb of ['decode', 'scans', 'vin', 'job', 'verify', 'demo', 'serve']) {
      const ran = shearline([verb, '--help'])
      expect([verb, ran.code]).toEqual([verb, 0])
    }
  })
})
