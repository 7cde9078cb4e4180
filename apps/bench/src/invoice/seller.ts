/** @module The firm's own data for invoices, kept on this device (never in a job until an invoice is issued). */
import type { Invoice } from '@shearline/jobfile'

/** What a person types of a party; empty where nothing is known. */
export type PartyForm = Readonly<Record<keyof Invoice['seller'], string>>

export const emptyParty: PartyForm = {
  name: '',
  street: '',
  postCode: '',
  city: '',
  country: '',
  vatId: '',
  taxNumber: '',
  registerNumber: '',
}

const place = 'shearline-seller'

/** The firm as last typed on this device; empty at first or when what is kept cannot be read. */
export function keptSeller(): PartyForm {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(place) ?? '{}')
    if (typeof kept !== 'object' || kept === null) return emptyParty
    const texts = Object.entries(kept).filter(([key, text]) => key in emptyParty && typeof text === 'string')
    return { ...emptyParty, ...Object.fromEntries(texts) }
  } catch {
    return emptyParty
  }
}

export function keepSeller(seller: PartyForm): void {
  localStorage.setItem(place, JSON.stringify(seller))
}

/** A party as a fact holds it: trimmed, without what was left empty. */
export function partyOf(form: PartyForm): Invoice['seller'] {
  const filled = Object.entries(form)
    .map(([key, text]) => [key, text.trim()] as const)
    .filter(([, text]) => text !== '')
  return { name: '', country: '', ...Object.fromEntries(filled) }
}
