import { type DiagnosticId, type Message, messageLine } from '@shearline/bus'
import type { Command } from 'commander'
import { CouldNot, paint, print, printJson } from '../output/answer.ts'
import { readRecording, stdoutDrained } from '../output/recording.ts'

interface DecodeFlags {
  readonly json?: boolean
  readonly summary?: boolean
  readonly raw?: boolean
  readonly ids?: string
}

/** `shearline decode FILE`: every diagnostic message of a recording, security payloads redacted unless `--raw`. */
export function addDecode(program: Command): void {
  program
    .command('decode')
    .description('List every diagnostic message of a recording')
    .argument('<file>', 'the recording; - for standard input')
    .option('--json', 'one JSON object per message, or one for --summary')
    .option('--summary', 'only counts')
    .option('--raw', 'do not hide the payloads of security services')
    .option('--ids <list>', 'identifiers that carry diagnostics, hex, comma separated (29-bit: eight digits)')
    .action(async (file: string, flags: DecodeFlags) => {
      const lines: string[] = []
      const write = (message: Message) => {
        if (flags.summary === true) return
        lines.push(flags.json === true ? JSON.stringify(messageLine(message)) : messageText(message))
      }
      const flush = async () => {
        if (lines.length > 0) process.stdout.write(`${lines.splice(0).join('\n')}\n`)
        await stdoutDrained()
      }
      const choices = {
        raw: flags.raw === true,
        ...(flags.ids === undefined ? {} : { ids: readIds(flags.ids) }),
      }
      const { result } = await readRecording(file, { message: write }, choices, flush, false)
      await flush()
      if (flags.summary !== true) return
      if (flags.json === true) printJson(result.summary)
      else {
        print(`${file}: ${result.recognised.format} (${result.recognised.reason})`)
        for (const [name, count] of Object.entries(result.summary)) {
          print(`${name.padEnd(14)} ${typeof count === 'number' ? count : JSON.stringify(count)}`)
        }
      }
    })
}

/** Reads `7E8,18DAF110`: three digits are an 11-bit identifier, eight a 29-bit one. */
function readIds(list: string): DiagnosticId[] {
  return list.split(',').map((part) => {
    const word = part.trim()
    if (!/^([0-9a-f]{3}|[0-9a-f]{8})$/i.test(word)) {
      throw new CouldNot(
        `"${word}" is not an identifier.`,
        'Write 11-bit ones with three hex digits, 29-bit ones with eight.',
      )
    }
    return { id: Number.parseInt(word, 16), extended: word.length === 8 }
  })
}

function messageText(message: Message): string {
  const line = messageLine(message)
  const details = [
    line.subFunction?.name,
    line.dids?.map((did) => `${did.did} ${did.name}`).join(', '),
    line.nrc === undefined ? undefined : `${line.nrc.code} ${line.nrc.name}`,
    line.dtcs?.map((dtc) => dtc.code).join(' '),
    line.vin,
  ].filter((part) => part !== undefined && part !== '')
  const kind = line.kind === 'negative' ? paint('negative', 'yellow') : line.kind
  const whole = line.complete ? '' : paint(` incomplete: ${line.incomplete ?? ''}`, 'red')
  return `${line.time}  ${line.channel}  ${line.id.padEnd(8)}  ${line.protocol} ${line.service} ${line.name}, ${kind}${whole}${details.length > 0 ? `: ${details.join('; ')}` : ''}  ${paint(line.payload, 'dim')}`
}
