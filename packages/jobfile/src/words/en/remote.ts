/**
 * Are two remotes of one radio family: the verdict, its reasons, and what was met while measuring. Frequencies come
 * formatted with their unit; `side` is original, new or both.
 */
export const remoteWords = {
  'remote-verdict.same': 'Same radio family',
  'remote-verdict.different': 'Different radio',
  'remote-verdict.unsure': 'Not sure',

  'remote-reason.modulation':
    '{same, select, yes {Both send by {original}.} other {The original sends by {original}, the new one by {new}.}}',
  'remote-reason.modulation-unknown': 'How it sends is not clear: original {original}, new {new}.',
  'remote-reason.carrier': 'The carriers are {difference} apart: original {original}, new {new}.',
  'remote-reason.carrier-unknown':
    'The centre frequency of a recording is not known, so the carriers cannot be compared.',
  'remote-reason.carrier-drifted':
    'The new carrier is off by {difference}. A narrow receiver in the car may hear it from near only, although its cell is fresh.',
  'remote-reason.timing':
    '{unmatched, select, both {Each has pulse lengths that the other has not} other {Pulse lengths differ by {percent} %}}: original {original} µs, new {new} µs.',
  'remote-reason.timing-part':
    'Only a part of the pulse lengths can be compared: original {original} µs, new {new} µs.',
  'remote-reason.deviation': 'The frequency shifts differ by {percent} %: original {original}, new {new}.',
  'remote-reason.symbol-rate':
    'The symbol rates differ by {percent} %: original {original}, new {new} a second.',
  'remote-reason.other-sender-matches':
    'A weaker sender in one recording fits the other recording: the strongest may not have been the remote.',
  'remote-reason.no-sender': '{side, select, original {Original} other {New remote}}: no sender was found.',
  'remote-reason.weak':
    '{side, select, original {Original} other {New remote}}: only {snr} dB above the noise; 6 dB are needed.',
  'remote-reason.off-centre':
    '{side, select, original {Original} other {New remote}}: the carrier lies at the edge of what was recorded, {offset} off centre.',
  'remote-reason.clipped':
    '{side, select, original {Original} other {New remote}}: {percent} % of the recording is overdriven.',
  'remote-reason.foreign-on-top':
    '{side, select, original {Original} other {New remote}}: another sender lies on top of it.',
  'remote-reason.several-senders':
    '{side, select, original {Original} other {New remote}}: two senders are about equally strong.',
  'remote-reason.few-pulses':
    '{side, select, original {Original} other {New remote}}: too few pulses to measure.',

  'remote-finding.no-sender': 'No sender was found. Record again and hold the button for two seconds.',
  'remote-finding.weak':
    'Only {snrDb} dB above the noise; 6 dB are needed. Bring the remote nearer and record again.',
  'remote-finding.off-centre':
    'The carrier lies {offset} off centre. Tune the receiver nearer to it and record again.',
  'remote-finding.clipped':
    '{percent} % of the values are overdriven. Turn the gain down or move away, and record again.',
  'remote-finding.foreign-on-top': 'Another sender lies on top. Wait until it is silent and record again.',
  'remote-finding.several-senders':
    'Two senders are about equally strong. Hold the remote close to the receiver and record again.',
  'remote-finding.few-pulses': 'Too few pulses to measure. Hold the button for two seconds and record again.',
  'remote-finding.rate-unknown': 'The sample rate is not known. Give it below.',
  'remote-finding.rate-unusable': 'A sample rate of {rate} a second cannot be used. Check it below.',
  'remote-finding.format-unknown': 'The sample format is not known. Choose it below.',
  'remote-finding.centre-unknown':
    'The centre frequency is not known, so the carrier is given from the centre only.',
  'remote-finding.empty-recording': 'The recording has {samples} samples: too few to measure.',
  'remote-finding.cut-sample':
    'The last bytes make no whole sample and were left out. If the values look wrong, check the sample format.',
  'remote-finding.not-numbers': '{values} values were no numbers. Check the sample format.',
  'remote-finding.parts-dropped':
    'The recording is long: its quietest {share} % were left out. If the press is missing, record shorter.',
  'remote-finding.other-sender':
    'Another sender was heard {offset} from the centre. It does not matter if the remote was the strongest.',
  'remote-finding.some-clipping':
    '{percent} % of the values are overdriven; what is measured here is not harmed by it.',
  'remote-finding.carrier-wanders':
    'The carrier moves by {drift} within the recording. Check the cell and the board of this remote.',
  'remote-finding.sigmf-unreadable': 'The SigMF file cannot be read. Give the values below.',
  'remote-finding.sigmf-field': 'The SigMF file does not say {field}. Give the value below.',
  'remote-finding.sigmf-datatype':
    'The SigMF sample format {datatype} is not known here. Convert the recording.',
  'remote-finding.sigmf-channels':
    'The recording has {channels} channels in one file. Write one channel into a file of its own.',
  'remote-finding.sigmf-retuned':
    'The receiver was retuned while recording; its first centre frequency is used. Better record again.',
} as const
