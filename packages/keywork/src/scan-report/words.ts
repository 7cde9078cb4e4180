/**
 * @module Plain words that scan reports of any origin use, in the six languages of the product.
 *
 * Common practice, no source: ordinary words, no product's wording.
 */

/** Headings of a column or a line that name the control unit. */
export const UNIT_HEADINGS: RegExp =
  /^(control )?(unit|module|ecu|system|steuerger[aä]t|modul|unit[eé]|calculateur|m[oó]dulo|unidad|sterownik|modu[lł]|وحدة)( name)?$/i

/** Headings of a column that holds a unit's identifier or address. */
export const ADDRESS_HEADINGS: RegExp =
  /^((request|response|can|ecu|diagnostic|logical)[ -]?)?(address|addr\.?|adresse|direcci[oó]n|adres|العنوان)$|^(request|response|can|ecu)[ -]?id$/i

export const CODE_HEADINGS: RegExp =
  /^(dtc|fault|trouble|error|fehler|d[eé]faut|aver[ií]a|b[lł][aą]d|usterka|رمز)?[ -]?(code|dtc|c[oó]digo|kod|nummer|number|no\.?|id)?s?$/i

export const STATUS_HEADINGS: RegExp = /^(status|state|zustand|[eé]tat|estado|stan|الحالة)( byte)?$/i

export const TEXT_HEADINGS: RegExp =
  /^(description|text|meaning|name|beschreibung|libell[eé]|descripci[oó]n|opis|الوصف)$/i

/** "No fault stored" for a unit that was read. */
export const NO_FAULT: RegExp =
  /\b(no|0|zero|keine?|aucun|sin|ning[uú]n|brak)\b[^.;:]{0,24}\b(faults?|codes?|dtcs?|errors?|fehler|d[eé]fauts?|aver[ií]as?|b[lł][eę]d[oó]w|usterek|found|stored)\b|لا توجد أعطال/i

/** Words that a report puts beside a code. Permanent and pending are lists of SAE J1979. */
export const LIST_WORDS: readonly (readonly ['confirmed' | 'pending' | 'permanent', RegExp])[] = [
  ['permanent', /\bpermanente?\b|\bdauerhaft\b|\bpermanentny\b|دائم/i],
  ['pending', /\bpending\b|\bvorl[aä]ufig\b|\ben attente\b|\bpendiente\b|\boczekuj[aą]cy\b|معلق/i],
  [
    'confirmed',
    /\b(confirmed|stored|memorised|memorized|best[aä]tigt|gespeichert|confirm[eé]|m[eé]moris[eé]|confirmado|memorizado|potwierdzony|zapisany)\b|مؤكد/i,
  ],
]

/** Words of a control unit's name, so that a heading is known by itself. Common practice, no source. */
export const UNIT_WORDS: RegExp =
  /\b(engine|motor|powertrain|ecm|pcm|transmission|gearbox|getriebe|brakes?|abs|esc|bremse|frein|steering|lenkung|direction|body|bcm|gateway|airbag|restraints?|srs|instruments?|cluster|kombi|immobili[sz]er|wegfahrsperre|alarm|climate|hvac|klima|radio|parking|door|t[uü]r|seats?|sitz|lamps?|lights?|trailer|telematics|camera|radar|battery|remote|keyless)\b/i
