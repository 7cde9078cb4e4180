import { randomUUID } from 'node:crypto'
import { createWriteStream } from 'node:fs'
import { pipeline } from 'node:stream/promises'
import { FactRefused, foldJob, isKnownKind, recordText, summarise } from '@shearline/jobfile'
import { recordOf, sealJob } from '@shearline/store'
import { type Command, Option } from 'commander'
import { type DataFlags, whoRecords, withStore } from '../job/data.ts'
import { importRecording } from '../job/import.ts'
import { printJob } from '../job/show.ts'
import { CouldNot, countOf, exit, paint, print, printJson, say } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'
import { recordingKeeper } from '../vault/recording.ts'
import { type BundleFlags, exportBundle } from './bundle.ts'

type Flags = DataFlags & { readonly json?: boolean }
type ImportFlags = Flags & { as?: (typeof phases)[number]; keepSealed?: boolean }

const phases = ['before', 'after', 'cleared', 'cycled'] as const

/** `shearline job ...`: jobs of the data folder, without a browser. */
export function addJob(program: Command): void {
  const job = program.command('job').description('Jobs on record in the data folder')
  const verb = (name: string, description: string) =>
    job
      .command(name)
      .description(description)
      .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
      .option('--by <name>', 'who records (default: SHEARLINE_BY, else this user)')
      .option('--json', 'one JSON object')

  verb('list', 'List the jobs').action((flags: Flags) => list(flags))
  verb('open', 'Open a job')
    .argument('<job>', 'a name for it: 3 to 64 lower-case letters, digits, hyphens')
    .requiredOption('--title <words>', 'what people will call it')
    .requiredOption('--place <words>', 'where the car stands')
    .requiredOption('--vehicle <words>', 'which car, in words')
    .option('--zone <zone>', 'IANA time zone', Intl.DateTimeFormat().resolvedOptions().timeZone)
    .addOption(
      new Option('--work <work>')
        .choices(['add-a-key', 'all-keys-lost', 'replace-keys'])
        .default('add-a-key'),
    )
    .addOption(new Option('--customer <kind>').choices(['private', 'trade', 'fleet']).default('private'))
    .action((id: string, flags: Flags & Record<string, string>) => {
      const { title, place, vehicle, zone, work, customer } = flags
      return record(id, 'job-opened', { title, place, vehicle, zone, work, customer }, flags, {
        mustExist: false,
      })
    })
  verb('record', 'Record one fact of any kind')
    .argument('<job>')
    .argument('<kind>', 'the kind of fact, like keys-said')
    .argument('<file>', 'its body as JSON; - for standard input')
    .action(async (id: string, kind: string, file: string, flags: Flags) =>
      record(id, kind, await jsonOf(file), flags, { mustExist: true }),
    )
  verb('import', 'Read a recording into a job')
    .argument('<job>')
    .argument('<file>', 'the recording; - for standard input')
    .addOption(new Option('--as <scan>', 'which scan it is').choices(phases))
    .option('--keep-sealed', 'keep the file itself too, sealed to the recipients of the vault')
    .action((id: string, file: string, flags: ImportFlags) => importFile(id, file, flags))
  verb('show', 'Show a job: tumblers and next step')
    .argument('<job>')
    .action((id: string, flags: Flags) => show(id, flags))
  verb('seal', 'Seal a job and write its handover document')
    .argument('<job>')
    .requiredOption('--out <file>', 'where the PDF goes')
    .option('--language <language>', 'language of the document')
    .option('--even-if-not-ready', 'seal it as it stands; the document says what is open')
    .action((id: string, flags: Flags & { out: string; language?: string; evenIfNotReady?: boolean }) =>
      seal(id, flags),
    )
  verb('export', 'Write the signed record of a job as JSON, or all of it as a bundle')
    .argument('<job>')
    .option('--bundle <file>', 'write a zip that a stranger can check with openssl and sha256sum')
    .option('--with-secrets', 'put sealed vehicle secrets into the bundle, still sealed')
    .option('--with-page', 'put the page into the bundle that verifies it in a browser')
    .action((id: string, flags: BundleFlags) =>
      flags.bundle === undefined ? exportRecord(id, flags) : exportBundle(id, flags.bundle, flags),
    )
}

function list(flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const entries = await store.jobs()
    if (entries.length === 0)
      say('There is no job yet. Open one: shearline job open, or on the bench (npm start).')
    for (const entry of entries) {
      const summary = summarise(foldJob(entry.job, await store.factsOfJob(entry.job)))
      if (flags.json === true) printJson(summary ?? { job: entry.job, facts: entry.facts })
      else
        print(
          `${entry.job.padEnd(24)} ${summary?.inLine === true ? paint('in line', 'green') : `${summary?.tumblers.filter((tumbler) => tumbler.state === 'in-line').length ?? 0} of 7`}  ${summary?.title ?? ''}`,
        )
    }
  })
}

