/** @module What a person may say about a recording: which identifiers carry diagnostics and how, which column is what. */

import {
  CSV_FIELDS,
  type DecodeOptions,
  type DiagnosticId,
  MESSAGE_FIELDS,
  type MessageField,
  TIME_UNITS,
} from '@shearline/bus'
import { CouldNot } from '../output/answer.ts'

const addressings = ['auto', 'normal', 'extended', 'mixed'] as const

/** Flags of `shearline decode` that answer what the bytes of a recording may leave open. */
export interface ChoiceFlags {
  readonly raw?: boolean
  readonly ids?: string
  readonly addressing?: string
  readonly columns?: string
}

/** The flags as choices for decoding. Throws CouldNot for a word that is none. */
export function choicesOf(flags: ChoiceFlags): Pick<DecodeOptions, 'raw' | 'ids' | 'columns'> {
  const addressing = readAddressing(flags)
  return {
    raw: flags.raw === true,
    ...(flags.ids === undefined ? {} : { ids: readIds(flags.ids, addressing) }),
    ...(flags.columns === undefined ? {} : { columns: readColumns(flags.columns) }),
  }
}

function readAddressing({ addressing, ids }: ChoiceFlags): DiagnosticId['addressing'] {
  if (addressing === undefined) return undefined
  const known = addressings.find((kind) => kind === addressing)
  if (known === undefined)
    throw new CouldNot(`"${addressing}" is no way of addressing.`, `Say one of ${addressings.join(', ')}.`)
  if (known === 'auto') return undefined
  if (ids === undefined)
    throw new CouldNot(
      `"${known}" holds for named identifiers only.`,
      'Name them with --ids, as in --ids 6F1,612.',
    )
  return known
}

/** Reads `7E8,18DAF110`: three digits are an 11-bit identifier, eight a 29-bit one. */
function readIds(list: string, addressing: DiagnosticId['addressing']): DiagnosticId[] {
  return list.split(',').map((part) => {
    const word = part.trim()
    if (!/^([0-9a-f]{3}|[0-9a-f]{8})$/i.test(word)) {
      throw new CouldNot(
        `"${word}" is not an identifier.`,
        'Write 11-bit ones with three hex digits, 29-bit ones with eight.',
      )
    }
    return {
      id: Number.parseInt(word, 16),
      extended: word.length === 8,
      ...(addressing === undefined ? {} : { addressing }),
    }
  })
}

/** How to read a column, and what may be said there. */
const readings: Readonly<Record<string, readonly string[] | undefined>> = {
  timeUnit: TIME_UNITS,
  idBase: ['hex', 'dec'],
  dataBase: ['hex', 'dec', 'base64'],
}
const words: readonly string[] = [...CSV_FIELDS, ...Object.keys(readings)]

/** Reads `time,id,service`. Throws CouldNot for a word that names no field. */
export function readFields(list: string): readonly MessageField[] {
  return list.split(',').map((part) => {
    const word = part.trim()
    const known = MESSAGE_FIELDS.find((field) => field === word)
    if (known === undefined)
      throw new CouldNot(
        `"${word}" is no field of a message.`,
        `Name some of ${MESSAGE_FIELDS.join(', ')}; as in --fields time,id,service,did,nrc.`,
      )
    return known
  })
}

/** Reads `time=Time [ms],id=ID,data=D0..D7`. A comma may stand in a name: only one before a known word parts. */
function readColumns(list: string): Record<string, string> {
  const columns: Record<string, string> = {}
  for (const part of list.split(new RegExp(`,(?=\\s*(?:${words.join('|')})\\s*=)`))) {
    const [, word = '', said = ''] = /^\s*([^=]*?)\s*=\s*(.*?)\s*$/.exec(part) ?? []
    if (!words.includes(word)) {
      throw new CouldNot(
        `"${part.trim()}" says no column.`,
        `Write word=column with a word of ${words.join(', ')}; as in time=Time,id=ID,data=D0..D7.`,
      )
    }
    const allowed = readings[word]
    if (allowed !== undefined && !allowed.includes(said))
      throw new CouldNot(`"${said}" is no ${word}.`, `Say one of ${allowed.join(', ')}.`)
    columns[word] = said
  }
  return columns
}
