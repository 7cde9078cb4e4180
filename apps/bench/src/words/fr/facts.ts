import type { SameCodes } from '@shearline/jobfile'
import type { factWords as english } from '../en/facts.ts'

/** French: Every kind of fact as one sentence, as it stands on record. */
export const factWords: SameCodes<typeof english> = {
  'fact.job-opened': 'Intervention ouverte : {title}, {place} ({zone})',
  'fact.keys-said':
    '{count, plural, =0 {Aucune clé annoncée} one {# clé annoncée} other {# clés annoncées}} ; absentes : {absent}',
  'fact.note-written': 'Note : {text}',
  'fact.authority-seen':
    '{role} : {document}, {issuer}, se termine par {last} ; original : {original} ; concorde : {matched}',
  'fact.authority-decided': '{decision} : {reason}',
  'fact.consent-given': '{what}. Accord donné par {signer}',
  'fact.vin-read':
    'VIN {vin}, {source}{picture, select, letters { ; lu dans les lettres d’une image} code { ; lu dans un code d’une image} other {}}',
  'fact.recording-attached':
    'Enregistrement {name} : {format}, {size}, {messages, plural, one {# message} other {# messages}}',
  'fact.scan-attached':
    'Scan {phase} : {units, plural, one {# calculateur} other {# calculateurs}}, {faults, plural, =0 {aucun défaut} one {# défaut} other {# défauts}}',
  'fact.unit-named': 'Le calculateur {unit} sert à : {role}',
  'fact.fault-acknowledged': 'Défaut {code} du calculateur {unit}, connaissance prise par {signer} : {words}',
  'fact.clear-requested': 'Défauts effacés dans {units}',
  'fact.supply-set': 'Seuil de tension {volts} ({source}), {battery}',
  'fact.supply-read': 'Tension {volts}, {during}',
  'fact.key-labelled': 'Clé {key}, {colour} : {form}, {origin}',
  'fact.key-count-read':
    'Le véhicule mémorise {count, plural, one {# entrée} other {# entrées}} {when, select, before {avant le travail} other {après le travail}}',
  'fact.key-count-none':
    'Le véhicule n’affiche aucun nombre {when, select, before {avant le travail} other {après le travail}} : {because}',
  'fact.function-tested': 'Clé {key}, {function}, {phase, select, before {avant} other {après}} : {outcome}',
  'fact.difference-explained': 'Expliqué : {reason}',
  'fact.blank-chosen':
    'Ébauche {item} : {fits, select, true {comparée, convient} false {comparée, ne convient pas} other {non comparée}}',
  'fact.blank-used':
    'Ébauche {item} : {outcome, select, used {utilisée} spoiled {gâchée} other {remise dans le fourgon}}',
  'fact.rule-chosen': '{kind}. Connu par : {source}',
  'fact.rehearsal-read': 'Simulation lue, ordre {order}. {wayBack}',
  'fact.backup-proven':
    'Sauvegarde de {what} : {same, select, true {deux lectures identiques, {first}…} other {deux lectures différentes, {first}… et {second}…}}',
  'fact.backup-waived': 'Pas de sauvegarde : {because}',
  'fact.session-opened': 'Session ouverte, {rehearsed, select, true {simulée} other {non simulée}}',
  'fact.key-taught': 'Clé {key} apprise ; compte du véhicule : {count} ; tension : {volts}',
  'fact.session-closed': 'Session fermée ; compte du véhicule : {count}',
  'fact.broke-off': 'Interrompu après {after} : {why}',
  'fact.break-off-mended': 'Interruption réglée : {how}',
  'fact.caution-read': 'Mise en garde lue : {caution}',
  'fact.price-agreed': 'Prix convenu : {amount}',
  'fact.warranty-given': 'Garantie : {months, plural, one {# mois} other {# mois}}',
  'fact.retention-set': 'Suppression fixée pour {count, plural, one {# classe} other {# classes}} ({pack})',
  'fact.corrected': '{action, select, withdrawn {Retiré} other {Remplacé}} : {reason}',
  'fact.document-sealed': 'Document scellé sur {count, plural, one {# fait} other {# faits}}, {root}…',
  'fact.unknown':
    'Une version plus récente a consigné « {kind} ». Le fait est conservé, mais pas compris ; mettre Shearline à jour.',
  'fact.erased':
    'Le contenu de « {kind} » a été supprimé à la fin de son délai. Sa place au registre demeure.',
  'fact.unreadable':
    'Le contenu de « {kind} » ne correspond pas à sa nature. Il est conservé et n’est pas compté.',
}
