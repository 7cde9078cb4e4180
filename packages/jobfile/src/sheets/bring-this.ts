/** @module What a customer should have at the car: a sheet, and the same as a short message. */
import { heading, list, type Pen, paragraph, quiet } from '../handover/document/pen.ts'
import { spanText } from '../words/index.ts'
import { penOf, type SheetBasis, type SheetKind } from './basis.ts'

function when({ say, state, instant, language, zone }: Pen): string {
  const made = state.appointment?.made
  if (made === undefined) return say('sheet.bring-no-time')
  const { from, to } = made
  return to === undefined ? instant(from) : spanText(language, [from, to], zone)
}

const place = ({ say, state }: Pen): string =>
  state.appointment?.made.place ?? state.opened?.place ?? say('doc.unknown')

/** What to bring to an appointment, by who orders the work. */
export const bringThis: SheetKind = {
  offer: (pen) => (pen.state.appointment === null ? null : { when: when(pen), place: place(pen) }),
  blocks: (pen) => {
    const { say, state } = pen
    const customer = state.opened?.customer ?? 'private'
    const agreed = (state.call?.toBring ?? []).map((what) => say('sheet.bring-other', { what }))
    return [
      {
        kind: 'facts',
        rows: [
          { label: say('sheet.bring-when'), value: when(pen) },
          { label: say('sheet.bring-where'), value: place(pen) },
        ],
      },
      heading(say('sheet.bring-hello')),
      list([say('sheet.bring-keys'), say('sheet.bring-identity'), say(`sheet.bring-${customer}`), ...agreed]),
      paragraph(say('sheet.bring-keys-why')),
      paragraph(say('sheet.bring-place-car')),
      quiet(say('sheet.bring-not-sent')),
    ]
  },
}

/** The same as plain text for a message, in the language of whoever reads it. */
export function bringMessage(basis: SheetBasis): string {
  const pen = penOf(basis)
  const { say, state } = pen
  return say('sheet.bring-message', {
    firm: basis.firm ?? 'none',
    vehicle: state.opened?.vehicle ?? say('doc.unknown'),
    when: when(pen),
    place: place(pen),
    entitlement: say(`sheet.bring-short-${state.opened?.customer ?? 'private'}`),
  }).trim()
}
