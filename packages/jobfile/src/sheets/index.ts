/**
 * @module Sheets beside the handover document: consents, what to bring, refusal, statement of keys, return visit, and
 * the export for a register. Each is made from the record alone, by the engine that draws the handover document.
 */

import type { HandoverText } from '../handover/document/index.ts'
import { drawHandover, type Fonts } from '../handover/page/index.ts'
import { HandoverRefused } from '../handover/refused.ts'
import { directionOf, instantMilliseconds, isCode } from '../words/index.ts'
import {
  foot,
  head,
  penOf,
  type SheetBasis,
  type SheetKind,
  type SheetName,
  type SheetOffer,
  sheetNames,
} from './basis.ts'
import { bringThis } from './bring-this.ts'
import { absentKeys, noCheck } from './consents.ts'
import { insurer } from './insurer.ts'
import { refusal } from './refusal.ts'
import { returnVisit } from './return-visit.ts'

export { type SheetBasis, type SheetName, type SheetOffer, sheetNames } from './basis.ts'
export { bringMessage } from './bring-this.ts'
export * from './register/index.ts'

/** Keyed by every name, so that a new sheet without a way to write it fails to compile. */
const kinds: Readonly<Record<SheetName, SheetKind>> = {
  'bring-this': bringThis,
  'absent-keys': absentKeys,
  'no-check': noCheck,
  refusal,
  insurer,
  'return-visit': returnVisit,
}

/** Every sheet with a line on what the record holds for it, in a language. Needs no instant and no fonts. */
export function offeredSheets(basis: Pick<SheetBasis, 'record' | 'language'>): readonly SheetOffer[] {
  const pen = penOf(basis)
  return sheetNames.map((sheet) => {
    const params = kinds[sheet].offer(pen)
    const code = `sheet-preview.${sheet}${params === null ? '.nothing' : ''}`
    const preview = isCode(code) ? pen.say(code, params ?? {}) : ''
    return { sheet, title: pen.say(`sheet.${sheet}`), ready: params !== null, preview }
  })
}

/** What a sheet says. Nothing but the record goes in; what the record does not hold is said as not known. */
export function sheetText(sheet: SheetName, basis: SheetBasis): HandoverText {
  const pen = penOf(basis)
  const running = pen.say('sheet.running', { sheet: pen.say(`sheet.${sheet}`), job: basis.record.job })
  return {
    language: pen.language,
    direction: directionOf(pen.language),
    title: running,
    running: { left: running, pageOf: (page, pages) => pen.say('doc.page', { page, pages }) },
    blocks: [...head(pen, sheet), ...kinds[sheet].blocks(pen), ...foot(pen, basis)],
  }
}

/**
 * A sheet as PDF/A-3a bytes, tagged, with embedded fonts. Throws HandoverRefused when the instant is no instant or
 * a font cannot be read.
 */
export async function makeSheet(sheet: SheetName, basis: SheetBasis, fonts: Fonts): Promise<Uint8Array> {
  const milliseconds = instantMilliseconds(basis.madeAt)
  if (milliseconds === null)
    throw new HandoverRefused(
      `"${basis.madeAt}" is not a UTC instant.`,
      'Give one like 2026-11-25T09:12:00.000Z.',
    )
  return drawHandover(sheetText(sheet, basis), fonts, milliseconds, [])
}
