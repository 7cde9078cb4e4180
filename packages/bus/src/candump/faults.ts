/** @module Why a line of candump text is not a frame. */

/** Why a line is not a frame. */
export type LineFault =
  | 'empty'
  | 'comment'
  | 'time'
  | 'cut'
  | 'channel'
  | 'id-digits'
  | 'id-range'
  | 'odd-nibbles'
  | 'not-hex'
  | 'too-long-data'
  | 'fd-length'
  | 'remote-junk'
  | 'length-differs'
  | 'junk'
  | 'can-xl'

const WORDS: Readonly<Record<LineFault, string>> = {
  empty: 'the line is empty',
  comment: 'the line is a comment',
  time: 'the time stamp is not a number',
  cut: 'the line is cut before its data',
  channel: 'the channel name is missing or longer than 15 characters',
  'id-digits': 'the identifier has neither 3 nor 8 hex digits',
  'id-range': 'the identifier is out of range',
  'odd-nibbles': 'the data has an odd number of hex digits',
  'not-hex': 'the data is not hexadecimal',
  'too-long-data': 'a classic frame holds more than 8 data bytes',
  'fd-length': 'the data length is none that CAN FD knows',
  'remote-junk': 'a remote frame (R) is followed by data',
  'length-differs': 'the stated length differs from the bytes shown',
  junk: 'there is more text after the frame',
  'can-xl': 'the frame is CAN XL, which is not read',
}

/** Says in words what is wrong with a line. */
export function explain(fault: LineFault): string {
  return WORDS[fault]
}
