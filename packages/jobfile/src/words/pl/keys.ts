import type { SameCodes } from '../catalogues.ts'
import type {
  differenceWords as englishDifferences,
  keyWords as englishKeys,
  statementWords as englishStatements,
} from '../en/keys.ts'

/** Keys: what they are and what each can do. */
export const keyWords: SameCodes<typeof englishKeys> = {
  'function.start': 'Uruchomienie',
  'function.emergency-start': 'Miejsce rozruchu awaryjnego',
  'function.passive-start': 'Uruchomienie bezkluczykowe',
  'function.passive-entry': 'Dostęp bezkluczykowy',
  'function.lock': 'Przycisk zamykania',
  'function.unlock': 'Przycisk otwierania',
  'function.boot': 'Przycisk bagażnika',
  'function.panic': 'Przycisk alarmu',
  'function.blade-door': 'Grot w zamku drzwi',
  'function.blade-ignition': 'Grot w stacyjce',
  'function.blade-boot': 'Grot w zamku bagażnika',
  'form.blade': 'Sam grot',
  'form.transponder': 'Klucz z transponderem',
  'form.remote-head': 'Klucz z pilotem w główce',
  'form.flip': 'Klucz składany',
  'form.proximity': 'Klucz zbliżeniowy',
  'form.card': 'Klucz w postaci karty',
  'outcome.works': 'działa',
  'outcome.fails': 'nie działa',
  'outcome.not-applicable': 'nie ma takiej',
  'outcome.not-tested': 'nie testowano',
  'outcome.open': 'brak odpowiedzi',
  'origin.existing': 'był tu wcześniej',
  'origin.new': 'nowy',
  'make.genuine': 'oryginalny',
  'make.aftermarket': 'zamiennik',
  'make.renewed': 'regenerowany',
  'make.unknown': 'pochodzenie nieznane',
  'colour.brass': 'mosiądz',
  'colour.slate': 'łupek',
  'colour.moss': 'mech',
  'colour.rust': 'rdza',
  'colour.sky': 'niebo',
  'colour.plum': 'śliwka',
  'colour.sand': 'piasek',
  'colour.ink': 'atrament',
}

/** Disagreements between the numbers, short enough to stand in a need. */
export const differenceWords: SameCodes<typeof englishDifferences> = {
  'difference.said-more-than-bench':
    '{count, plural, one {# klucza, który podobno istnieje, nie ma tutaj} few {# kluczy, które podobno istnieją, nie ma tutaj} many {# kluczy, które podobno istnieją, nie ma tutaj} other {# klucza, który podobno istnieje, nie ma tutaj}}',
  'difference.said-fewer-than-bench':
    '{count, plural, one {jest tu o # klucz więcej, niż wiedział klient} few {jest tu o # klucze więcej, niż wiedział klient} many {jest tu o # kluczy więcej, niż wiedział klient} other {jest tu o # klucza więcej, niż wiedział klient}}',
  'difference.stored-more-than-bench':
    '{count, plural, one {auto przechowywało # wpis, którego nie wyjaśnia żaden klucz tutaj} few {auto przechowywało # wpisy, których nie wyjaśnia żaden klucz tutaj} many {auto przechowywało # wpisów, których nie wyjaśnia żaden klucz tutaj} other {auto przechowywało # wpisu, którego nie wyjaśnia żaden klucz tutaj}}',
  'difference.stored-fewer-than-bench':
    '{count, plural, one {# klucz tutaj nie miał wpisu w aucie} few {# klucze tutaj nie miały wpisu w aucie} many {# kluczy tutaj nie miało wpisu w aucie} other {# klucza tutaj nie miało wpisu w aucie}}',
  'difference.after-more-than-keys':
    '{count, plural, one {auto przechowuje o # wpis więcej, niż wyjaśniają klucze} few {auto przechowuje o # wpisy więcej, niż wyjaśniają klucze} many {auto przechowuje o # wpisów więcej, niż wyjaśniają klucze} other {auto przechowuje o # wpisu więcej, niż wyjaśniają klucze}}',
  'difference.after-fewer-than-keys':
    '{count, plural, one {auto przechowuje o # wpis mniej, niż jest kluczy} few {auto przechowuje o # wpisy mniej, niż jest kluczy} many {auto przechowuje o # wpisów mniej, niż jest kluczy} other {auto przechowuje o # wpisu mniej, niż jest kluczy}}',
  'difference.stored-key-does-not-start':
    '{count, plural, one {# klucz na stole nie uruchamia auta} few {# klucze na stole nie uruchamiają auta} many {# kluczy na stole nie uruchamia auta} other {# klucza na stole nie uruchamia auta}}',
}

