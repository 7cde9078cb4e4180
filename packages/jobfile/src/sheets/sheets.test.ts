import { mkdirSync, writeFileSync } from 'node:fs'
import { beforeAll, describe, expect, it } from 'vitest'
import { printedTexts } from '../handover/document/index.ts'
import { HandoverRefused } from '../handover/index.ts'
import { PdfFile } from '../handover/pdf/file.ts'
import { printedPages } from '../handover/pdf/printed.ts'
import { present, run, skipNote } from '../handover/testing/files.ts'
import { bareJob, fact, fonts, fullJob, sealedJob, vanJob } from '../handover/testing/jobs.ts'
import { solid, solidText } from '../handover/text-hash.ts'
import type { JobRecord } from '../record/index.ts'
import {
  bringMessage,
  makeRegister,
  makeSheet,
  offeredSheets,
  plainRegister,
  readRegisterPack,
  registerCsv,
  registerJson,
  sheetNames,
  sheetText,
} from './index.ts'

const madeAt = '2026-01-12T10:00:00.000Z'
const basisOf = (record: JobRecord) => ({ record, language: 'en', madeAt })

let bare: JobRecord
let van: JobRecord
let full: JobRecord
let called: JobRecord

beforeAll(async () => {
  bare = (await sealedJob(bareJob())).record
  van = (await sealedJob(vanJob())).record
  full = (await sealedJob(fullJob())).record
  const call = [
    ...bareJob(),
    fact(1, 'call-taken', { channel: 'phone', starts: false, keyless: null, toBring: ['the code card'] }),
    fact(2, 'appointment-made', {
      from: '2026-01-13T08:00:00.000Z',
      to: '2026-01-13T10:00:00.000Z',
      place: 'Quay street 4',
    }),
    fact(3, 'authority-decided', { decision: 'held', reason: 'The owner could not be reached.' }),
  ]
  called = (await sealedJob(call)).record
})

const textOf = (sheet: (typeof sheetNames)[number], record: JobRecord) =>
  printedTexts(sheetText(sheet, basisOf(record))).join('\n')

describe('which sheets there are for a job', () => {
  const ready = (record: JobRecord) =>
    offeredSheets(basisOf(record))
      .filter((offer) => offer.ready)
      .map((offer) => offer.sheet)

  it('follows from the record', () => {
    expect(ready(bare)).toEqual(['no-check', 'return-visit'])
    expect(ready(van)).toEqual(['absent-keys', 'insurer', 'return-visit'])
    expect(ready(called)).toEqual(['bring-this', 'no-check', 'refusal', 'return-visit'])
  })

  it('is said in one line each, also why one has nothing to say', () => {
    for (const record of [bare, van, full, called])
      for (const { preview, title } of offeredSheets(basisOf(record))) {
        expect(title.length).toBeGreaterThan(5)
        expect(preview.length).toBeGreaterThan(10)
        expect(preview).not.toMatch(/[{}]|undefined/)
      }
    const lines = offeredSheets(basisOf(called)).map(({ preview }) => preview)
    expect(lines[0]).toBe('For 13 January 2026, 08:00 to 10:00 (Europe/Lisbon), Quay street 4.')
    expect(lines).toContain('Held: The owner could not be reached.')
  })
})

describe('a sheet', () => {
  it('of consent names absent keys, what the rule does to them, and in whose name it is on record', () => {
    const text = textOf('absent-keys', van)
    expect(text).toContain('The work rewrites the list of keys that this car accepts.')
    expect(text).toContain('spare at the depot')
    expect(text).toContain('the blade of such a key may still open the doors')
    expect(text).not.toContain('grid above')
    // A name alone is no signature: the lines to sign on stay.
    expect(text).toContain('On record as agreed in the name of fleet manager; no signature for it')
    expect(text).toContain('Place and date')
  })

  it('of consent says who signed and how, when the record ties a signature to it', async () => {
    const consent = vanJob().find(({ kind }) => kind === 'consent-given')?.body as object
    const blob = 'ab'.repeat(32)
    const { record } = await sealedJob([
      ...vanJob(),
      fact(90, 'consent-given', { ...consent, signature: blob } as never),
      fact(90.1, 'signature-drawn', { signer: 'fleet manager', for: 'consent', blob, how: 'typed' }),
    ])
    const text = textOf('absent-keys', record)
    expect(text).toContain('On record as signed by fleet manager, name typed on a keyboard.')
    expect(text).not.toContain('Place and date')
  })

  it('states its making once, and its appointment in one place', () => {
    const text = textOf('bring-this', called)
    expect(text).toContain('Document made\n12 January 2026, 10:00 (Europe/Lisbon), from the record')
    expect(text).not.toContain('Quay street\n')
  })

  it('of consent treats a rule that is not known as the worst, and leaves lines to sign', () => {
    const text = textOf('absent-keys', bare)
    expect(text).toContain('How this car keeps its list is not known.')
    expect(text).toContain('Place and date')
    expect(text).not.toContain('On record as signed')
  })

  it('of refusal accuses nobody and says that no key was changed only when no session was opened', async () => {
    expect(textOf('refusal', called)).toContain('No teaching session was opened.')
    expect(textOf('refusal', called)).toContain('It accuses nobody of anything.')
    expect(textOf('refusal', van)).toContain('A teaching session was opened before this decision.')
    expect(textOf('refusal', called)).not.toMatch(/fraud|thief|stolen|suspect/i)
  })

  it('for an insurer says which keys were seen to start the car and what it cannot say', () => {
    const text = textOf('insurer', van)
    expect(text).toContain('Started the car before')
    expect(text).toContain('It cannot say whether further keys exist')
    expect(text).toContain('spare at the depot')
    expect(text).not.toContain('grid above')
    expect(text).toMatch(/^[1-9][0-9] tests on record are marked as done with the customer present\.$/m)
    expect(text).toContain('Handed over\nnot on record when this document was made')
    expect(textOf('insurer', bare)).toContain('No key is on record.')
  })

  it('for a return visit names what is open and the faults to look at again', () => {
    expect(textOf('return-visit', van)).toContain('Fault C0035-1F in brake control')
    expect(textOf('return-visit', called)).toContain('No key was seen to start it after the work.')
  })

  it('on what to bring comes as a message of plain text too', () => {
    expect(textOf('bring-this', called)).toContain('Also agreed: the code card')
    const message = bringMessage({ ...basisOf(called), firm: 'Harbour Keys' })
    expect(message).toMatch(/^Harbour Keys: key work on Estate car, grey, 13 January 2026/)
    expect(message).toContain('the document that shows you as keeper or owner.')
    expect(bringMessage(basisOf(called))).toMatch(/^Key work on Estate car/)
    expect(message).not.toMatch(/[{}\n]/)
    expect(bringMessage(basisOf(bare))).toContain('at a time still to be agreed, Quay street.')
  })

  it('never shows a whole document number, nor claims a seal', () => {
    for (const sheet of sheetNames) expect(textOf(sheet, van)).toContain('This sheet carries no seal.')
  })
})

