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
import { CouldNot, exit, paint, print, printJson, say, sayFinding } from '../output/answer.ts'
import { recordingPieces, sizeOf } from '../output/input.ts'
import { captured } from '../remote/capture.ts'

interface Flags {
  readonly json?: boolean
  readonly rate?: string
  readonly centre?: string
  readonly format?: SampleFormat
  readonly capture?: string
  readonly seconds: string
}

/** Stands for a recording made now by the command of `--capture`. A file of that name is `./live`. */
const live = 'live'

/**
 * `shearline remote ORIGINAL [NEW]`: measures one radio recording, or says whether two are of one family. Exit 1
 * unless the same.
 */
export function addRemote(program: Command): void {
  program
    .command('remote')
    .description('Measure the radio of a remote, or compare a new remote with the original')
    .argument('<original>', 'radio recording (.cu8 .cs8 .cs16 .cf32 or .sigmf-data), or "live"')
    .argument('[new]', 'radio recording of the new remote, made with the same receiver, or "live"')
    .option('--rate <hertz>', 'sample rate, when neither name nor SigMF says it')
    .option('--centre <hertz>', 'centre frequency, when neither name nor SigMF says it')
    .addOption(new Option('--format <format>', 'sample format').choices(['cu8', 'cs8', 'cs16', 'cf32']))
    .addOption(
      new Option(
        '--capture <command>',
        'for "live": command that records into {file}; {rate}, {centre} and {seconds} are filled in',
      ).env('SHEARLINE_CAPTURE'),
    )
    .option('--seconds <seconds>', 'for "live": time after which the command is ended', '5')
    .option('--json', 'one JSON object')
    .addHelpText(
      'after',
      '\nA live recording needs --rate and --centre; --format is cu8 unless given. It is deleted once measured.',
    )
    .action(async (original: string, other: string | undefined, flags: Flags) => {
      const first = await measure(original, 'original', flags)
      if (other === undefined) {
        if (flags.json === true) printJson(summariseRemote(first.measurement))
        else printMeasurement(original, summariseRemote(first.measurement))
        return
      }
      const second = await measure(other, 'new', flags)
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

async function measure(file: string, side: 'original' | 'new', flags: Flags): Promise<MeasuredRemote> {
  return file === live ? measureLive(side, flags) : measureFile(file, file, flags)
}

async function measureLive(side: 'original' | 'new', flags: Flags): Promise<MeasuredRemote> {
  const { capture: command, format = 'cu8' } = flags
  const { sampleRateHz } = hertz('sampleRateHz', flags.rate)
  const { centreHz } = hertz('centreHz', flags.centre)
  const seconds = Number(flags.seconds)
  if (command === undefined)
    throw new CouldNot('No command to record with is given.', 'Give --capture or set SHEARLINE_CAPTURE.')
  if (sampleRateHz === undefined || centreHz === undefined)
    throw new CouldNot('A live recording needs a sample rate and a centre.', 'Give --rate and --centre.')
  if (!(seconds >= 0.1 && seconds <= mostSeconds))
    throw new CouldNot(`"${flags.seconds}" is no time to record.`, `Give 0.1 to ${mostSeconds} seconds.`)
  const whose = side === 'original' ? 'the original remote' : 'the new remote'
  await whenReady(`Hold a button of ${whose} for two seconds when the receiver runs`)
  say(`Recording ${whose} for up to ${seconds} s ...`)
  return captured({ command, sampleRateHz, centreHz, format, seconds }, (file) =>
    measureFile(file, whose, { ...flags, format }),
  )
}

const mostSeconds = 120

/** At a terminal, waits for Enter so that the right remote is at hand; otherwise goes on at once. */
async function whenReady(what: string): Promise<void> {
  if (!process.stdin.isTTY) return say(`${what}.`)
  const { createInterface } = await import('node:readline/promises')
  const terminal = createInterface({ input: process.stdin, output: process.stderr })
  await terminal.question(`${what}. Ready: Enter `)
  terminal.close()
}

/** `shown` names the recording in what is said. */
async function measureFile(file: string, shown: string, flags: Flags): Promise<MeasuredRemote> {
  const size = sizeOf(file)
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
  tell(shown, findings)
  if (setting === null || format === null) {
    throw new CouldNot(
      `${shown} does not say how it was recorded.`,
      'Give --rate, --centre and --format, or a SigMF file beside it.',
    )
  }
  const reader = new IqReader(format, { headerBytes })
  for await (const piece of recordingPieces(file, size)) reader.push(piece)
  const measured = measureRemote(reader.finish(), setting)
  tell(shown, measured.measurement.findings)
  return measured
}

function hertz<N extends 'sampleRateHz' | 'centreHz'>(
  name: N,
  text: string | undefined,
): { readonly [K in N]?: number } {
  if (text === undefined) return {}
  const value = Number(text)
  if (!Number.isFinite(value) || value <= 0)
    throw new CouldNot(`"${text}" is no frequency in hertz.`, 'Write it like 250000 or 433.92e6.')
  return { [name]: value } as { [K in N]: number }
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