/** What the tally means, for customer and insurer. */
export const statementWords: SameCodes<typeof englishStatements> = {
  'statement.stored-before':
    'Przed pracami ten samochód przechowywał {count, plural, =0 {zero wpisów} one {# wpis} few {# wpisy} many {# wpisów} other {# wpisu}}.',
  'statement.stored-after':
    'Po pracach przechowuje {count, plural, =0 {zero wpisów} one {# wpis} few {# wpisy} many {# wpisów} other {# wpisu}}.',
  'statement.keys-somewhere-start':
    '{count, plural, one {Gdzieś istnieje jeden klucz, który nadal uruchamia ten samochód.} few {Gdzieś istnieją najwyżej # klucze, które nadal uruchamiają ten samochód.} many {Gdzieś istnieje najwyżej # kluczy, które nadal uruchamiają ten samochód.} other {Gdzieś istnieje najwyżej # klucza, który nadal uruchamia ten samochód.}}',
  'statement.absent-keys-stopped':
    'Klucze, których tu nie było, przestały uruchamiać ten samochód. Grot może nadal otwierać drzwi.',
  'statement.absent-keys-will-stop':
    'Klucze, których tu nie ma, przestaną uruchamiać ten samochód, gdy lista zostanie zapisana na nowo. Grot może nadal otwierać drzwi.',
  'statement.absent-keys-still-start': 'Kluczy, których tu nie ma, te prace nie usuwają.',
  'statement.absent-keys-not-proven-stopped':
    'Listę zapisano na nowo, ale samochód przechowuje więcej, niż wyjaśniają klucze. Nie dowiedziono, że klucze, których tu nie było, przestały uruchamiać ten samochód.',
  'statement.absent-keys-unknown':
    'Nie wiadomo, czy te prace usuwają klucze, których tu nie ma. Należy się spodziewać, że przestaną uruchamiać ten samochód, ale nie można na to liczyć.',
  'statement.absent-clone-still-starts':
    '{count, plural, one {# klucz} few {# klucze} many {# kluczy} other {# klucza}} ({keys}): {count, plural, one {nie ma go tutaj, ale powtarza tożsamość klucza, który jest: uruchamia ten samochód tak długo, jak tamten klucz} few {nie ma ich tutaj, ale powtarzają tożsamość kluczy, które są: uruchamiają ten samochód tak długo, jak tamte klucze} many {nie ma ich tutaj, ale powtarzają tożsamość kluczy, które są: uruchamiają ten samochód tak długo, jak tamte klucze} other {nie ma ich tutaj, ale powtarzają tożsamość kluczy, które są: uruchamiają ten samochód tak długo, jak tamte klucze}}.',
  'statement.entries-are-not-keys':
    'Wpisy to nie klucze: w niektórych układach jeden klucz zajmuje dwa miejsca, więc {count, plural, one {ten wpis może być drugim miejscem} few {niektóre z tych # wpisów mogą być drugimi miejscami} many {niektóre z tych # wpisów mogą być drugimi miejscami} other {niektóre z tych # wpisu mogą być drugimi miejscami}} klucza ze stołu.',
  'statement.clones-count-once':
    '{count, plural, one {# klucz} few {# klucze} many {# kluczy} other {# klucza}} ({keys}) {count, plural, one {to klon} few {to klony} many {to klony} other {to klony}}: dla samochodu klon i jego oryginał to jeden klucz, a usunięcie jednego usuwa oba.',
  'statement.keys-start-now':
    '{count, plural, one {Widziano, że po pracach # klucz stąd uruchamia} few {Widziano, że po pracach # klucze stąd uruchamiają} many {Widziano, że po pracach # kluczy stąd uruchamia} other {Widziano, że po pracach # klucza stąd uruchamia}} ten samochód ({keys}).',
  'statement.key-no-longer-starts':
    'Klucz {keys} przed pracami uruchamiał ten samochód, a teraz nie uruchamia.',
  'statement.keys-never-tested':
    '{count, plural, one {# klucz stąd nigdy nie był sprawdzony} few {# klucze stąd nigdy nie były sprawdzone} many {# kluczy stąd nigdy nie było sprawdzonych} other {# klucza stąd nigdy nie było sprawdzone}} ({keys}).',
}
