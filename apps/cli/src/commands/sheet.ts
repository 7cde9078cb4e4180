import { writeFile } from 'node:fs/promises'
import {
  bringMessage,
  foldJob,
  type JobRecord,
  languages,
  makeRegister,
  makeSheet,
  offeredSheets,
  plainRegister,
  type RegisterPack,
  readRegisterPack,
  registerCsv,
  registerJson,
  type SheetName,
  sheetNames,
} from '@shearline/jobfile'
import { documentFonts, recordOf, type Store } from '@shearline/store'
import { Argument, type Command, Option } from 'commander'
import { type DataFlags, withStore } from '../job/data.ts'
import { CouldNot, paint, print, printJson, say } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'

type Flags = DataFlags & { readonly json?: boolean; readonly language?: string }
type MakeFlags = Flags & { readonly out?: string; readonly message?: boolean; readonly firm?: string }
type RegisterFlags = DataFlags & { readonly json?: boolean; readonly pack?: string }

/** `shearline sheet ...`: sheets beside the handover document, and the export for a register. */
export function addSheet(program: Command): void {
  const sheet = program
    .command('sheet')
    .description(
      'Sheets of a job: consents, what to bring, refusal, statement of keys, return visit, register',
    )
  const verb = (name: string, description: string) =>
    sheet
      .command(name)
      .description(description)
      .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
      .option('--json', 'one JSON object')
  const language = () =>
    new Option('--language <language>', 'language of whoever reads it (default: that of the job)').choices([
      ...languages,
    ])

  verb('list', 'List the sheets of a job with a line on what each would say')
    .argument('<job>')
    .addOption(language())
    .action((job: string, flags: Flags) => list(job, flags))
  verb('make', 'Write one sheet as PDF, or what to bring as a message')
    .argument('<job>')
    .addArgument(new Argument('<sheet>', 'which one').choices([...sheetNames]))
    .addOption(language())
    .option('--out <file>', 'where the PDF goes')
    .option('--message', 'print bring-this as plain text for a message')
    .option('--firm <name>', 'name of the firm in the message')
    .action((job: string, name: SheetName, flags: MakeFlags) => make(job, name, flags))
  verb('register', 'Print the jobs as the register of a scheme wants them, as CSV, or JSON with --json')
    .argument('[jobs...]', 'which jobs (default: all)')
    .option('--pack <file>', 'the fields of the scheme as JSON (default: a plain register)')
    .action((jobs: readonly string[], flags: RegisterFlags) => register(jobs, flags))
}

/** The record of a job as it stands, and the language to write in. Throws CouldNot when there is no such job. */
async function recordFrom(store: Store, job: string): Promise<JobRecord> {
  const facts = await store.factsOfJob(job)
  if (facts.length === 0)
    throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
  return recordOf(store, job, facts)
}

const languageOf = (record: JobRecord, flags: Flags) =>
  flags.language ?? foldJob(record.job, record.facts).opened?.language ?? 'en'

function list(job: string, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const record = await recordFrom(store, job)
    const offers = offeredSheets({ record, language: languageOf(record, flags) })
    if (flags.json === true) printJson({ job, sheets: offers })
    else
      for (const { sheet, title, ready, preview } of offers)
        print(`${ready ? '=' : ' '} ${sheet.padEnd(13)} ${paint(title, 'bold')}  ${preview}`)
  })
}

function make(job: string, sheet: SheetName, flags: MakeFlags): Promise<void> {
  return withStore(flags, async (store) => {
    const record = await recordFrom(store, job)
    const language = languageOf(record, flags)
    const basis = {
      record,
      language,
      madeAt: new Date().toISOString(),
      ...(flags.firm === undefined ? {} : { firm: flags.firm }),
    }
    if (flags.message === true) {
      if (sheet !== 'bring-this')
        throw new CouldNot(`There is no message for ${sheet}.`, 'Leave --message out and give --out.')
      const message = bringMessage(basis)
      if (flags.json === true) printJson({ job, sheet, language, message })
      else print(message)
      return
    }
    if (flags.out === undefined)
      throw new CouldNot('It is not said where the sheet goes.', 'Add --out FILE.pdf.')
    const offer = offeredSheets(basis).find((each) => each.sheet === sheet)
    if (offer?.ready === false) say(`note: ${offer.preview} The sheet is made all the same.`)
    const pdf = await makeSheet(sheet, basis, await documentFonts())
    try {
      await writeFile(flags.out, pdf)
    } catch (error) {
      throw new CouldNot(`${flags.out} could not be written: ${String(error)}.`, 'Name another place.')
    }
    if (flags.json === true) printJson({ job, sheet, language, file: flags.out, bytes: pdf.length })
    else print(`${offer?.title ?? sheet}: ${flags.out}, ${pdf.length} bytes.`)
  })
}

async function packFrom(file: string | undefined): Promise<RegisterPack> {
  if (file === undefined) return plainRegister
  const read = readRegisterPack(await jsonOf(file))
  if (read.ok) return read.pack
  throw new CouldNot(`${file}, ${read.path}: ${read.what}.`, 'See packages/jobfile/src/sheets/README.md.')
}

async function register(jobs: readonly string[], flags: RegisterFlags): Promise<void> {
  const pack = await packFrom(flags.pack)
  return withStore(flags, async (store) => {
    const wanted = jobs.length > 0 ? jobs : (await store.jobs()).map(({ job }) => job).sort()
    const records: JobRecord[] = []
    for (const job of wanted) records.push(await recordFrom(store, job))
    const made = makeRegister(pack, records)
    process.stdout.write(flags.json === true ? registerJson(made) : registerCsv(made))
    for (const { job, column } of made.lacking) say(`note: ${job}: "${column}" is wanted and not on record.`)
  })
}
