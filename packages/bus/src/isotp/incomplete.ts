/** @module Why a transfer did not become a message. */

/** Why a transfer did not become a message. */
export type Incomplete =
  | 'sequence-missing'
  | 'sequence-repeated'
  | 'new-transfer'
  | 'short-frame'
  | 'timeout'
  | 'overflow'
  | 'recording-ended'
  | 'segments-lost'
  | 'too-long'

const INCOMPLETE_WORDS: Readonly<Record<Incomplete, string>> = {
  'sequence-missing': 'a consecutive frame is missing or out of order',
  'sequence-repeated': 'a consecutive frame came twice',
  'new-transfer': 'a new message began before the last one was complete',
  'short-frame': 'a consecutive frame is shorter than the first frame',
  timeout: 'the pause before a consecutive frame was longer than N_Cr (1000 ms)',
  overflow: 'the receiver refused the message (flow control overflow)',
  'recording-ended': 'the recording ended before the message was complete',
  'segments-lost': 'network segments of the message are missing',
  'too-long': 'the stated length is not believable',
}

/** Says in words why a transfer did not become a message. */
export function explainIncomplete(reason: Incomplete): string {
  return INCOMPLETE_WORDS[reason]
}
