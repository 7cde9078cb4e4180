import { recordingServiceWords } from './recording-services.ts'
import { recordingViewWords } from './recording-view.ts'

/** Recordings and faults. */
export const recordingWords = {
  ...recordingViewWords,
  ...recordingServiceWords,

  'recording.pick': 'Import a recording',
  'recording.pick.hint': 'Or drop it anywhere on this page. It is read on this device.',
  'recording.drop': 'Drop the recording',
  'recording.title': 'Recording {name}',
  'recording.reading': 'Reading the recording',
  'recording.looking': 'Looking at what kind of recording this is.',
  'recording.read-so-far': '{read} of {whole} read',
  'recording.frames-so-far': '{count, plural, =0 {no frame yet} one {# frame} other {# frames}}',
  'recording.messages-so-far': '{count, plural, =0 {no message yet} one {# message} other {# messages}}',
  'recording.read-percent': '{percent} per cent read',
  'recording.cancel.hint': 'Nothing is kept before you say so.',
  'recording.failed': 'Reading stopped: {problem} Nothing was recorded.',
  'recording.unknown': 'This file cannot be read as a recording: {reason}. Nothing was recorded.',
  'recording.format': 'Format: {format}, because {reason}.',
  'recording.size': 'Size',
  'recording.frames': 'Frames',
  'recording.messages': 'Messages',
  'recording.messages.of': '{count, number}{incomplete, plural, =0 {} other {, # more incomplete}}',
  'recording.units': 'Units that answered',
  'recording.faults': 'Faults reported',
  'recording.faults.of':
    '{units, plural, =0 {no fault list in it} one {{faults} by # unit} other {{faults} by # units}}',
  'recording.vin': 'VIN heard:',
  'recording.vin.same': 'the same as on record.',
  'recording.vin.differs': 'Not the one on record ({vin}): recording it will stand against it.',
  'recording.not-vin':
    'Unit {unit} answered "{text}" for a VIN. It is not well formed and is not recorded as one.',
  'recording.clean': 'Every line could be read.',
  'recording.findings': '{count, plural, one {# thing worth a look} other {# things worth a look}}',
  'recording.left-out':
    '{count, plural, one {# place could not be read and is left out.} other {# places could not be read and are left out.}}',
  'recording.left-out.first': 'First at {where}: {what}.',
  'recording.more-findings': '{count, plural, one {and # more} other {and # more}}',
  'recording.again': 'This very recording is already on record for this job.',
  'recording.which': 'Which scan is this?',
  'recording.which.hint': 'You decide: nothing in the file says whether the work had been done.',
  'recording.no-scan': 'It holds no fault list, so it is kept as a recording only.',
  'recording.which.before': 'Before the work',
  'recording.which.after': 'After the work',
  'recording.which.cleared': 'After clearing',
  'recording.which.cycled': 'After an ignition cycle',
  'recording.which.keep': 'Only keep it',
  'recording.kept-as-is':
    'What is kept: its messages, with the content of security services blacked out, and the hash of the file. The file itself stays where it is.',
  'recording.record': 'Record it',
  'recording.leave': 'Leave it',
  'strip.what':
    '{length}, {messages, plural, one {# message} other {# messages}}, {units, plural, one {# unit} other {# units}}',
  'strip.events': '{count, plural, =0 {No event} one {# event} other {# events}} along the recording',
  'event.session-opened': '{count, plural, one {# session opened} other {# sessions opened}}',
  'event.reset': '{count, plural, one {# restart} other {# restarts}}',
  'event.muted': '{count, plural, one {# unit silenced} other {# units silenced}}',
  'event.faults-cleared': '{count, plural, one {# clearing} other {# clearings}}',
  'event.refused': '{count, plural, one {# refusal} other {# refusals}}',
  'event.supply-low': '{count, plural, one {# low supply} other {# low supplies}}',
} as const
