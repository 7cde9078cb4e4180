import type { SameCodes } from '../catalogues.ts'
import type { pictureWords as english } from '../en/pictures.ts'

/** French: Phrases of the handover document that its second edition added: photos, life lines, how the supply was left, the square code. */
export const pictureWords: SameCodes<typeof english> = {
  'doc.code-alt':
    'Un code carré à scanner. Il contient le SHA-256 du registre et l’empreinte de la clé qui a scellé, tous deux imprimés ci-dessous.',
  'doc.code-about':
    'Scannez ce code pour comparer par machine : il contient le SHA-256 du registre et l’empreinte de la clé, comme imprimés ci-dessous. Il n’ouvre aucune page et ne demande aucun réseau.',
  'doc.key-photo': 'Photo au registre, SHA-256 commençant par {hash}.',
  'doc.key-photo-alt':
    'Photo de la clé {key} : {form}, étiquette {colour}. Le registre la tient par son SHA-256.',
  'doc.key-cell-rest': 'Pile bouton, {rest} V au repos : {verdict}.',
  'doc.key-cell-loaded': 'Pile bouton, {loaded} V en émission : {verdict}.',
  'doc.key-cell-both': 'Pile bouton, {rest} V au repos et {loaded} V en émission : {verdict}.',
  'doc.key-cell-replaced': 'La pile a été remplacée.',
  'doc.fault-strand': 'Ligne de vie',
  'doc.fault-strand-alt': '{code}, ligne de vie : {life}',
  'doc.fault-strand-legend':
    'La ligne de vie montre les scans {phases}, du premier au dernier. Un disque plein : signalé. Un anneau : le calculateur a répondu et ne l’a pas signalé. Un trait court : non lu.',
  'doc.power-verdict': 'Calculé avant le travail',
  'doc.power-supply-first': 'Brancher d’abord une alimentation de soutien.',
  'doc.power-drain': 'Courant après verrouillage',
  'doc.power-drain-read':
    '{milliamperes} mA, {minutes, plural, one {# minute} other {# minutes}} après le verrouillage. {state}.',
  'doc.power-removed': 'Alimentation de soutien',
  'doc.power-removed-state':
    '{removed, select, yes {débranchée avant la dernière mesure après le travail} other {encore branchée à la dernière mesure après le travail}}',
  'doc.handed': 'Remis',
  'doc.handed-to': '{at}, à {to}. Clés : {keys}',
  'doc.handed-to-unnamed': '{at}, à {to}. Le registre ne dit pas quelles clés.',
  'doc.handed-not': 'pas au registre quand ce document a été fait',
  'doc.stopped-button-away':
    'Démarrer le véhicule et le verrouiller par bouton s’apprennent séparément : une clé qui ne démarre pas le véhicule peut encore le verrouiller ou le déverrouiller par bouton. Avec une clé qui n’est pas là, cela ne peut pas être essayé.',
  'doc.consent-unsigned':
    '{about}. Donné au nom de {signer} ; aucune signature correspondante n’est au registre.',
  'doc.consent-keys-unsigned':
    '{about} : {names}. Donné au nom de {signer} ; aucune signature correspondante n’est au registre.',
  'doc.signatures': 'Signatures au registre',
  'doc.signatures-none': 'Aucune signature n’est au registre.',
  'doc.signature-signer': 'Nom',
  'doc.signature-for': 'Pour',
  'doc.signature-how': 'Comment',
  'doc.signature-when': 'Quand',
  'doc.signature-kept': 'Début du SHA-256',
  'doc.signature-for.consent': 'Consentement',
  'doc.signature-for.plan': 'Plan du travail',
  'doc.signature-for.quote': 'Devis',
  'doc.signature-for.handover': 'Véhicule et clés reçus',
  'doc.signature-for.acknowledgement': 'Défauts pris en compte',
  'doc.signature-drawn': 'tracée à la main',
  'doc.signature-typed': 'nom saisi au clavier',
  'doc.signatures-limit':
    'Les signatures elles-mêmes ne sont pas imprimées ici ; le registre désigne chacune par son SHA-256. Il montre ce qui a été saisi et quand, pas de quelle main.',
  'doc.supply-readings': 'Mesures',
  'doc.price-tax': 'Le registre ne dit pas si ce prix comprend la taxe.',
  'doc.span-day': '{date}, de {from} à {to} ({zone})',
  'doc.span-days': 'du {from} au {to}',
}
