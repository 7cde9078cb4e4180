import type { SameCodes } from '@shearline/jobfile'
import type { handoverWords as english } from '../en/handover.ts'

/** Cautions, price, warranty, retention, seal and close. */
export const handoverWords: SameCodes<typeof english> = {
  'handover.open': 'Otworzyć dokument',
  'cautions.title': 'Ostrzeżenia dla tego auta',
  'cautions.read': 'przeczytane',
  'cautions.acknowledge': 'Przeczytane',
  'cautions.acknowledge-named': 'Przeczytane: {caution}',
  'price.title': 'Cena',
  'price.again': 'Uzgodnić inną cenę',
  'price.currency': 'Waluta',
  'price.line': 'Pozycja {number}: za co',
  'price.amount': 'Pozycja {number}: kwota',
  'price.usual': 'Klucz, nacięty i zaadaptowany',
  'price.another': 'Kolejna pozycja',
  'price.sum': 'Suma',
  'warranty.title': 'Gwarancja',
  'warranty.none': 'W rejestrze nie ma żadnej.',
  'warranty.add': 'Udzielić gwarancji',
  'warranty.again': 'Udzielić innej gwarancji',
  'warranty.given':
    '{months, plural, one {# miesiąc} few {# miesiące} many {# miesięcy} other {# miesiąca}}. Nie obejmuje: {excludes}.',
  'warranty.months': 'Miesiące',
  'warranty.excludes': 'Nie obejmuje',
  'warranty.usual': 'bateria klucza|woda|upadki',
  'retention.title': 'Co i kiedy się usuwa',
  'retention.again': 'Ustalić inne terminy',
  'retention.law':
    'Te terminy pochodzą z wymienionych tu reguł. Sprawdzić prawo miejscowe i zmienić to, co stanowi ono inaczej.',
  'retention.class': '{name}: dni przechowywania',
  'retention.days': '{days, plural, one {# dzień} few {# dni} many {# dni} other {# dnia}}',
  'retention.changed': 'zmieniono dla tego zlecenia',
  'seal.title': 'Dokument',
  'seal.open':
    '{count, plural, one {Jedna rzecz jest jeszcze otwarta} few {# rzeczy są jeszcze otwarte} many {# rzeczy jest jeszcze otwartych} other {# rzeczy jest jeszcze otwarte}}:',
  'seal.anyway': 'Zapieczętować mimo to. Dokument powie wtedy, co było otwarte.',
  'seal.unsent':
    '{count, plural, one {# zapis jest zachowany tutaj i jeszcze niewysłany} few {# zapisy są zachowane tutaj i jeszcze niewysłane} many {# zapisów jest zachowanych tutaj i jeszcze niewysłanych} other {# zapisu jest zachowane tutaj i jeszcze niewysłane}}. Pieczętowanie nie wymaga połączenia: dokument powstaje na tym urządzeniu i jest wysyłany później.',
  'seal.busy': 'Tworzenie i sprawdzanie dokumentu ...',
  'seal.not-in-line':
    'W międzyczasie zapisano coś, co jest jeszcze otwarte. Spojrzeć na listę i zapieczętować ponownie.',
  'seal.not-proven':
    'Dokumentu nie udało się dowieść po utworzeniu, więc niczego nie zapieczętowano. Spróbować ponownie.',
  'seal.go': 'Zapieczętować dokument',
  'seal.again': 'Zapieczętować ponownie',
  'seal.sealed':
    'Zapieczętowano {day}, {time}, {by}, obejmuje {count, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}.',
  'seal.changed':
    '{count, plural, one {Od tego czasu doszedł # zapis} few {Od tego czasu doszły # zapisy} many {Od tego czasu doszło # zapisów} other {Od tego czasu doszło # zapisu}}: zapieczętować ponownie.',
  'document.here': 'Dokument jest zachowany na tym urządzeniu i jeszcze niewysłany.',
  'document.sent': 'Dokument jest zachowany na tym urządzeniu i wysłany.',
  'document.save': 'Zapisać dokument jako plik',
  'document.check': 'Sprawdzić na tym urządzeniu',
  'document.proven':
    'Sprawdzono tutaj: zgadza się. {facts, plural, one {# zapis} few {# zapisy} many {# zapisów} other {# zapisu}}, {signatures, plural, one {# podpis} few {# podpisy} many {# podpisów} other {# podpisu}}, {hashes, plural, one {# skrót} few {# skróty} many {# skrótów} other {# skrótu}}.',
  'document.not-proven': 'Nie zgadza się: {what}',
  'close.blank': 'Co się stało z surówką',
  'close.blank.again': 'Kolejna surówka',
  'close.key': 'Który klucz z niej powstał',
  'close.no-key': 'żaden',
  'close.outcome': 'Wynik',
  'close.outcome.used': 'użyta',
  'close.outcome.spoiled': 'zepsuta',
  'close.outcome.returned': 'z powrotem w furgonetce',
}
