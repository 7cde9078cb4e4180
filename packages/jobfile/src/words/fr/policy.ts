import type { SameCodes } from '../catalogues.ts'
import type { policyWords as english } from '../en/policy.ts'

/** French: What a policy pack asks for by code: situations, documents, questions. */
export const policyWords: SameCodes<typeof english> = {
  'situation.owner': 'La personne propriétaire est ici',
  'situation.leaseholder': 'Usage d’un véhicule en location, financé ou d’entreprise',
  'situation.trader': 'Un professionnel, pour sa clientèle ou sur son stock',
  'situation.fleet': 'Une flotte ou une entreprise de location',
  'situation.no-papers': 'Personne ne peut montrer de papiers',

  'policy-document.identity-card': 'Carte d’identité',
  'policy-document.passport': 'Passeport',
  'policy-document.driving-licence': 'Permis de conduire',
  'policy-document.residence-permit': 'Titre de séjour',
  'policy-document.registration-certificate': 'Certificat d’immatriculation',
  'policy-document.ownership-certificate': 'Deuxième partie du certificat d’immatriculation',
  'policy-document.title': 'Titre de propriété du véhicule',
  'policy-document.keeper-record':
    'Extrait sur la personne titulaire de l’immatriculation (montre qui la détient, pas qui est propriétaire)',
  'policy-document.purchase-contract': 'Contrat ou acte de vente',
  'policy-document.insurance-policy': 'Police d’assurance de ce véhicule',
  'policy-document.lease-contract': 'Contrat de location ou de financement',
  'policy-document.owner-letter': 'Lettre de la personne propriétaire',
  'policy-document.work-order': 'Ordre de travail signé',
  'policy-document.trade-registration': 'Inscription professionnelle',
  'policy-document.fleet-letter': 'Lettre de la flotte',
  'policy-document.rental-contract': 'Contrat de location de courte durée',
  'policy-document.court-order': 'Décision de justice',
  'policy-document.police-confirmation': 'Confirmation de la police',
  'policy-document.registry-confirmation': 'Confirmation du service des immatriculations',

  'policy-asks.authority.situation': 'Qui veut la clé ?',
  'policy-asks.authority.document-valid':
    'La pièce d’identité est-elle valide et non annulée (pas de trous, pas de coin coupé) ?',
  'policy-asks.authority.person-is-holder':
    'La personne présente est-elle titulaire de la pièce d’identité ?',
  'policy-asks.authority.vin-on-paper': 'Le VIN du papier est-il celui du véhicule ?',
  'policy-asks.authority.owner-asked':
    'La partie propriétaire (société de location, banque, employeur) a-t-elle donné son accord ?',
  'policy-asks.authority.order-names-car': 'L’ordre nomme-t-il ce VIN, le lieu et qui l’autorise ?',
  'policy-asks.authority.order-called-back':
    'L’ordre a-t-il été confirmé en appelant un numéro qui n’est pas venu avec lui ?',
  'policy-asks.authority.trade-known': 'Le professionnel est-il connu ou son inscription vérifiée ?',
  'policy-asks.authority.police-present': 'La police est-elle ici, ou a-t-elle confirmé ?',
  'policy-asks.authority.asked-second-person':
    'Une deuxième personne de l’entreprise a-t-elle donné son accord au travail ?',
  'policy-asks.authority.no-copy-kept':
    'A-t-on seulement noté ce qui a été vu, sans garder de copie de la pièce d’identité ?',
  'policy-asks.authority.register-entry': 'Le travail est-il inscrit au registre que veut le dispositif ?',
  'policy-asks.authority.form-signed':
    'La personne cliente a-t-elle signé le formulaire sur l’identité et l’autorisation ?',
  'policy-asks.contract.informed-before':
    'La personne cliente a-t-elle reçu le prix, le travail et les conditions avant de donner son accord ?',
  'policy-asks.contract.cancelling-explained':
    'Le droit de rétractation a-t-il été expliqué, et quand il prend fin ?',
  'policy-asks.contract.asked-to-start-now':
    'La personne cliente a-t-elle demandé de commencer tout de suite, dans le délai de rétractation ?',
  'policy-asks.contract.urgent-visit-asked-for':
    'La personne cliente a-t-elle demandé cette visite comme réparation urgente ?',
  'policy-asks.contract.made-to-order':
    'A-t-on dit à la personne cliente qu’une clé faite pour ce véhicule ne peut pas être rendue ?',
  'policy-asks.contract.paper-copy-given':
    'La personne cliente a-t-elle les informations sur papier ou en fichier ?',
  'policy-asks.site.drive': 'Qu’est-ce qui fait rouler le véhicule ?',
  'policy-asks.site.place': 'Où se trouve le véhicule ?',
  'policy-asks.site.alone': 'Quelqu’un est-il avec vous ?',
  'policy-asks.site.inside': 'Y a-t-il des enfants ou des animaux dans le véhicule ou à proximité ?',

  'site.drive.combustion': 'Essence, gazole ou gaz seulement',
  'site.drive.hybrid': 'Hybride',
  'site.drive.electric': 'Électrique',
  'site.drive.unknown': 'Pas connu',
  'site.place.open-air': 'En plein air, hors de la route',
  'site.place.roadside': 'Au bord de la route',
  'site.place.indoors': 'À l’intérieur ou sous un toit',
  'site.alone.alone': 'Je travaille sans personne',
  'site.alone.not-alone': 'Quelqu’un est avec moi',
  'site.inside.nobody': 'Personne',
  'site.inside.child-or-animal-near': 'Oui, dedans ou à proximité',

  'policy-basis.source': 'source lue',
  'policy-basis.memory': 'de mémoire, à vérifier',
  'policy-basis.common-practice': 'pratique courante, sans source',
  'policy-basis.firm': 'propre à l’entreprise',
}
