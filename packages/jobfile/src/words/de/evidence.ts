import type { SameCodes } from '../catalogues.ts'
import type {
  explanationWords as englishExplanations,
  faultWords as englishFaults,
  readingWords as englishReadings,
} from '../en/evidence.ts'

/** German: Where readings come from and when they were taken. */
export const readingWords: SameCodes<typeof englishReadings> = {
  'vin-source.glass': 'Scheibe',
  'vin-source.plate': 'Schild',
  'vin-source.document': 'Dokument',
  'vin-source.bus': 'Fahrzeug selbst',
  'battery.flooded': 'Blei-Säure-Batterie (Nassbatterie)',
  'battery.efb': 'verstärkte Nassbatterie (EFB)',
  'battery.agm': 'Vliesbatterie (AGM)',
  'battery.gel': 'Gelbatterie',
  'battery.lithium': 'Lithiumbatterie',
  'battery.unknown': 'Bauart der Batterie nicht bekannt',
  'during.rest': 'in Ruhe',
  'during.session': 'während der Sitzung',
  'during.after': 'nach der Arbeit',
  'rule.replace-all': '„Alle ersetzen“: Die Liste der angenommenen Schlüssel sollte neu geschrieben werden',
  'rule.append': 'Schlüssel hinzufügen: Die neuen Schlüssel sollten zur Liste hinzukommen',
  'rule.append-drop-oldest':
    'Schlüssel hinzufügen: Die neuen Schlüssel sollten hinzukommen, und eine volle Liste verliert ihren ältesten Eintrag',
  'rule.numbered-slots': 'Nummerierte Plätze: Jeder Schlüssel sollte auf einen eigenen Platz kommen',
  'rule.unknown': 'Die Anlernregel war nicht bekannt und wurde als „alle ersetzen“ behandelt',
  'break.supply': 'die Spannung fiel aus',
  'break.link': 'die Verbindung fiel aus',
  'break.time-out': 'die Zeit lief ab',
  'break.key-refused': 'ein Schlüssel wurde abgelehnt',
  'break.ignition-off': 'die Zündung ging aus',
  'break.operator': 'die Fachkraft brach ab',
  'break.unknown': 'der Grund ist nicht bekannt',
}

/** German: Why the work may have raised a fault, by the rule of the fault comparison. */
export const explanationWords: SameCodes<typeof englishExplanations> = {
  'explanation.reset-silence':
    'Die Arbeit startete das Steuergerät neu, das dieser Code nennt; es schwieg einen Moment.',
  'explanation.muted-silence':
    'Die Arbeit wies das Steuergerät, das dieser Code nennt, an, eine Weile zu schweigen.',
  'explanation.supply-low-supply-codes': 'Die Spannung war während der Arbeit niedrig oder unterbrochen.',
  'explanation.supply-low-silence':
    'Die Spannung war während der Arbeit niedrig oder unterbrochen; Steuergeräte verstummen dann eines nach dem anderen.',
  'explanation.key-refused': 'Während der Arbeit wurde ein Schlüssel gezeigt, den das Fahrzeug nicht kannte.',
  'explanation.immobiliser-teaching': 'Die Wegfahrsperre war während der Arbeit in ihrer Sitzung.',
  'explanation.battery-off-steering':
    'Die Batterie war abgeklemmt; die Lenkung findet ihre Mitte wieder, wenn das Lenkrad von Anschlag zu Anschlag gedreht wird.',
}

/** German: Fault classes for a customer: a heading, and what may be said of them and no more. */
export const faultWords: SameCodes<typeof englishFaults> = {
  'phase.before': 'vor der Arbeit',
  'phase.after': 'nach der Arbeit',
  'phase.cleared': 'nach dem Löschen',
  'phase.cycled': 'nach Zündung aus und ein',
  'fault-class.there-before-still': 'Vor der Arbeit da und noch da',
  'fault-class.there-before-gone': 'Vor der Arbeit da, im letzten Scan nicht gemeldet',
  'fault-class.there-before-back': 'Vor der Arbeit da, gelöscht und wieder da',
  'fault-class.raised-by-work': 'Durch die Arbeit ausgelöst',
  'fault-class.new-unexplained': 'Neu und nicht erklärt',
  'fault-class.permanent': 'Permanent',
  'fault-class.not-comparable': 'Konnte nicht verglichen werden',
  'fault-means.there-before-still':
    'Das Fahrzeug meldete diese, bevor irgendetwas angefasst wurde, und wieder im letzten Scan. Die Arbeit hat sie nicht verursacht.',
  'fault-means.there-before-gone':
    'Das Fahrzeug meldete diese, bevor irgendetwas angefasst wurde, und nicht im letzten Scan. Dass ein Code verschwunden ist, beweist nicht, dass seine Ursache behoben ist.',
  'fault-means.there-before-back':
    'Das Fahrzeug meldete diese, bevor irgendetwas angefasst wurde. Sie wurden gelöscht und kamen wieder.',
  'fault-means.raised-by-work':
    'Diese waren vorher nicht da. Sie kamen mit der Arbeit, aus dem angegebenen Grund. Die letzte Spalte sagt, ob sie verschwunden sind.',
  'fault-means.new-unexplained':
    'Diese waren vor der Arbeit nicht da, und das Protokoll enthält keinen Grund für sie. Sie können mit der Arbeit zu tun haben oder auch nicht.',
  'fault-means.permanent':
    'Nur das Fahrzeug selbst löscht diese, nachdem seine eigenen Tests bestanden sind. Kein Gerät kann sie löschen (SAE J1979, Dienst 0A).',
  'fault-means.not-comparable':
    'Das Steuergerät wurde nicht sowohl vor als auch nach der Arbeit ausgelesen oder zeigte zu wenig. Über Veränderungen lässt sich nichts sagen.',
  'claim.failing-now': 'beim Scan aktiv',
  'claim.pending': 'vorläufig',
  'claim.confirmed': 'bestätigt',
  'claim.failed-this-cycle': 'in diesem Zyklus aufgetreten',
  'claim.failed-since-clear': 'seit dem Löschen aufgetreten',
  'claim.warning-lamp': 'fordert seine Warnleuchte an',
  'claim.permanent': 'auf der Liste der permanenten Fehler',
  'claim.not-tested-since-clear': 'seit dem Löschen nicht getestet',
  'claim.not-tested-this-cycle': 'in diesem Zyklus nicht getestet',
  'claim.unit-not-read': 'Steuergerät nicht ausgelesen',
  'claim.absent': 'nicht gemeldet',
  'claim.absent-but-untested': 'nicht gemeldet, aber noch nicht getestet',
  'claim.none': 'gemeldet',
}
