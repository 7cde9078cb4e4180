import type { Body, Kind } from '@shearline/jobfile'
import { photoWords } from '../photos/photo-words.ts'
import { packLabelWords } from '../policy/pack-text.ts'
import { answerWords, questionWords } from '../policy/policy-words.ts'
import { notedWords } from '../teaching/step-code.ts'
import { money } from '../words/amounts.ts'
import { listMark, say } from '../words/engine.ts'
import { t } from '../words/index.ts'
import { clock } from '../words/instants.ts'

type CustodyKind = Extract<
  Kind,
  | 'call-taken'
  | 'appointment-made'
  | 'appointment-ended'
  | 'quote-given'
  | 'policy-answered'
  | 'plan-accepted'
  | 'step-done'
  | 'signature-drawn'
  | 'photo-attached'
  | 'vehicle-handed-over'
  | 'purpose-ended'
  | 'hold-placed'
  | 'hold-lifted'
  | 'deletion-proven'
  | 'secret-sealed'
  | 'secret-opened'
  | 'device-enrolled'
  | 'device-key-rotated'
  | 'device-revoked'
>

/** What was agreed and shown, what is kept how long, who saw it, and the devices: one sentence each. */
export const custodySentences: { readonly [K in CustodyKind]: (body: Body<K>) => string } = {
  'call-taken': (body) =>
    t('fact.call-taken', {
      channel: body.channel,
      starts: String(body.starts),
      bring: body.toBring.join(listMark()) || '-',
    }),
  'appointment-made': (body) =>
    t('fact.appointment-made', {
      from: clock(body.from, 'UTC'),
      day: body.from.slice(0, 10),
      place: body.place,
    }),
  'appointment-ended': (body) =>
    t('fact.appointment-ended', { outcome: body.outcome, because: body.because ?? '-' }),
  'quote-given': (body) =>
    t('fact.quote-given', {
      amount: money(
        body.lines.reduce((sum, line) => sum + line.amountMinor, 0),
        body.currency,
      ),
    }),
  'policy-answered': (body) =>
    t('fact.policy-answered', {
      question: body.question === 'pack' ? t('rules.which') : questionWords(body.question),
      answer:
        typeof body.answer === 'string'
          ? body.question === 'pack'
            ? packLabelWords(body.answer)
            : answerWords(body.question, body.answer)
          : body.answer
            ? t('yes')
            : t('no'),
      pack: packLabelWords(body.pack),
    }),
  'plan-accepted': (body) =>
    t('fact.plan-accepted', {
      order: body.order.join(listMark()),
      signer: body.signer,
      plan: body.plan.slice(0, 12),
    }),
  'step-done': (body) =>
    t('fact.step-done', { step: notedWords(body), outcome: body.outcome, because: body.because ?? '-' }),
  'signature-drawn': (body) => t('fact.signature-drawn', { signer: body.signer, what: body.for }),
  'photo-attached': (body) =>
    body.words === undefined
      ? t('photo.take.of', { what: photoWords(body) })
      : t('fact.photo-attached', { shows: body.shows, words: body.words }),
  'vehicle-handed-over': (body) =>
    t('fact.vehicle-handed-over', { to: body.to, keys: body.keys.join(listMark()) || '-' }),
  'purpose-ended': (body) =>
    t('fact.purpose-ended', { what: say(`retention.${body.class}`), because: body.because }),
  'hold-placed': (body) => t('fact.hold-placed', { reason: body.reason }),
  'hold-lifted': (body) => t('fact.hold-lifted', { reason: body.reason }),
  'deletion-proven': (body) =>
    t('fact.deletion-proven', {
      what: say(`retention.${body.class}`),
      count: body.items.length,
      why: body.why,
    }),
  'secret-sealed': (body) =>
    t('fact.secret-sealed', { what: body.what, count: body.recipients.length, blob: body.blob.slice(0, 12) }),
  'secret-opened': (body) => t('fact.secret-opened', { blob: body.blob.slice(0, 12), reason: body.reason }),
  'device-enrolled': (body) =>
    t('fact.device-enrolled', { name: body.name, device: body.device, by: body.approvedBy }),
  'device-key-rotated': (body) =>
    t('fact.device-key-rotated', { name: body.name, device: body.newDevice, because: body.because }),
  'device-revoked': (body) =>
    t('fact.device-revoked', { device: body.device, because: body.because, reason: body.reason }),
}
