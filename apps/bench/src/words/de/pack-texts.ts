import type { SameCodes } from '@shearline/jobfile'
import type { packTextWords as english } from '../en/pack-texts.ts'

export const packTextWords: SameCodes<typeof english> = {
  'pack-text.neutral': 'neutrale Vorgabe',
  'pack-text.example-eu': 'Beispiel: Europäische Union, nach deutschem Recht',
  'pack-text.example-uk': 'Beispiel: Vereinigtes Königreich',
  'pack-text.example-us': 'Beispiel: Vereinigte Staaten',
  'pack-text.anywhere': 'überall',
  'pack-text.eu-germany': 'Europäische Union (Deutschland)',
  'pack-text.uk': 'Vereinigtes Königreich',
  'pack-text.us': 'Vereinigte Staaten (je nach Bundesstaat verschieden)',
  'pack-text.common-practice': 'üblich so; prüfen Sie Ihr Recht',
  'pack-text.eu-papers':
    'Richtlinie 1999/37/EG, Artikel 3 und 4: Zulassungsbescheinigung in einem oder zwei Teilen; Verordnung (EU) 2018/858, Anhang X, geändert durch die Delegierte Verordnung (EU) 2021/1244: sicherheitsrelevante Arbeiten kommen in ein Register (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.de-owner':
    'BGB §§ 903 und 985: Es entscheidet der Eigentümer, nicht der Halter; Teil II der Papiere liegt oft beim Eigentümer (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.de-trader':
    'GewO § 14: Ein Gewerbe wird angezeigt, die Anzeige lässt sich also vorlegen (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.de-invoice':
    'UStG § 14b Abs. 1: acht Jahre ab Jahresende, also bis zu neun (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.de-authority':
    'BGB §§ 195 und 199 Abs. 1: drei Jahre ab Jahresende, also bis zu vier (aus dem Gedächtnis, bitte prüfen); DSGVO Artikel 5 Abs. 1 Buchst. e',
  'pack-text.de-identity':
    'DSGVO Artikel 5 Abs. 1 Buchst. c und e: keine Frist genannt, so kurz wie der Zweck; PAuswG § 20 Abs. 2 zu Kopien (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.gdpr-no-period': 'DSGVO Artikel 5 Abs. 1 Buchst. e: keine Frist genannt, die Firma entscheidet',
  'pack-text.gdpr-security': 'DSGVO Artikel 5 Abs. 1 Buchst. f; keine Frist genannt, die Firma entscheidet',
  'pack-text.de-rest': 'BGB §§ 195 und 199 Abs. 1 (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.de-contract':
    'Richtlinie 2011/83/EU, Artikel 6 bis 9 und 16 (dringende Besuche, Waren nach Maß); BGB §§ 312b, 312d und 312g; EGBGB Artikel 246a (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.eu-radio': 'ERC/REC 70-03, Anhang 1; ETSI EN 300 220-2',
  'pack-text.radio-every-region': 'keine Region gewählt: die Zeilen aller Regionen werden gezeigt',
  'pack-text.uk-one-and-one':
    'Leitlinie des Gewerbes: ein Ausweis und ein Berechtigungsnachweis, Originale, eine nachverfolgbare Nummer statt einer Kopie; der V5C sagt selbst, dass er kein Eigentumsnachweis ist',
  'pack-text.uk-fleet':
    'Leitlinie des Gewerbes: Ein Flottenschreiben oder ein Aktenzeichen der Versicherung gilt statt der Papiere',
  'pack-text.uk-invoice':
    'HMRC-Handbuch VATREC3032: sechs Jahre; eines mehr bis zum Ende des Abrechnungszeitraums',
  'pack-text.uk-authority': 'UK GDPR Artikel 5 Abs. 1 Buchst. e: keine Frist genannt; drei Jahre sind üblich',
  'pack-text.uk-identity':
    'UK GDPR Artikel 5 Abs. 1 Buchst. c und e: keine Frist genannt, so kurz wie der Zweck',
  'pack-text.uk-no-period': 'UK GDPR Artikel 5 Abs. 1 Buchst. e: keine Frist genannt, die Firma entscheidet',
  'pack-text.uk-security': 'UK GDPR Artikel 5 Abs. 1 Buchst. f; keine Frist genannt, die Firma entscheidet',
  'pack-text.uk-rest':
    'Limitation Act 1980, Abschnitt 5: sechs Jahre für einen Vertrag (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.uk-contract':
    'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, Nummern 10, 28, 29 und 36 (28 und 36 aus dem Gedächtnis, bitte prüfen)',
  'pack-text.uk-radio':
    'Ofcom-Schnittstellenanforderung IR 2030, im Einklang mit ERC/REC 70-03 (aus dem Gedächtnis, bitte prüfen)',
  'pack-text.us-registry':
    'Formulare des Fahrzeugsicherheits-Registers: Identität und ein Eigentumsnachweis, persönlich vor der Arbeit geprüft; California Business and Professions Code, Abschnitte 6980.53 bis 6980.55',
  'pack-text.us-order':
    'Fahrzeugsicherheits-Register: ein unterschriebener Auftrag, der FIN, Ort und den Berechtigten nennt',
  'pack-text.us-no-papers':
    'Regel des Verbands zur sicheren Identifizierung: im Zweifel nur in Anwesenheit der Polizei, Akte drei Jahre aufbewahrt',
  'pack-text.us-invoice':
    '26 U.S.C. 6501(a): drei Jahre ab Abgabe, also bis zu vier (aus dem Gedächtnis, bitte prüfen); Maryland: Rechnungen drei Jahre',
  'pack-text.us-authority':
    'Regel des Verbands: drei Jahre; California Business and Professions Code 6980.55: zwei',
  'pack-text.us-contract':
    '16 CFR part 429: Widerrufsfrist für Verkäufe außerhalb der Geschäftsräume (aus dem Gedächtnis, bitte prüfen); Bundesstaaten gehen darüber hinaus',
  'pack-text.us-radio': '47 CFR 15.231 und 15.249',
  'pack-text.band-overview': 'Werkstatttexte zur Funkverriegelung nach Regionen',
  'pack-text.band-europe': 'ERC/REC 70-03, Anhang 1; Prüfnorm ETSI EN 300 220-2',
  'pack-text.ask-ook-or-fsk': 'ASK/OOK oder FSK',
  'pack-text.ask-or-fsk': 'ASK oder FSK',
  'pack-text.ask-or-fsk-older': 'ASK oder FSK, ältere',
  'pack-text.ask-or-fsk-arib': 'ASK oder FSK (ARIB STD-T93)',
  'pack-text.fsk-two-way': 'FSK, manche Fernbedienungen mit Rückkanal und großer Reichweite',
  'pack-text.limit-433': '10 mW e.r.p. bei höchstens 10 % Sendezeit, oder 1 mW e.r.p. und -13 dBm/10 kHz',
  'pack-text.limit-434': '10 mW e.r.p. in Kanälen von höchstens 25 kHz',
  'pack-text.limit-868-0': '25 mW e.r.p. bei höchstens 1 % Sendezeit, oder Hören vor dem Senden',
  'pack-text.limit-868-7': '25 mW e.r.p. bei höchstens 0,1 % Sendezeit, oder Hören vor dem Senden',
  'pack-text.limit-869-4': '500 mW e.r.p. bei höchstens 10 % Sendezeit',
  'pack-text.limit-869-7': '5 mW e.r.p., oder 25 mW e.r.p. bei höchstens 1 % Sendezeit',
  'pack-text.limit-us-control':
    'nur Steuersignale; Feldstärke in 3 m von 3750 µV/m bei 260 MHz bis 12500 µV/m bei 470 MHz; nach 5 s aus',
  'pack-text.limit-us-902': 'Feldstärke in 3 m bis 50 mV/m',
}