function record(
  job: string,
  kind: string,
  body: unknown,
  flags: Flags,
  { mustExist }: { mustExist: boolean },
): Promise<void> {
  return withStore(flags, async (store) => {
    if (!isKnownKind(kind))
      throw new CouldNot(`"${kind}" is no kind of fact.`, 'See packages/jobfile/README.md for the kinds.')
    if (typeof body !== 'object' || body === null || Array.isArray(body))
      throw new CouldNot('The body is not a JSON object.', 'Give { ... }.')
    const known = await store.jobEntry(job)
    if (mustExist && known === null)
      throw new CouldNot(`There is no job "${job}".`, 'Open it first: shearline job open.')
    if (!mustExist && known !== null)
      throw new CouldNot(`Job "${job}" exists already.`, 'Choose another name.')
    try {
      const at = new Date(
        Math.max(Date.now(), Date.parse(known?.lastAt ?? '1970-01-01T00:00:00.000Z')),
      ).toISOString()
      const [fact] = await store.writeOwn([
        { id: randomUUID(), job, at, by: whoRecords(flags), kind, body: { ...body } },
      ])
      if (flags.json === true) printJson(fact)
      else print(`Recorded ${kind} in ${job}.`)
    } catch (error) {
      if (error instanceof FactRefused) throw new CouldNot(error.message, '')
      throw error
    }
  })
}

function importFile(job: string, file: string, flags: ImportFlags): Promise<void> {
  return withStore(flags, async (store) => {
    // Who could open it is asked first: a recording must not be half taken in.
    const keep = flags.keepSealed === true ? await recordingKeeper(store, file) : null
    const { intake, facts } = await importRecording(store, job, file, flags.as ?? null, whoRecords(flags))
    const { recording, vins, notVins, scannedUnits, faults } = intake
    const sealed = await keep?.(job, whoRecords(flags))
    if (flags.json === true) {
      const written = {
        job,
        recording,
        vins,
        notVins,
        scannedUnits,
        faults,
        facts: facts.map((fact) => fact.id),
      }
      printJson(sealed === undefined ? written : { ...written, sealed })
      return
    }
    print(
      `${recording.name}: ${recording.format}, ${countOf(recording.frames, 'frame')}, ${countOf(recording.messages, 'message')}, ${countOf(recording.units.length, 'control unit')} answered`,
    )
    for (const { vin, unit } of vins) print(`VIN ${vin} from ${unit}`)
    for (const { text, unit } of notVins)
      say(`note: ${unit} answered "${text}" for its VIN; that is no VIN and was not recorded.`)
    print(
      flags.as === undefined
        ? 'Kept without a scan.'
        : `Scan ${flags.as}: ${countOf(scannedUnits, 'unit')} read, ${countOf(faults, 'fault')}.`,
    )
    if (sealed !== undefined) print(`The file itself is kept sealed as ${sealed}.`)
  })
}

function show(job: string, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const facts = await store.factsOfJob(job)
    if (facts.length === 0)
      throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
    const state = foldJob(job, facts)
    if (flags.json === true) printJson(state)
    else printJob(state)
  })
}

function seal(
  job: string,
  flags: Flags & { out: string; language?: string; evenIfNotReady?: boolean },
): Promise<void> {
  return withStore(flags, async (store) => {
    const outcome = await sealJob(store, job, {
      by: whoRecords(flags),
      language: flags.language,
      evenIfNotReady: flags.evenIfNotReady === true,
      now: Date.now(),
    })
    if (!outcome.ok) {
      const { refusal } = outcome
      if (flags.json === true) printJson({ job, sealed: false, ...refusal })
      else {
        print(`${paint('Not sealed:', 'bold')} ${refusal.what}`)
        for (const words of refusal.open) print(`- ${words}`)
        print(refusal.doNext)
      }
      process.exitCode = refusal.code === 'unknown-job' ? exit.couldNot : exit.no
      return
    }
    const found = await store.openBlob(outcome.value.document.sha256)
    if (found === null)
      throw new CouldNot(
        'The document was sealed but cannot be found.',
        'Look whether the disk is full, then seal it once more.',
      )
    await pipeline(found.stream, createWriteStream(flags.out))
    if (flags.json === true) printJson({ job, sealed: true, ...outcome.value, file: flags.out })
    else
      print(
        `Sealed ${job}${outcome.value.ready ? '' : ' (not ready: the document says what is open)'}: ${flags.out}, ${outcome.value.document.bytes} bytes.`,
      )
  })
}

function exportRecord(job: string, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const facts = await store.factsOfJob(job)
    if (facts.length === 0)
      throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
    print(recordText(await recordOf(store, job, facts)))
  })
}
