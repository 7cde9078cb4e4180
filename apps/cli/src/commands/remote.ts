import { existsSync, readFileSync } from 'node:fs'
import { basename } from 'node:path'
import {
  compareRemotes,
  describeReason,
  IqReader,
  type MeasuredRemote,
  measureRemote,
  type RemoteFinding,
  type RemoteSummary,
  resolveSetting,
  type SampleFormat,
  summariseRemote,
} from '@shearline/keywork'
import { type Command, Option } from 'commander'
import { CouldNot, exit, paint, print, printJson, sayFinding } from '../output/answer.ts'
import { recordingPieces, sizeOf } from '../output/input.ts'

interface Flags {
  readonly json?: boolean
  readonly rate?: string
  readonly centre?: string
  readonly format?: SampleFormat
}

/** `shearline remote ORIGINAL [NEW]`: measures one radio recording, or says whether two are of one family. Exit 1 unless the same. */
export function addRemote(program: Command): void {
  program
    .command('remote')
    .description('Measure the radio of a remote, or compare a new remote with the original')
    .argument('<original>', 'radio recording (.cu8 .cs8 .cs16 .cf32 or .sigmf-data)')
    .argument('[new]', 'radio recording of the new remote, made with the same receiver')
    .option('--rate <hertz>', 'sample rate, when neither name nor SigMF says it')
    .option('--centre <hertz>', 'centre frequency, when neither name nor SigMF says it')
    .addOption(new Option('--format <format>', 'sample format').choices(['cu8', 'cs8', 'cs16', 'cf32']))
    .option('--json', 'one JSON object')
    .action(async (original: string, other: string | undefined, flags: Flags) => {
      const first = await measure(original, flags)
      if (other === undefined) {
        if (flags.json === true) printJson(summariseRemote(first.measurement))
        else printMeasurement(original, summariseRemote(first.measurement))
        return
      }
      const second = await measure(other, flags)
      const { verdict, reasons } = compareRemotes(first.measurement, second.measurement)
      const words = reasons.map(describeReason)
      process.exitCode = verdict === 'same' ? exit.answered : exit.no
      if (flags.json === true) {
        const [of, against] = [summariseRemote(first.measurement), summariseRemote(second.measurement)]
        printJson({
          verdict,
          reasons: reasons.map((reason, index) => ({ ...reason, text: words[index] })),
          original: of,
          new: against,
        })
        return
      }
      print(
        paint(
          { same: 'Same radio family.', different: 'Different radio.', unsure: 'Not sure.' }[verdict],
          'bold',
        ),
      )
      for (const reason of words) print(`- ${reason}`)
      printMeasurement(original, summariseRemote(first.measurement))
      printMeasurement(other, summariseRemote(second.measurement))
    })
}

async function measure(file: string, flags: Flags): Promise<MeasuredRemote> {
  const size = await sizeOf(file)
  const meta = file.replace(/\.sigmf-data$/, '.sigmf-meta')
  const given = {
    ...hertz('sampleRateHz', flags.rate),
    ...hertz('centreHz', flags.centre),
    ...(flags.format === undefined ? {} : { format: flags.format }),
  }
  const { setting, format, headerBytes, findings } = resolveSetting({
    name: basename(file),
    given,
    ...(meta !== file && existsSync(meta) ? { sigmf: readFileSync(meta, 'utf8') } : {}),
  })
  tell(file, findings)
  if (setting === null || format === null) {
    throw new CouldNot(
      `${file} does not say how it was recorded.`,
      'Give --rate, --centre and --format, or a SigMF file beside it.',
    )
  }
  const reader = new IqReader(format, { headerBytes })
  for await (const piece of recordingPieces(file, size)) reader.push(piece)
  const measured = measureRemote(reader.finish(), setting)
  tell(file, measured.measurement.findings)
  return measured
}

function hertz(name: 'sampleRateHz' | 'centreHz', text: string | undefined): Record<string, number> {
  if (text === undefined) return {}
  const value = Number(text)
  if (!Number.isFinite(value) || value <= 0)
    throw new CouldNot(`"${text}" is no frequency in hertz.`, 'Write it like 250000 or 433.92e6.')
  return { [name]: value }
}

function tell(file: string, findings: readonly RemoteFinding[]): void {
  for (const finding of findings) sayFinding(file, finding)
}

function printMeasurement(file: string, found: RemoteSummary): void {
  const megahertz =
    found.carrierHz === null ? 'carrier not known' : `${(found.carrierHz / 1e6).toFixed(3)} MHz`
  const deviation =
    found.deviationHz === null ? '' : `, deviation ${(found.deviationHz / 1000).toFixed(1)} kHz`
  print(
    `${file}: ${found.modulation}, ${megahertz}${deviation}, pulses ${found.pulsesUs.map((us) => Math.round(us)).join(' ')} us, gaps ${found.gapsUs.map((us) => Math.round(us)).join(' ')} us, ${found.snrDb?.toFixed(0) ?? '?'} dB`,
  )
}
