import type { SameCodes } from '../catalogues.ts'
import type { authorityWords as englishAuthority, cautionWords as englishCautions } from '../en/authority.ts'

/** French: What kind of job, who ordered it, what was signed, what is kept. */
export const authorityWords: SameCodes<typeof englishAuthority> = {
  'work.add-a-key': 'Ajouter une clé',
  'work.all-keys-lost': 'Toutes les clés perdues',
  'work.replace-keys': 'Remplacer des clés',
  'customer.private': 'clientèle particulière',
  'customer.trade': 'clientèle professionnelle',
  'customer.fleet': 'flotte',
  'role.identity': 'Identité',
  'role.entitlement': 'Droit sur le véhicule',
  'decision.refused': 'Refusé',
  'decision.held': 'Suspendu',
  'decision.released': 'Autorisé',
  'consent.absent-keys-stop': 'Les clés qui ne sont pas ici peuvent cesser de démarrer ce véhicule',
  'consent.no-check-before': 'Rien n’a pu être contrôlé avant le travail, parce qu’aucune clé ne fonctionne',
  'consent.clear-faults': 'Les défauts peuvent être effacés ; leur état a d’abord été enregistré',
  'retention.invoice': 'Facture',
  'retention.authority-record': 'Ce qui a été vu de l’identité et du droit',
  'retention.identity-image': 'Images de pièces d’identité',
  'retention.photo': 'Photos',
  'retention.recording': 'Enregistrements du véhicule',
  'retention.vehicle-secret': 'Données scellées du véhicule (sauvegarde)',
  'retention.job-rest': 'Tout le reste de l’intervention',
}

/** French: Cautions: a name and the usual sentence. */
export const cautionWords: SameCodes<typeof englishCautions> = {
  'caution.defers': 'Ce sont les mises en garde d’usage. Le droit local et la pratique agréée passent avant.',
  'caution.airbag': 'Airbag',
  'caution-means.airbag':
    'Un défaut d’airbag présent avant le travail est laissé tel qu’il a été trouvé. Faites-le contrôler par un atelier agréé pour les airbags.',
  'caution.keyless-can-move': 'Un véhicule mains libres peut devenir prêt à rouler',
  'caution-means.keyless-can-move':
    'Un véhicule à clé mains libres peut démarrer quand la clé est seulement proche. Tenir les clés loin du véhicule tant que quelqu’un y travaille.',
  'caution.high-voltage': 'Haute tension',
  'caution-means.high-voltage':
    'Un véhicule électrique ou hybride garde une tension dangereuse même éteint. Seules des personnes formées à cela ouvrent ou touchent ces pièces.',
  'caution.carbon-monoxide': 'Monoxyde de carbone',
  'caution-means.carbon-monoxide':
    'Ne jamais laisser tourner le moteur dans un garage ou un lieu couvert. Avec une clé mains libres, s’assurer que le moteur est arrêté avant de s’éloigner.',
  'caution.roadside': 'Travail au bord de la route',
  'caution-means.roadside':
    'La circulation est le principal danger au bord de la route. Se tenir à l’écart du côté circulation et, dans le doute, déplacer d’abord le véhicule en lieu sûr.',
  'caution.lone-work': 'Travail isolé',
  'caution-means.lone-work':
    'Qui travaille seul garde le contact avec une autre personne qui connaît le lieu et l’heure de retour.',
  'caution.button-cells': 'Piles bouton',
  'caution-means.button-cells':
    'Une pile bouton avalée peut brûler un enfant en moins de deux heures. Tenir les piles hors de portée des enfants ; si l’une est avalée, obtenir aussitôt une aide médicale.',
  'caution.locked-in': 'Aucun être vivant ne reste à l’intérieur',
  'caution-means.locked-in':
    'Les enfants et les animaux restent hors du véhicule pendant le travail sur les clés : les portes peuvent se verrouiller d’elles-mêmes.',
  'caution.steering-lock': 'Antivol de direction',
  'caution-means.steering-lock':
    'Ne pas remorquer ni pousser le véhicule avant d’avoir vu que l’antivol de direction est libéré. Après une session ratée, il peut rester verrouillé.',
}
