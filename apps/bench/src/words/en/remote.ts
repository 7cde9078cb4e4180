/** Is the new remote of the same radio family as the original? */
export const remoteWords = {
  'remote.title': 'Is the new remote of the same radio family?',
  'remote.why':
    'A remote of another radio starts the car, and its buttons do nothing. Two short recordings tell before it is spent.',
  'remote.open': 'Compare two radio recordings',
  'remote.how':
    'Record both remotes with any general receiver: the same receiver, one sitting, a button held for two seconds. Only physical values are measured. What is sent is neither read nor shown.',
  'remote.privacy':
    'The bench keeps no recording: its samples are gone once measured. The files stay where your receiver wrote them; delete them there.',
  'remote.close': 'Close',
  'remote.original': 'Original remote',
  'remote.new': 'New remote',
  'remote.pick': 'Choose its recording',
  'remote.pick-again': 'Choose another',
  'remote.pick.hint': '.cu8, .cs8, .cs16 or .cf32; or both files of a SigMF pair.',
  'remote.pick.no-samples':
    '{name} only describes a recording. Choose it together with the file of its samples (.sigmf-data).',
  'remote.pick.not-recording':
    '{name} is no radio recording. Choose the file your receiver wrote, or both files of a SigMF pair.',
  'remote.forget': 'Take away',
  'remote.measuring': 'Measuring {name}',
  'remote.measured':
    '{name}, {seconds} at {rate} samples a second{centre, select, none {} other {, centre {centre}}}',
  'remote.failed': 'Measuring stopped: {problem}',
  'remote.ask.change': 'Read it with other values',
  'remote.rate': 'Samples a second',
  'remote.rate.unit': 'thousand',
  'remote.centre': 'Centre frequency',
  'remote.centre.hint': 'Without it the carriers cannot be compared.',
  'remote.format': 'Sample format',
  'remote.format.cu8': '8 bit, unsigned (cu8)',
  'remote.format.cs8': '8 bit, signed (cs8)',
  'remote.format.cs16': '16 bit (cs16)',
  'remote.format.cs16be': '16 bit, big end first',
  'remote.format.cf32': '32 bit float (cf32)',
  'remote.format.cf32be': '32 bit float, big end first',
  'remote.measure': 'Measure it',

  'remote.verdict.same.next':
    'Its buttons can work once it is taught. The radio alone does not prove that the car accepts it.',
  'remote.verdict.different.next':
    'Do not spend it yet: its buttons most likely do nothing at this car. Compare the part numbers first.',
  'remote.verdict.unsure.next':
    'Record both again: the same receiver, one sitting, close by, a button held for two seconds.',
  'remote.points.same': 'Fits',
  'remote.points.unsure': 'Leaves it open',
  'remote.points.different': 'Differs',
  'remote.reasons': 'Why',
  'remote.drift': 'Weak range although the cell is fresh?',

  'remote.values': 'Measured',
  'remote.value': 'Value',
  'remote.value.carrier': 'Carrier',
  'remote.value.modulation': 'Keying',
  'remote.value.deviation': 'Shift either way',
  'remote.value.rate': 'Symbols a second',
  'remote.value.pulses': 'Pulses, µs',
  'remote.value.gaps': 'Gaps, µs',
  'remote.value.burst': 'Burst',
  'remote.value.repeats': 'Bursts; repeats',
  'remote.value.width': 'Width (99 % of power)',
  'remote.value.snr': 'Above the noise',
  'remote.value.clipped': 'Overdriven',
  'remote.modulation.OOK': 'on-off keying',
  'remote.modulation.2-FSK': 'two tones (2-FSK)',
  'remote.modulation.unsure': 'not clear',

  'remote.pictures': 'Pictures',
  'remote.pictures.content':
    'Drawn so that no picture can give back what was sent: peaks are held over whole groups of pulses.',
  'remote.spectrum': 'Spectrum while sending',
  'remote.spectrum.key':
    'Frequency runs to the right, strength upwards. Thin line: the air while the remote is silent. Dashed: carrier or tones.',
  'remote.spectrum.apart': 'They lie too far apart for one scale: each has its own.',
  'remote.spectrum.says': '{name}: carrier {carrier}, {width} wide, {snr} dB above the noise.',
  'remote.waterfall': 'Waterfall',
  'remote.waterfall.key': 'Time runs to the right, frequency upwards; the stronger, the fuller the colour.',
  'remote.waterfall.range': '{low} to {high}',
  'remote.waterfall.says':
    '{name}: {bursts, plural, one {# burst} other {# bursts}} in {seconds} around {carrier}.',
  'remote.burst': 'One burst of each, begun together',
  'remote.burst.key':
    'Time runs to the right, strength upwards. The outline of the longest burst; the gaps inside it are closed over.',
  'remote.burst.says': '{name}: {length} long.',
  'remote.pulse': 'Average pulse of each, begun together',
  'remote.pulse.key':
    'Time runs to the right, strength upwards. Sixteen pulses or more laid over each other.',
  'remote.pulse.says': '{name}: mean of {pulses} pulses; usual lengths {lengths} µs.',
  'remote.pulse.none': '{name}: none, because two tones have no pulses or there are too few.',

  'remote.bands': 'What is permitted where the car drives',
  'remote.bands.note': 'Information only; local law decides, and no verdict depends on it.',
  'remote.region': 'Region',
  'remote.region.europe': 'Europe',
  'remote.region.north-america': 'North America',
  'remote.region.japan': 'Japan',
  'remote.region.south-korea': 'South Korea',
  'remote.region.china': 'China',
  'remote.region.australia-new-zealand': 'Australia, New Zealand',
  'remote.band.usual': 'Remotes are usual here',
  'remote.band.limit': 'Limit',
  'remote.band.range': '{low} to {high} MHz',
  'remote.band.source': 'Source: {source}',
  'remote.band.memory': 'From memory, not checked against a source',
  'remote.band.none': '{carrier} lies in no band known here for this region.',
  'remote.band.field': 'At {carrier} that is {microvolts} µV/m ({decibels} dBµV/m) at 3 m.',

  'remote.keep': 'Keep the result in the job',
  'remote.keep.note': 'Verdict, reasons and the main values; no recording and no picture.',
  'remote.key.original': 'The original is key',
  'remote.key.new': 'The new remote is key',
  'remote.record': 'Record the result',
  'remote.recorded': 'Recorded.',

  'fact.remote-compared':
    'Radio of {fresh, select, none {the new remote} other {key {fresh}}} against {original, select, none {the original} other {key {original}}}: {verdict}',
} as const
