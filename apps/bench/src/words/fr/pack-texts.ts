import type { SameCodes } from '@shearline/jobfile'
import type { packTextWords as english } from '../en/pack-texts.ts'

export const packTextWords: SameCodes<typeof english> = {
  'pack-text.neutral': 'réglage neutre',
  'pack-text.example-eu': 'exemple : Union européenne, selon le droit allemand',
  'pack-text.example-uk': 'exemple : Royaume-Uni',
  'pack-text.example-us': 'exemple : États-Unis',
  'pack-text.anywhere': 'partout',
  'pack-text.eu-germany': 'Union européenne (Allemagne)',
  'pack-text.uk': 'Royaume-Uni',
  'pack-text.us': 'États-Unis (les États diffèrent)',
  'pack-text.common-practice': 'pratique courante ; vérifiez votre droit',
  'pack-text.eu-papers':
    'Directive 1999/37/CE, articles 3 et 4 : certificat d’immatriculation en une ou deux parties ; règlement (UE) 2018/858, annexe X, modifié par le règlement délégué (UE) 2021/1244 : les travaux touchant à la sécurité vont dans un registre (de mémoire, à vérifier)',
  'pack-text.de-owner':
    'BGB §§ 903 et 985 : c’est le propriétaire qui décide, pas le titulaire ; la partie II des papiers est souvent chez le propriétaire (de mémoire, à vérifier)',
  'pack-text.de-trader':
    'GewO § 14 : une activité commerciale se déclare, sa déclaration peut donc être présentée (de mémoire, à vérifier)',
  'pack-text.de-invoice':
    'UStG § 14b, al. 1 : huit ans à partir de la fin de l’année, donc jusqu’à neuf (de mémoire, à vérifier)',
  'pack-text.de-authority':
    'BGB §§ 195 et 199, al. 1 : trois ans à partir de la fin de l’année, donc jusqu’à quatre (de mémoire, à vérifier) ; RGPD, article 5, §1, e)',
  'pack-text.de-identity':
    'RGPD, article 5, §1, c) et e) : aucune durée indiquée, aussi courte que le but ; PAuswG § 20, al. 2, sur les copies (de mémoire, à vérifier)',
  'pack-text.gdpr-no-period': 'RGPD, article 5, §1, e) : aucune durée indiquée, l’entreprise décide',
  'pack-text.gdpr-security': 'RGPD, article 5, §1, f) ; aucune durée indiquée, l’entreprise décide',
  'pack-text.de-rest': 'BGB §§ 195 et 199, al. 1 (de mémoire, à vérifier)',
  'pack-text.de-contract':
    'Directive 2011/83/UE, articles 6 à 9 et 16 (visites urgentes, biens faits sur mesure) ; BGB §§ 312b, 312d et 312g ; EGBGB, article 246a (de mémoire, à vérifier)',
  'pack-text.eu-radio': 'ERC/REC 70-03, annexe 1 ; ETSI EN 300 220-2',
  'pack-text.radio-every-region': 'aucune région choisie : les lignes de toutes les régions sont montrées',
  'pack-text.uk-one-and-one':
    'recommandation du métier : une pièce d’identité et un justificatif de droit, originaux, un numéro traçable gardé plutôt qu’une copie ; le V5C dit lui-même qu’il ne prouve pas la propriété',
  'pack-text.uk-fleet':
    'recommandation du métier : une lettre du parc ou une référence de l’assureur est acceptée au lieu des papiers',
  'pack-text.uk-invoice': 'Manuel HMRC VATREC3032 : six ans ; un de plus pour la fin de la période comptable',
  'pack-text.uk-authority': 'UK GDPR, article 5, §1, e) : aucune durée indiquée ; trois ans sont d’usage',
  'pack-text.uk-identity':
    'UK GDPR, article 5, §1, c) et e) : aucune durée indiquée, aussi courte que le but',
  'pack-text.uk-no-period': 'UK GDPR, article 5, §1, e) : aucune durée indiquée, l’entreprise décide',
  'pack-text.uk-security': 'UK GDPR, article 5, §1, f) ; aucune durée indiquée, l’entreprise décide',
  'pack-text.uk-rest': 'Limitation Act 1980, section 5 : six ans pour un contrat (de mémoire, à vérifier)',
  'pack-text.uk-contract':
    'Consumer Contracts (Information, Cancellation and Additional Charges) Regulations 2013, articles 10, 28, 29 et 36 (28 et 36 de mémoire, à vérifier)',
  'pack-text.uk-radio':
    'Exigence d’interface Ofcom IR 2030, en accord avec ERC/REC 70-03 (de mémoire, à vérifier)',
  'pack-text.us-registry':
    'formulaires du registre de sécurité des véhicules : identité et une preuve de propriété, vérifiées en personne avant le travail ; California Business and Professions Code, sections 6980.53 à 6980.55',
  'pack-text.us-order':
    'registre de sécurité des véhicules : un ordre de travail signé qui indique le VIN, le lieu et qui l’autorise',
  'pack-text.us-no-papers':
    'règle de l’association sur l’identification certaine : en cas de doute, seulement en présence de la police, dossier gardé trois ans',
  'pack-text.us-invoice':
    '26 U.S.C. 6501(a) : trois ans à partir du dépôt, donc jusqu’à quatre (de mémoire, à vérifier) ; Maryland : factures trois ans',
  'pack-text.us-authority':
    'règle de l’association : trois ans ; California Business and Professions Code 6980.55 : deux',
  'pack-text.us-contract':
    '16 CFR part 429 : délai de réflexion pour les ventes hors des locaux du vendeur (de mémoire, à vérifier) ; les États y ajoutent',
  'pack-text.us-radio': '47 CFR 15.231 et 15.249',
  'pack-text.band-overview': 'textes d’atelier sur le verrouillage à distance par région',
  'pack-text.band-europe': 'ERC/REC 70-03, annexe 1 ; norme d’essai ETSI EN 300 220-2',
  'pack-text.ask-ook-or-fsk': 'ASK/OOK ou FSK',
  'pack-text.ask-or-fsk': 'ASK ou FSK',
  'pack-text.ask-or-fsk-older': 'ASK ou FSK, plus anciennes',
  'pack-text.ask-or-fsk-arib': 'ASK ou FSK (ARIB STD-T93)',
  'pack-text.fsk-two-way': 'FSK, certaines télécommandes bidirectionnelles à longue portée',
  'pack-text.limit-433':
    '10 mW p.a.r. avec au plus 10 % de temps d’émission, ou 1 mW p.a.r. et -13 dBm/10 kHz',
  'pack-text.limit-434': '10 mW p.a.r. dans des canaux de 25 kHz au plus',
  'pack-text.limit-868-0': '25 mW p.a.r. avec au plus 1 % de temps d’émission, ou écoute avant émission',
  'pack-text.limit-868-7': '25 mW p.a.r. avec au plus 0,1 % de temps d’émission, ou écoute avant émission',
  'pack-text.limit-869-4': '500 mW p.a.r. avec au plus 10 % de temps d’émission',
  'pack-text.limit-869-7': '5 mW p.a.r., ou 25 mW p.a.r. avec au plus 1 % de temps d’émission',
  'pack-text.limit-us-control':
    'signaux de commande seulement ; champ à 3 m de 3750 µV/m à 260 MHz jusqu’à 12500 µV/m à 470 MHz ; coupé en 5 s',
  'pack-text.limit-us-902': 'champ à 3 m jusqu’à 50 mV/m',
}
