import type { SameCodes } from '../catalogues.ts'
import type { policyWords as english } from '../en/policy.ts'

/** German: What a policy pack asks for by code: situations, documents, questions. */
export const policyWords: SameCodes<typeof english> = {
  'situation.owner': 'Die Person, der das Fahrzeug gehört, ist hier',
  'situation.leaseholder': 'Nutzung eines Leasing-, finanzierten oder Firmenfahrzeugs',
  'situation.trader': 'Ein Betrieb, für seine Kundschaft oder aus dem Bestand',
  'situation.fleet': 'Eine Flotte oder Vermietung',
  'situation.no-papers': 'Niemand kann Papiere zeigen',

  'policy-document.identity-card': 'Personalausweis',
  'policy-document.passport': 'Reisepass',
  'policy-document.driving-licence': 'Führerschein',
  'policy-document.residence-permit': 'Aufenthaltstitel',
  'policy-document.registration-certificate': 'Zulassungsbescheinigung',
  'policy-document.ownership-certificate': 'Zweiter Teil der Zulassungsbescheinigung',
  'policy-document.title': 'Eigentumsurkunde des Fahrzeugs',
  'policy-document.keeper-record':
    'Auszug zur eingetragenen Halterschaft (zeigt, wer das Fahrzeug hält, nicht wem es gehört)',
  'policy-document.purchase-contract': 'Kaufvertrag oder Rechnung über den Kauf',
  'policy-document.insurance-policy': 'Versicherungsschein für dieses Fahrzeug',
  'policy-document.lease-contract': 'Leasing- oder Finanzierungsvertrag',
  'policy-document.owner-letter': 'Schreiben der Person, der es gehört',
  'policy-document.work-order': 'Unterschriebener Arbeitsauftrag',
  'policy-document.trade-registration': 'Gewerbeanmeldung',
  'policy-document.fleet-letter': 'Schreiben der Flotte',
  'policy-document.rental-contract': 'Mietvertrag',
  'policy-document.court-order': 'Gerichtsbeschluss',
  'policy-document.police-confirmation': 'Bestätigung der Polizei',
  'policy-document.registry-confirmation': 'Bestätigung der Zulassungsstelle',

  'policy-asks.authority.situation': 'Wer möchte den Schlüssel?',
  'policy-asks.authority.document-valid':
    'Ist das Ausweisdokument gültig und nicht entwertet (keine Löcher, keine abgeschnittene Ecke)?',
  'policy-asks.authority.person-is-holder': 'Gehört das Ausweisdokument der Person, die hier ist?',
  'policy-asks.authority.vin-on-paper': 'Stimmt die VIN auf dem Papier mit dem Fahrzeug überein?',
  'policy-asks.authority.owner-asked':
    'Hat zugestimmt, wem das Fahrzeug gehört (Leasinggesellschaft, Bank, Arbeitgeber)?',
  'policy-asks.authority.order-names-car': 'Nennt der Auftrag diese VIN, den Ort und wer ihn erteilt?',
  'policy-asks.authority.order-called-back':
    'Wurde der Auftrag durch Anruf unter einer Nummer bestätigt, die nicht mit ihm kam?',
  'policy-asks.authority.trade-known': 'Ist der Betrieb bekannt oder seine Anmeldung geprüft?',
  'policy-asks.authority.police-present': 'Ist die Polizei hier, oder hat sie bestätigt?',
  'policy-asks.authority.asked-second-person': 'Hat eine zweite Person der Firma der Arbeit zugestimmt?',
  'policy-asks.authority.no-copy-kept':
    'Wurde nur notiert, was gesehen wurde, ohne eine Kopie des Ausweisdokuments aufzubewahren?',
  'policy-asks.authority.register-entry':
    'Ist die Arbeit in das Register eingetragen, das die Regelung verlangt?',
  'policy-asks.authority.form-signed':
    'Hat die Kundschaft das Formular zu Identität und Berechtigung unterschrieben?',
  'policy-asks.contract.informed-before':
    'Hat die Kundschaft Preis, Arbeit und Bedingungen vor der Zustimmung erhalten?',
  'policy-asks.contract.cancelling-explained': 'Wurde das Widerrufsrecht erklärt, und wann es endet?',
  'policy-asks.contract.asked-to-start-now':
    'Hat die Kundschaft verlangt, sofort zu beginnen, innerhalb der Widerrufsfrist?',
  'policy-asks.contract.urgent-visit-asked-for':
    'Hat die Kundschaft um diesen Besuch als dringende Reparatur gebeten?',
  'policy-asks.contract.made-to-order':
    'Wurde der Kundschaft gesagt, dass ein für dieses Fahrzeug gefertigter Schlüssel nicht zurückgegeben werden kann?',
  'policy-asks.contract.paper-copy-given': 'Hat die Kundschaft die Informationen auf Papier oder als Datei?',
  'policy-asks.site.drive': 'Was treibt das Fahrzeug an?',
  'policy-asks.site.place': 'Wo steht das Fahrzeug?',
  'policy-asks.site.alone': 'Ist jemand bei Ihnen?',
  'policy-asks.site.inside': 'Sind Kinder oder Tiere im Fahrzeug oder in der Nähe?',

  'site.drive.combustion': 'Nur Benzin, Diesel oder Gas',
  'site.drive.hybrid': 'Hybridantrieb',
  'site.drive.electric': 'Elektrisch',
  'site.drive.unknown': 'Nicht bekannt',
  'site.place.open-air': 'Im Freien, abseits der Straße',
  'site.place.roadside': 'Am Straßenrand',
  'site.place.indoors': 'In einem Raum oder unter einem Dach',
  'site.alone.alone': 'Ich arbeite allein',
  'site.alone.not-alone': 'Jemand ist bei mir',
  'site.inside.nobody': 'Niemand',
  'site.inside.child-or-animal-near': 'Ja, darin oder in der Nähe',

  'policy-basis.source': 'Quelle gelesen',
  'policy-basis.memory': 'aus dem Gedächtnis, prüfen',
  'policy-basis.common-practice': 'übliche Praxis, keine Quelle',
  'policy-basis.firm': 'eigene Regel der Firma',
}
