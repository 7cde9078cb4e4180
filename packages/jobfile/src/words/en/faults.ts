import type { Evidence, ExplanationRuleId, FaultFindingCode, ScanReportFindingCode } from '@shearline/keywork'

/** Where the rules of the fault comparison come from, what speaks for a class, and what is worth saying of the scans. */
export const comparisonWords = {
  'explanation-source.reset-silence':
    'general trade practice 4.5 and 4.6; that a restart silences a unit is an inference',
  'explanation-source.muted-silence': 'ISO 14229-1 service 28; general trade practice 4.5 and 4.6',
  'explanation-source.supply-low-supply-codes': 'general trade practice 4.6; code meanings SAE J2012, memory',
  'explanation-source.supply-low-silence': 'general trade practice 4.5',
  'explanation-source.key-refused': 'general trade practice 1.2.13 and 4.6; code meanings SAE J2012, memory',
  'explanation-source.immobiliser-teaching':
    'general trade practice 1.2.13 and 4.6; code meanings SAE J2012, memory',
  'explanation-source.battery-off-steering': 'common practice, no source; code meaning SAE J2012, memory',

  'evidence.recorded': '{recording}, {seconds} s',
  'evidence.recorded-detail': '{recording}, {seconds} s, {detail}',
  'evidence.recorded.at': '{recording}, {time}',
  'evidence.recorded-detail.at': '{recording}, {time}, {detail}',
  'evidence.session-opened': 'teaching session opened {at}',
  'evidence.key-refused': 'key refused {at}',
  'evidence.supply-fell': 'supply fell to {minimum}, floor {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase}: the same code with another failure type',
  'evidence.reported-as': '{phase}: reported as {raw}',

  'fault-finding.no-before-scan': 'There is no scan from before the work: no fault can be called new or old.',
  'fault-finding.unit-not-read-before': '{unit} was not read before the work: its faults cannot be compared.',
  'fault-finding.unit-not-read-again': '{unit} was read before the work and not since.',
  'fault-finding.cleared-not-retested': '{unit}: {codes} cleared, not yet re-tested.',
  'fault-finding.fault-code-unreadable':
    '"{code}" is not a fault code in the form of SAE J2012; it is compared as written.',
  'fault-finding.units-perhaps-one':
    '"{unit}" and "{other}" may be one control unit; they are compared as two.',
  'fault-finding-do.no-before-scan':
    'Say so in the handover. Next time scan every unit before anything is touched.',
  'fault-finding-do.unit-not-read-before': 'Say so in the handover.',
  'fault-finding-do.unit-not-read-again': 'Scan this unit again.',
  'fault-finding-do.cleared-not-retested':
    'Switch the ignition off, let the car sleep, switch it on and scan again.',
  'fault-finding-do.cleared-not-retested.cycled':
    'Let the tests run (drive, or wait as the car wants) and scan again.',
  'fault-finding-do.fault-code-unreadable': 'Read it again from the source.',
  'fault-finding-do.units-perhaps-one': 'Say whether they are one.',

  'report-finding.no-code-found': 'No trouble code and no "no fault" was found in it.',
  'report-finding.line-too-long':
    'The line has {length, plural, one {# character} other {# characters}}; only the first {read} were read.',
  'report-finding.report-too-long':
    'The report has {length, plural, one {# character} other {# characters}}; only the first {read} were read.',
  'report-finding-do.no-code-found': 'Type the faults in, or add the report to the job as a file.',
  'report-finding-do.line-too-long': 'Look at the rest of it yourself.',
  'report-finding-do.report-too-long': 'Cut it into parts.',
} as const satisfies Record<
  | `explanation-source.${ExplanationRuleId}`
  | `evidence.${Evidence['code'] | 'recorded.at' | 'recorded-detail.at'}`
  | `fault-finding.${FaultFindingCode}`
  | `fault-finding-do.${FaultFindingCode | 'cleared-not-retested.cycled'}`
  | `report-finding.${ScanReportFindingCode}`
  | `report-finding-do.${ScanReportFindingCode}`,
  string
>
