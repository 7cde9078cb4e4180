import type { SameCodes } from '../catalogues.ts'
import type { comparisonWords as english } from '../en/faults.ts'

/** German: Where the rules of the fault comparison come from, what speaks for a class, and what is worth saying of the scans. */
export const comparisonWords: SameCodes<typeof english> = {
  'explanation-source.reset-silence':
    'allgemeine Praxis der Branche 4.5 und 4.6; dass ein Neustart ein Steuergerät verstummen lässt, ist eine Schlussfolgerung',
  'explanation-source.muted-silence': 'ISO 14229-1 Dienst 28; allgemeine Praxis der Branche 4.5 und 4.6',
  'explanation-source.supply-low-supply-codes':
    'allgemeine Praxis der Branche 4.6; Bedeutung der Codes SAE J2012, aus dem Gedächtnis',
  'explanation-source.supply-low-silence': 'allgemeine Praxis der Branche 4.5',
  'explanation-source.key-refused':
    'allgemeine Praxis der Branche 1.2.13 und 4.6; Bedeutung der Codes SAE J2012, aus dem Gedächtnis',
  'explanation-source.immobiliser-teaching':
    'allgemeine Praxis der Branche 1.2.13 und 4.6; Bedeutung der Codes SAE J2012, aus dem Gedächtnis',
  'explanation-source.battery-off-steering':
    'übliche Praxis, keine Quelle; Bedeutung des Codes SAE J2012, aus dem Gedächtnis',

  'evidence.recorded': '{recording}, {seconds} s',
  'evidence.recorded-detail': '{recording}, {seconds} s, {detail}',
  'evidence.recorded.at': '{recording}, {time}',
  'evidence.recorded-detail.at': '{recording}, {time}, {detail}',
  'evidence.session-opened': 'Anlernsitzung geöffnet {at}',
  'evidence.key-refused': 'Schlüssel abgelehnt {at}',
  'evidence.supply-fell': 'Spannung fiel auf {minimum}, Untergrenze {floor}',
  'evidence.noted': '{words}',
  'evidence.other-failure-type': '{phase}: derselbe Code mit anderer Fehlerart',
  'evidence.reported-as': '{phase}: gemeldet als {raw}',

  'fault-finding.no-before-scan':
    'Es gibt keinen Scan von vor der Arbeit: Kein Fehler lässt sich als neu oder alt bezeichnen.',
  'fault-finding.unit-not-read-before':
    '{unit} wurde vor der Arbeit nicht ausgelesen: Die Fehler darin lassen sich nicht vergleichen.',
  'fault-finding.unit-not-read-again': '{unit} wurde vor der Arbeit ausgelesen und seither nicht mehr.',
  'fault-finding.cleared-not-retested': '{unit}: {codes} gelöscht, noch nicht wieder getestet.',
  'fault-finding.fault-code-unreadable':
    '„{code}“ ist kein Fehlercode in der Form von SAE J2012; er wird verglichen, wie er geschrieben ist.',
  'fault-finding.units-perhaps-one':
    '„{unit}“ und „{other}“ können ein Steuergerät sein; sie werden als zwei verglichen.',
  'fault-finding-do.no-before-scan':
    'In der Übergabe angeben. Nächstes Mal jedes Steuergerät scannen, bevor etwas angefasst wird.',
  'fault-finding-do.unit-not-read-before': 'In der Übergabe angeben.',
  'fault-finding-do.unit-not-read-again': 'Dieses Steuergerät erneut scannen.',
  'fault-finding-do.cleared-not-retested':
    'Zündung ausschalten, das Fahrzeug in den Ruhezustand kommen lassen, einschalten und erneut scannen.',
  'fault-finding-do.cleared-not-retested.cycled':
    'Die Tests laufen lassen (fahren oder warten, wie das Fahrzeug es braucht) und erneut scannen.',
  'fault-finding-do.fault-code-unreadable': 'Noch einmal aus der Quelle ablesen.',
  'fault-finding-do.units-perhaps-one': 'Angeben, ob sie eines sind.',

  'report-finding.no-code-found': 'Weder ein Fehlercode noch „kein Fehler“ wurde darin gefunden.',
  'report-finding.line-too-long':
    'Die Zeile hat {length, plural, one {# Zeichen} other {# Zeichen}}; nur die ersten {read} wurden gelesen.',
  'report-finding.report-too-long':
    'Der Bericht hat {length, plural, one {# Zeichen} other {# Zeichen}}; nur die ersten {read} wurden gelesen.',
  'report-finding-do.no-code-found':
    'Die Fehler eintippen oder den Bericht dem Auftrag als Datei hinzufügen.',
  'report-finding-do.line-too-long': 'Den Rest selbst ansehen.',
  'report-finding-do.report-too-long': 'In Teile zerlegen.',
}
