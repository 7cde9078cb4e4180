import { type DecodeListener, type Message, messageLine } from '@shearline/bus'
import { CouldNot, paint, printAtOnce, printSoon } from '../output/answer.ts'
import { readRecording } from '../output/recording.ts'
import { type ChoiceFlags, choicesOf, readFields } from './choices.ts'

/** What can be asked of `shearline decode`. */
export interface DecodeFlags extends ChoiceFlags {
  readonly json?: boolean
  readonly summary?: boolean
  readonly fields?: string
}

/** Prints every diagnostic message of a recording, or what they count. Throws CouldNot when it cannot be read. */
export async function decodeRecording(file: string, flags: DecodeFlags): Promise<void> {
  const fields = flags.fields === undefined ? undefined : readFields(flags.fields)
  if (fields !== undefined && (flags.summary === true || flags.json === true))
    throw new CouldNot('--fields writes a table.', 'Leave out --json and --summary, or --fields.')
  const choices = { ...choicesOf(flags), ...(fields === undefined ? {} : { fields }) }
  // The head of a table comes with its first line: what is no recording has none.
  let head = fields === undefined ? '' : `${fields.join('\t')}\n`
  const line = (text: string) => {
    printSoon(`${head}${text}\n`)
    head = ''
  }
  const listener: DecodeListener =
    flags.summary === true
      ? {}
      : flags.json === true || fields !== undefined
        ? { line }
        : { message: (message) => line(messageText(message)) }
  const { result } = await readRecording(file, listener, choices, () => printAtOnce(), false)
  printAtOnce(head)
  if (flags.summary !== true) return
  if (flags.json === true) {
    printAtOnce(`${JSON.stringify(result.summary)}\n`)
    return
  }
  const counts = Object.entries(result.summary).map(
    ([name, count]) => `${name.padEnd(14)} ${typeof count === 'number' ? count : JSON.stringify(count)}\n`,
  )
  printAtOnce(`${file}: ${result.recognised.format} (${result.recognised.reason})\n${counts.join('')}`)
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
