import type { SameCodes } from '../catalogues.ts'
import type { policyWords as english } from '../en/policy.ts'

/** What a policy pack asks for by code: situations, documents, questions. Laws are named in the pack, not here. */
export const policyWords: SameCodes<typeof english> = {
  'situation.owner': 'Jest właściciel lub właścicielka',
  'situation.leaseholder': 'Użytkownik auta w leasingu, finansowanego lub firmowego',
  'situation.trader': 'Handlowiec, dla klienta lub z zapasu',
  'situation.fleet': 'Firma flotowa lub wypożyczalnia',
  'situation.no-papers': 'Nikt nie może okazać dokumentów',

  'policy-document.identity-card': 'Dowód osobisty',
  'policy-document.passport': 'Paszport',
  'policy-document.driving-licence': 'Prawo jazdy',
  'policy-document.residence-permit': 'Karta pobytu',
  'policy-document.registration-certificate': 'Dowód rejestracyjny',
  'policy-document.ownership-certificate': 'Druga część dowodu rejestracyjnego',
  'policy-document.title': 'Tytuł własności pojazdu',
  'policy-document.keeper-record':
    'Wpis zarejestrowanego użytkownika (pokazuje użytkownika, nie właściciela)',
  'policy-document.purchase-contract': 'Umowa lub rachunek sprzedaży',
  'policy-document.insurance-policy': 'Polisa ubezpieczeniowa tego auta',
  'policy-document.lease-contract': 'Umowa leasingu lub finansowania',
  'policy-document.owner-letter': 'Pismo właściciela',
  'policy-document.work-order': 'Podpisane zlecenie prac',
  'policy-document.trade-registration': 'Wpis działalności gospodarczej',
  'policy-document.fleet-letter': 'Pismo floty',
  'policy-document.rental-contract': 'Umowa najmu',
  'policy-document.court-order': 'Postanowienie sądu',
  'policy-document.police-confirmation': 'Potwierdzenie policji',
  'policy-document.registry-confirmation': 'Potwierdzenie rejestru pojazdów',

  'policy-asks.authority.situation': 'Kto chce klucza?',
  'policy-asks.authority.document-valid':
    'Czy dokument tożsamości jest ważny i nieunieważniony (bez dziurek, bez uciętego rogu)?',
  'policy-asks.authority.person-is-holder': 'Czy osoba na miejscu jest posiadaczem dokumentu tożsamości?',
  'policy-asks.authority.vin-on-paper': 'Czy VIN w dokumencie zgadza się z autem?',
  'policy-asks.authority.owner-asked': 'Czy właściciel (leasingodawca, bank, pracodawca) wyraził zgodę?',
  'policy-asks.authority.order-names-car': 'Czy zlecenie wymienia ten VIN, miejsce i kto je zatwierdza?',
  'policy-asks.authority.order-called-back':
    'Czy zlecenie potwierdzono telefonicznie pod numerem, który nie przyszedł razem z nim?',
  'policy-asks.authority.trade-known': 'Czy handlowiec jest znany lub sprawdzono jego wpis?',
  'policy-asks.authority.police-present': 'Czy policja jest na miejscu lub potwierdziła?',
  'policy-asks.authority.asked-second-person': 'Czy druga osoba z firmy zgodziła się na prace?',
  'policy-asks.authority.no-copy-kept':
    'Czy zanotowano tylko to, co okazano, bez zachowania kopii dokumentu tożsamości?',
  'policy-asks.authority.register-entry': 'Czy prace wpisano do rejestru, którego wymaga system uprawnień?',
  'policy-asks.authority.form-signed': 'Czy klient podpisał formularz o tożsamości i upoważnieniu?',
  'policy-asks.contract.informed-before':
    'Czy klient otrzymał cenę, zakres prac i warunki przed wyrażeniem zgody?',
  'policy-asks.contract.cancelling-explained': 'Czy wyjaśniono prawo odstąpienia i kiedy wygasa?',
  'policy-asks.contract.asked-to-start-now':
    'Czy klient poprosił o rozpoczęcie teraz, w terminie na odstąpienie?',
  'policy-asks.contract.urgent-visit-asked-for': 'Czy klient poprosił o tę wizytę jako pilną naprawę?',
  'policy-asks.contract.made-to-order':
    'Czy powiedziano klientowi, że klucza wykonanego do tego auta nie można zwrócić?',
  'policy-asks.contract.paper-copy-given': 'Czy klient ma te informacje na papierze lub jako plik?',
  'policy-asks.site.drive': 'Co napędza auto?',
  'policy-asks.site.place': 'Gdzie stoi auto?',
  'policy-asks.site.alone': 'Czy ktoś towarzyszy?',
  'policy-asks.site.inside': 'Czy w aucie lub przy nim są dzieci albo zwierzęta?',

  'site.drive.combustion': 'Tylko benzyna, olej napędowy lub gaz',
  'site.drive.hybrid': 'Hybryda',
  'site.drive.electric': 'Elektryczny',
  'site.drive.unknown': 'Nie wiadomo',
  'site.place.open-air': 'Na otwartym terenie, poza drogą',
  'site.place.roadside': 'Przy drodze',
  'site.place.indoors': 'W pomieszczeniu lub pod dachem',
  'site.alone.alone': 'Pracuję w pojedynkę',
  'site.alone.not-alone': 'Ktoś jest ze mną',
  'site.inside.nobody': 'Nikogo',
  'site.inside.child-or-animal-near': 'Tak, w aucie lub przy nim',

  'policy-basis.source': 'źródło przeczytane',
  'policy-basis.memory': 'z pamięci, sprawdzić',
  'policy-basis.common-practice': 'powszechna praktyka, bez źródła',
  'policy-basis.firm': 'własne firmy',
}