describe('a sheet as a file', () => {
  it('is drawn for every kind of job, tagged, and prints what its text says', async () => {
    for (const [name, record] of Object.entries({ bare, van, full, called })) {
      for (const sheet of sheetNames) {
        const pdf = await makeSheet(sheet, basisOf(record), fonts)
        const pages = printedPages(PdfFile.open(pdf) as PdfFile)
        expect(solid(pages.map((page) => page?.content ?? '').join(''))).toBe(
          solidText(sheetText(sheet, basisOf(record))),
        )
        if (process.env.SHEARLINE_PAGES === undefined) continue
        mkdirSync(process.env.SHEARLINE_PAGES, { recursive: true })
        writeFileSync(`${process.env.SHEARLINE_PAGES}/sheet-${name}-${sheet}.pdf`, pdf)
      }
    }
  })

  it(`passes qpdf and is tagged PDF/A-3a for poppler${skipNote('qpdf', 'pdfinfo')}`, {
    skip: !present('qpdf') || !present('pdfinfo'),
  }, async () => {
    for (const sheet of sheetNames) {
      const pdf = await makeSheet(sheet, basisOf(van), fonts)
      expect(run('qpdf', ['--check', 'FILE'], pdf).status).toBe(0)
      expect(run('pdfinfo', ['FILE'], pdf).output).toMatch(/^Tagged: +yes$/m)
      expect(run('pdfinfo', ['-meta', 'FILE'], pdf).output).toContain('<pdfaid:part>3</pdfaid:part>')
      const rows = run('pdffonts', ['FILE'], pdf).output.trim().split('\n').slice(2)
      for (const row of rows) expect(row).toMatch(/Identity-H +yes yes yes/)
    }
  })

  it('is refused with a sentence when the instant is none', async () => {
    await expect(makeSheet('insurer', { ...basisOf(van), madeAt: 'today' }, fonts)).rejects.toThrow(
      HandoverRefused,
    )
  })
})

describe('the export for a register', () => {
  it('has a row for each job and says what a row lacks', () => {
    const register = makeRegister(plainRegister, [van, bare])
    expect(register.rows).toHaveLength(2)
    const lacking = register.lacking.map(({ job, column }) => `${job} ${column}`)
    expect(lacking).toContain('test-job vin')
    expect(register.lacking.filter(({ column }) => column === 'place')).toEqual([])
    const json = JSON.parse(registerJson(register)) as { rows: Record<string, unknown>[] }
    expect(json.rows[0]).toMatchObject({ vin: 'T6SHVN3A0R0042788', keys_new: 2, identity_ends_in: '418' })
    expect(json.rows[1]).toMatchObject({ vin: null, identity_seen: null })
  })

  it('is CSV that a spreadsheet reads and does not run', async () => {
    const odd = await sealedJob([
      fact(0, 'job-opened', {
        title: 'x',
        place: '=HYPERLINK("x")',
        zone: 'UTC',
        work: 'add-a-key',
        customer: 'private',
        vehicle: 'Van, "grey"\nlong',
      }),
    ])
    const text = registerCsv(makeRegister(plainRegister, [odd.record]))
    expect(text).toContain(`"'=HYPERLINK(""x"")"`)
    expect(text).toContain('"Van, ""grey""\nlong"')
    expect(text.split('\r\n')).toHaveLength(3)
  })

  it('reads a pack of one’s own and says what is wrong with one', () => {
    expect(readRegisterPack(JSON.parse(JSON.stringify(plainRegister)))).toMatchObject({ ok: true })
    const [first] = plainRegister.fields
    const twice = { ...plainRegister, fields: [first, first] }
    expect(readRegisterPack(twice)).toEqual({ ok: false, path: 'fields', what: 'two columns of one name' })
    const unknown = { ...plainRegister, fields: [{ ...first, from: 'whole-document-number' }] }
    expect(readRegisterPack(unknown)).toMatchObject({ ok: false, path: 'fields.0.from' })
    for (const value of [null, 3, [], {}, 'x']) expect(readRegisterPack(value).ok).toBe(false)
  })
})
