/** @module The sentences of this folder's findings. A page translates by code and params. */

import type { Severity } from '@shearline/bus'
import type { RemoteFinding, RemoteFindingCode } from './types.ts'

type Params = Readonly<Record<string, string | number>>

interface Wording {
  readonly severity: Severity
  readonly what: (params: Params) => string
  readonly doNext: string
}

const again =
  'Record again: the same receiver, both remotes in one sitting, the button pressed for two seconds.'

const WORDINGS: Readonly<Record<RemoteFindingCode, Wording>> = {
  'no-sender': { severity: 'error', what: () => 'No sender was found in the recording.', doNext: again },
  weak: {
    severity: 'warning',
    what: (p) => `The signal stands ${p.snrDb} dB above the noise of the recorded band; 6 dB are needed.`,
    doNext: 'Bring the remote nearer to the receiver or narrow the sample rate, and record again.',
  },
  'off-centre': {
    severity: 'warning',
    what: (p) => `The carrier lies ${khz(p.offsetHz)} off centre, at the edge of the recorded band.`,
    doNext: 'Tune the receiver nearer to the carrier and record again.',
  },
  clipped: {
    severity: 'warning',
    what: (p) => `${p.percent} % of the values are at the end of the receiver's range.`,
    doNext: 'Turn the gain down or move the remote away, and record again.',
  },
  'foreign-on-top': {
    severity: 'warning',
    what: () => 'Another sender lies on top of this one.',
    doNext: 'Wait until the other sender is silent and record again.',
  },
  'several-senders': {
    severity: 'warning',
    what: () => 'Two senders are about equally strong; which one is the remote cannot be told.',
    doNext: 'Hold the remote close to the receiver and record again.',
  },
  'few-pulses': { severity: 'warning', what: () => 'There are too few pulses to measure.', doNext: again },
  'rate-unknown': {
    severity: 'error',
    what: () => 'The sample rate is not in the name and was not given.',
    doNext: 'Give the sample rate, or name the file like press_433.92M_250k.cu8.',
  },
  'rate-unusable': {
    severity: 'error',
    what: (p) => `A sample rate of ${p.rate} a second cannot be used.`,
    doNext: 'Give the rate in samples per second, from 10 thousand to 100 million.',
  },
  'format-unknown': {
    severity: 'error',
    what: () => 'The sample format is not known.',
    doNext: 'Use a file ending .cu8, .cs8, .cs16 or .cf32, a SigMF pair, or say which format it is.',
  },
  'centre-unknown': {
    severity: 'warning',
    what: () => 'The centre frequency is not known: the carrier is given from the centre only.',
    doNext: 'Give the centre frequency, or put it in the file name.',
  },
  'empty-recording': {
    severity: 'error',
    what: (p) => `The recording has ${p.samples} samples: too few to measure.`,
    doNext: again,
  },
  'cut-sample': {
    severity: 'note',
    what: (p) => `The last ${p.bytes} bytes make no whole sample and were left out.`,
    doNext: 'If the values look wrong, check the sample format.',
  },
  'not-numbers': {
    severity: 'warning',
    what: (p) => `${p.values} values were not numbers and count as zero.`,
    doNext: 'Check that the sample format is right.',
  },
  'parts-dropped': {
    severity: 'note',
    what: (p) => `The recording is long: its quietest ${p.share} % were not kept.`,
    doNext: 'Nothing, unless the press is missing; then record for a shorter time.',
  },
  'other-sender': {
    severity: 'note',
    what: (p) => `Another sender was heard ${khz(p.offsetHz)} from the centre.`,
    doNext: 'Nothing, if the remote was the strongest.',
  },
  'some-clipping': {
    severity: 'note',
    what: (p) => `${p.percent} % of the values are clipped; what is measured here bears it.`,
    doNext: 'Turn the gain down for a cleaner picture.',
  },
  'carrier-wanders': {
    severity: 'warning',
    what: (p) => `The carrier moves by ${khz(p.driftHz)} during the recording.`,
    doNext: 'Check the cell and the board of this remote.',
  },
  'sigmf-unreadable': {
    severity: 'error',
    what: () => 'The SigMF metadata is not readable JSON with a global part.',
    doNext: 'Give format, sample rate and centre frequency by hand.',
  },
  'sigmf-field': {
    severity: 'warning',
    what: (p) => `The SigMF field ${p.field} is missing or has no usable value.`,
    doNext: 'Give the value by hand.',
  },
  'sigmf-datatype': {
    severity: 'error',
    what: (p) => `The SigMF datatype ${p.datatype} is not one this reader knows.`,
    doNext: 'Convert the recording to cu8, ci8, ci16 or cf32.',
  },
  'sigmf-channels': {
    severity: 'error',
    what: (p) => `The recording interleaves ${p.channels} channels.`,
    doNext: 'Write one channel into a file of its own.',
  },
  'sigmf-retuned': {
    severity: 'warning',
    what: () => 'The receiver was retuned during the recording; the first centre frequency is used.',
    doNext: 'Record without retuning.',
  },
}

/** A frequency from `hertz` in words: `12.5 kHz`, sign kept. */
function khz(hertz: string | number | undefined): string {
  return `${Math.round(Number(hertz ?? 0) / 100) / 10} kHz`
}

/** Makes a finding from its code and numbers. */
export function findingOf(code: RemoteFindingCode, params: Params): RemoteFinding {
  const wording = WORDINGS[code]
  return {
    code,
    severity: wording.severity,
    where: {},
    what: wording.what(params),
    doNext: wording.doNext,
    params,
  }
}
