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
}
