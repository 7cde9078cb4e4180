/**
 * What the rule packs and the bands of radio that come with the program say in words, as they stand in them. Found by the
 * whole English text: what a firm writes itself has no key and stays as it wrote it. Titles of laws stay in their language.
 */
export const packTextWords = {
  'pack-text.neutral': 'neutral default',
  'pack-text.example-eu': 'example: European Union, after German law',
  'pack-text.example-uk': 'example: United Kingdom',
  'pack-text.example-us': 'example: United States',
  'pack-text.anywhere': 'any',
  'pack-text.eu-germany': 'European Union (Germany)',
  'pack-text.uk': 'United Kingdom',
  'pack-text.us': 'United States (states differ)',
  'pack-text.common-practice': 'common practice, check your law',
  'pack-text.eu-papers':
    'Directive 1999/37/EC, articles 3 and 4: registration certificate in one or two parts; Regulation (EU) 2018/858, annex X, as amended by Delegated Regulation (EU) 2021/1244: security-related work goes into a register (from memory, check)',
  'pack-text.de-owner':
    'BGB sections 903 and 985: the owner decides, not the keeper; part II of the papers often lies with the owner (from memory, check)',
  'pack-text.de-trader':
    'GewO section 14: a trade is notified, so that its notice can be shown (from memory, check)',
  'pack-text.de-invoice':
    'UStG section 14b(1), eight years from the end of the year, so up to nine (from memory, check)',
  'pack-text.de-authority':
    'BGB sections 195 and 199(1), three years from the end of the year, so up to four (from memory, check); GDPR article 5(1)(e)',
  'pack-text.de-identity':
    'GDPR article 5(1)(c) and (e): no period named, as short as the purpose; PAuswG section 20(2) on copies (from memory, check)',
  'pack-text.gdpr-no-period': 'GDPR article 5(1)(e): no period named, the firm decides',
  'pack-text.gdpr-security': 'GDPR article 5(1)(f); no period named, the firm decides',
  'pack-text.de-rest': 'BGB sections 195 and 199(1) (from memory, check)',
  'pack-text.de-contract':
    'Directive 2011/83/EU, articles 6 to 9 and 16 (urgent visits, goods made to order); BGB sections 312b, 312d and 312g; EGBGB article 246a (from memory, check)',
  'pack-text.eu-radio': 'ERC/REC 70-03, annex 1; ETSI EN 300 220-2',
  'pack-text.radio-every-region': 'no region chosen: rows of every region are shown',
  'pack-text.uk-one-and-one':
    'trade guidance: one identity and one entitlement document, originals, a traceable number kept rather than a copy; the V5C says itself that it is no proof of ownership',
  'pack-text.uk-fleet':
    'trade guidance: a fleet letter or an insurer’s reference is accepted instead of papers',
  'pack-text.uk-invoice': 'HMRC manual VATREC3032: six years; one more for the end of the accounting period',
  'pack-text.uk-authority': 'UK GDPR article 5(1)(e): no period named; three years is common practice',
  'pack-text.uk-identity': 'UK GDPR article 5(1)(c) and (e): no period named, as short as the purpose',
  'pack-text.uk-no-period': 'UK GDPR article 5(1)(e): no period named, the firm decides',
  'pack-text.uk-security': 'UK GDPR article 5(1)(f); no period named, the firm decides',
  'pack-text.uk-rest': 'Limitation Act 1980, section 5: six years for a contract (from memory, check)',
  'pack-text.uk-contract':
    'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, regulations 10, 28, 29 and 36 (28 and 36 from memory, check)',
  'pack-text.uk-radio':
    'Ofcom interface requirement IR 2030, in step with ERC/REC 70-03 (from memory, check)',
  'pack-text.us-registry':
    'vehicle-security registry forms: identity and one proof of ownership, checked in person before the work; California Business and Professions Code, sections 6980.53 to 6980.55',
  'pack-text.us-order':
    'vehicle-security registry: a signed work order that names the VIN, the place and who authorises it',
  'pack-text.us-no-papers':
    'association policy on positive identification: if in doubt only with police present, file kept three years',
  'pack-text.us-invoice':
    '26 U.S.C. 6501(a), three years from filing, so up to four (from memory, check); Maryland: invoices three years',
  'pack-text.us-authority':
    'association policy: three years; California Business and Professions Code 6980.55: two',
  'pack-text.us-contract':
    '16 CFR part 429, cooling-off period for sales away from the seller’s place of business (from memory, check); states add to it',
  'pack-text.us-radio': '47 CFR 15.231 and 15.249',
  'pack-text.band-overview': 'service texts on remote locking by region',
  'pack-text.band-europe': 'ERC/REC 70-03 annex 1; test standard ETSI EN 300 220-2',
  'pack-text.ask-ook-or-fsk': 'ASK/OOK or FSK',
  'pack-text.ask-or-fsk': 'ASK or FSK',
  'pack-text.ask-or-fsk-older': 'ASK or FSK, older',
  'pack-text.ask-or-fsk-arib': 'ASK or FSK (ARIB STD-T93)',
  'pack-text.fsk-two-way': 'FSK, some two-way and long-range remotes',
  'pack-text.limit-433': '10 mW e.r.p. at up to 10 % duty, or 1 mW e.r.p. and -13 dBm/10 kHz',
  'pack-text.limit-434': '10 mW e.r.p. in channels of 25 kHz at most',
  'pack-text.limit-868-0': '25 mW e.r.p. at up to 1 % duty, or listen before talk',
  'pack-text.limit-868-7': '25 mW e.r.p. at up to 0.1 % duty, or listen before talk',
  'pack-text.limit-869-4': '500 mW e.r.p. at up to 10 % duty',
  'pack-text.limit-869-7': '5 mW e.r.p., or 25 mW e.r.p. at up to 1 % duty',
  'pack-text.limit-us-control':
    'control signals only; field strength at 3 m from 3750 uV/m at 260 MHz to 12500 uV/m at 470 MHz; off within 5 s',
  'pack-text.limit-us-902': 'field strength at 3 m up to 50 mV/m',
} as const
