import {
  amountsOf,
  type Body,
  bodyOf,
  type Fact,
  isKnownKind,
  type Kind,
  understands,
} from '@shearline/jobfile'
import { packLabelWords } from '../policy/pack-text.ts'
import { cellSentence, supplyReadSentence, supplySetSentence } from '../power/sentences.ts'
import { comparedSentence } from '../remote/say-remote.ts'
import { money, size, volts } from '../words/amounts.ts'
import { listMark, say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { custodySentences } from './sentences-custody.ts'

/** A table keyed by every kind, so that a new kind without its sentence fails to compile. */
const sentences: { readonly [K in Kind]: (body: Body<K>) => string } = {
  ...custodySentences,
  'job-opened': (body) => t('fact.job-opened', { title: body.title, place: body.place, zone: body.zone }),
  'keys-said': (body) =>
    t('fact.keys-said', { count: body.count, absent: body.absent.join(listMark()) || '-' }),
  'note-written': (body) => t('fact.note-written', { text: body.text }),
  'authority-seen': (body) =>
    t('fact.authority-seen', {
      role: say(`role.${body.role}`),
      document: body.document,
      issuer: body.issuer,
      last: body.lastCharacters,
      original: yesNo(body.original),
      matched: yesNo(body.matched),
    }),
  'authority-decided': (body) =>
    t('fact.authority-decided', { decision: say(`decision.${body.decision}`), reason: body.reason }),
  'consent-given': (body) =>
    t('fact.consent-given', { what: say(`consent.${body.about}`), signer: body.signer }),
  'vin-read': (body) =>
    t('fact.vin-read', {
      vin: body.vin,
      source: say(`vin-source.${body.source}`),
      picture: body.picture ?? 'none',
    }),
  'recording-attached': (body) =>
    t('fact.recording-attached', {
      name: body.name,
      format: body.format,
      size: size(body.bytes),
      messages: body.messages,
    }),
  'scan-attached': (body) =>
    t('fact.scan-attached', {
      phase: say(`phase.${body.phase}`),
      units: body.units.length,
      faults: body.units.reduce((sum, unit) => sum + unit.faults.length, 0),
    }),
  'unit-named': (body) => t('fact.unit-named', { unit: body.unit, role: t(`unit-role.${body.role}`) }),
  'unit-matched': (body) =>
    t(body.same ? 'fact.unit-matched.same' : 'fact.unit-matched.two', { unit: body.unit, other: body.other }),
  'fault-acknowledged': (body) =>
    t('fact.fault-acknowledged', {
      code: body.code,
      unit: body.unit,
      signer: body.signer,
      words: body.words,
    }),
  'clear-requested': (body) =>
    [
      t('fact.clear-requested', { units: body.units.join(listMark()) }),
      ...(body.acknowledged ?? []).map((what) => t(`fact.clear-acknowledged.${what}`)),
    ].join(' '),
  'supply-set': supplySetSentence,
  'supply-read': supplyReadSentence,
  'key-labelled': (body) =>
    t('fact.key-labelled', {
      key: body.key,
      colour: say(`colour.${body.colour}`),
      form: say(`form.${body.form}`),
      origin: say(`origin.${body.origin}`),
    }) + cellSentence(body.cell),
  'key-count-read': (body) =>
    body.count === null
      ? t('fact.key-count-none', { when: body.when, because: body.because ?? '-' })
      : t('fact.key-count-read', { when: body.when, count: body.count }),
  'function-tested': (body) =>
    t('fact.function-tested', {
      key: body.key,
      function: say(`function.${body.function}`),
      phase: body.phase,
      outcome: say(`outcome.${body.outcome}`),
    }),
  'difference-explained': (body) => t('fact.difference-explained', { reason: body.reason }),
  'blank-chosen': (body) =>
    t('fact.blank-chosen', { item: body.item, fits: body.fits === null ? 'open' : String(body.fits) }),
  'remote-compared': comparedSentence,
  'blank-used': (body) => t('fact.blank-used', { item: body.item, outcome: body.outcome }),
  'rule-chosen': (body) => t('fact.rule-chosen', { kind: t(`rule-kind.${body.kind}`), source: body.source }),
  'rehearsal-read': (body) =>
    t('fact.rehearsal-read', { order: body.order.join(listMark()), wayBack: t(`way-back.${body.wayBack}`) }),
  'backup-proven': (body) =>
    t('fact.backup-proven', {
      what: body.what,
      same: String(body.firstRead === body.secondRead),
      first: body.firstRead.slice(0, 12),
      second: body.secondRead.slice(0, 12),
    }),
  'backup-waived': (body) => t('fact.backup-waived', { because: body.because }),
  'session-opened': (body) => t('fact.session-opened', { rehearsed: String(body.rehearsed) }),
  'key-taught': (body) =>
    t('fact.key-taught', {
      key: body.key,
      count: body.carCount ?? '-',
      volts: body.volts === undefined ? '-' : volts(body.volts),
    }),
  'session-closed': (body) => t('fact.session-closed', { count: body.carCount ?? '-' }),
  'broke-off': (body) => t('fact.broke-off', { after: body.after, why: say(`break.${body.why}`) }),
  'break-off-mended': (body) => t('fact.break-off-mended', { how: body.how }),
  'caution-read': (body) => t('fact.caution-read', { caution: say(`caution.${body.caution}`) }),
  'price-agreed': (body) =>
    t('fact.price-agreed', {
      amount: money(
        body.lines.reduce((sum, line) => sum + line.amountMinor, 0),
        body.currency,
      ),
    }),
  'invoice-issued': (body) =>
    t('fact.invoice-issued', {
      number: body.number,
      amount: money(amountsOf(body).grossMinor, body.currency),
    }),
  'warranty-given': (body) => t('fact.warranty-given', { months: body.months }),
  'retention-set': (body) =>
    t('fact.retention-set', { pack: packLabelWords(body.pack), count: body.classes.length }),
  corrected: (body) => t('fact.corrected', { action: body.action, reason: body.reason }),
  'document-sealed': (body) => t('fact.document-sealed', { count: body.count, root: body.root.slice(0, 12) }),
}

function yesNo(value: boolean): string {
  return value ? t('yes') : t('no')
}

/** A fact in one plain sentence; a kind, version or body this version cannot read is named and kept. */
export function factSentence(fact: Fact): string {
  const { kind } = fact
  if (!isKnownKind(kind)) return t('fact.unknown', { kind })
  if (understands(fact) === 'newer-version') return t('fact.newer-version', { kind })
  if (fact.body.erased !== undefined) return t('fact.erased', { kind })
  return sentenceOf(kind, fact) ?? t('fact.unreadable', { kind })
}

function sentenceOf<K extends Kind>(kind: K, fact: Fact): string | null {
  const read = bodyOf(fact, kind)
  return read.ok ? sentences[kind](read.body) : null
}
