import type { SameCodes } from '../catalogues.ts'
import type { authorityWords as englishAuthority, cautionWords as englishCautions } from '../en/authority.ts'

/** What kind of job, who ordered it, what was signed, what is kept. */
export const authorityWords: SameCodes<typeof englishAuthority> = {
  'work.add-a-key': 'Dodać klucz',
  'work.all-keys-lost': 'Zgubione wszystkie klucze',
  'work.replace-keys': 'Wymienić klucze',
  'customer.private': 'klient prywatny',
  'customer.trade': 'klient z branży',
  'customer.fleet': 'klient flotowy',
  'role.identity': 'Tożsamość',
  'role.entitlement': 'Prawo do zamówienia klucza',
  'decision.refused': 'Odmówiono',
  'decision.held': 'Wstrzymano',
  'decision.released': 'Zwolniono',
  'consent.absent-keys-stop': 'Klucze, których tu nie ma, mogą przestać uruchamiać ten samochód',
  'consent.no-check-before':
    'Przed pracami nie można było niczego sprawdzić, ponieważ żaden klucz nie działa',
  'consent.clear-faults': 'Usterki mogą zostać skasowane; ich stan najpierw zapisano',
  'retention.invoice': 'Faktura',
  'retention.authority-record': 'Co okazano w sprawie tożsamości i prawa do zamówienia klucza',
  'retention.identity-image': 'Obrazy dokumentów tożsamości',
  'retention.photo': 'Zdjęcia',
  'retention.recording': 'Nagrania z samochodu',
  'retention.vehicle-secret': 'Zapieczętowane dane pojazdu (kopia zapasowa)',
  'retention.job-rest': 'Wszystko inne ze zlecenia',
}

/** Cautions: a name and the usual sentence. Sources: see the English file. */
export const cautionWords: SameCodes<typeof englishCautions> = {
  'caution.defers': 'To zwykłe ostrzeżenia. Pierwszeństwo mają prawo miejscowe i praktyka osób uprawnionych.',
  'caution.airbag': 'Poduszka powietrzna',
  'caution-means.airbag':
    'Usterkę poduszki powietrznej, która była przed pracami, pozostawia się tak, jak ją zastano. Proszę zlecić jej sprawdzenie warsztatowi uprawnionemu do prac przy poduszkach powietrznych.',
  'caution.keyless-can-move': 'Samochód bezkluczykowy może stać się gotowy do jazdy',
  'caution-means.keyless-can-move':
    'Samochód z kluczem zbliżeniowym może się uruchomić, gdy klucz jest tylko w pobliżu. Klucze należy trzymać z dala od samochodu, dopóki ktoś przy nim pracuje.',
  'caution.high-voltage': 'Wysokie napięcie',
  'caution-means.high-voltage':
    'W samochodzie elektrycznym lub hybrydowym jest niebezpieczne napięcie nawet po wyłączeniu. Te części otwierają lub dotykają ich tylko osoby do tego przeszkolone.',
  'caution.carbon-monoxide': 'Tlenek węgla (czad)',
  'caution-means.carbon-monoxide':
    'Nigdy nie pozwalać silnikowi pracować w garażu ani w zadaszonym miejscu. Przy kluczu zbliżeniowym sprawdzić przed odejściem, czy silnik jest wyłączony.',
  'caution.roadside': 'Praca przy drodze',
  'caution-means.roadside':
    'Głównym zagrożeniem przy drodze są przejeżdżające pojazdy. Stać z dala od strony ruchu, a w razie wątpliwości najpierw przestawić samochód w bezpieczne miejsce.',
  'caution.lone-work': 'Praca w pojedynkę',
  'caution-means.lone-work':
    'Kto pracuje w pojedynkę, utrzymuje kontakt z inną osobą, która zna miejsce i porę powrotu.',
  'caution.button-cells': 'Baterie pastylkowe',
  'caution-means.button-cells':
    'Połknięta bateria pastylkowa może poparzyć dziecko w ciągu dwóch godzin. Baterie trzymać z dala od dzieci; po połknięciu natychmiast wezwać pomoc medyczną.',
  'caution.locked-in': 'Nic żywego nie zostaje w środku',
  'caution-means.locked-in':
    'Podczas prac przy kluczach dzieci i zwierzęta pozostają poza samochodem: drzwi mogą zamknąć się same.',
  'caution.steering-lock': 'Blokada kierownicy',
  'caution-means.steering-lock':
    'Nie holować ani nie pchać samochodu, dopóki nie widać, że blokada kierownicy jest zwolniona. Po nieudanej sesji może pozostać zablokowana.',
}
