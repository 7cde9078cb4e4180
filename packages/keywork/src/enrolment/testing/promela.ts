/**
 * The rehearsal rules a third time, in Promela for the model checker spin (Debian package `spin`): keys shown in any
 * order, the session broken off or closed at any point. Every plan of a family is one nondeterministic choice of the
 * model, so one compiled verifier walks through all of them; each reached end is printed as one line.
 */

import type { SettledKey, SettledRule } from '../unknowns.ts'

/** Rules to combine: every combination of these values is one rule. */
export interface RuleFamily {
  readonly kind: readonly SettledRule['kind'][]
  readonly capacity: readonly number[]
  readonly leastKeys: readonly number[]
  readonly mostKeys: readonly number[]
  readonly erases: readonly SettledRule['erases'][]
  readonly commits: readonly SettledRule['commits'][]
  readonly sameKeyTwice: readonly SettledRule['sameKeyTwice'][]
  readonly onBreak: readonly SettledRule['onBreak'][]
  readonly accepts: readonly SettledRule['accepts'][]
  readonly opensWith: readonly SettledRule['opensWith'][number][]
  readonly slotTaken: readonly SettledRule['slotTaken'][]
  readonly declared: readonly SettledRule['declared'][]
  readonly spends: readonly SettledRule['spends'][]
  readonly gated: readonly boolean[]
}

/** A bench: identities are numbers from 1. */
export interface BenchSetting {
  readonly stored: readonly number[]
  readonly keys: readonly {
    readonly identity: number
    readonly state: SettledKey['state']
    readonly onBench: boolean
    readonly slot?: number
  }[]
  readonly equipment: boolean
  readonly code?: boolean
}

/** What the model does beside walking through a session. */
export interface ModelOptions {
  /** Every key can be refused when it is shown, and can be shown a second time (ENR-22). */
  readonly events?: boolean
  /** Prints nothing: for measuring how fast the verifier walks. */
  readonly quiet?: boolean
  /** Entries a list can hold in the model. */
  readonly longest?: number
}

const KINDS = ['replace-all', 'append', 'append-drop-oldest', 'numbered-slots']
const OPENS = ['equipment', 'accepted-key', 'two-accepted-keys', 'timed-wait']
const BREAKS = ['revert', 'keep-so-far', 'list-lost']
const STATES = ['known', 'blank', 'prepared', 'locked-elsewhere', 'pre-coded']
const LONGEST = 10

/** One line the verifier prints for an end; the comparison writes its own ends the same way. */
export function endLine(
  plan: string,
  by: 'break' | 'close' | 'unopened',
  list: readonly number[],
  known: readonly boolean[],
  stranded: boolean,
): string {
  return `END ${plan} ${by} list=${list.join(',')} known=${known.map(Number).join('')} stranded=${Number(stranded)}`
}

/** The Promela text of a family of plans. Plan names are `bench/choice-choice-...` in the order of `RuleFamily`. */
export function promelaModel(
  family: RuleFamily,
  benches: readonly BenchSetting[],
  options: ModelOptions = {},
): string {
  const most = Math.max(...benches.map((bench) => bench.keys.length))
  const choose = (name: string, values: readonly (number | string)[]): string =>
    `  if\n${values.map((value, index) => `  :: atomic { true -> ${name} = ${value}; c_${name} = ${index} }`).join('\n')}\n  fi;`
  const flags = (states: readonly string[]): number =>
    states.reduce((sum, state) => sum + (1 << STATES.indexOf(state)), 0)
  const show = Array.from({ length: most }, (_, key) => [
    `  :: ${key} < keys && !shown[${key}] -> SHOW(${key})`,
    ...(options.events === true
      ? [
          `  :: d_step { ${key} < keys && !shown[${key}] -> shown[${key}] = 1 }`,
          `  :: ${key} < keys && shown[${key}] && !again[${key}] -> d_step { again[${key}] = 1 }; SHOW(${key})`,
        ]
      : []),
  ]).flat()
  const bench = (setting: BenchSetting, index: number): string =>
    [
      `  :: true -> d_step { bench = ${index}; keys = ${setting.keys.length}; equipment = ${Number(setting.equipment)}; code = ${Number(setting.code ?? false)};`,
      `     nl = ${setting.stored.length};`,
      ...setting.stored.map((identity, at) => `     list[${at}] = ${identity};`),
      ...setting.keys.map(
        (key, at) =>
          `     ident[${at}] = ${key.identity}; here[${at}] = ${Number(key.onBench)}; kstate[${at}] = ${STATES.indexOf(key.state)}; was[${at}] = kstate[${at}]; slot[${at}] = ${key.slot ?? 0};`,
      ),
      '     }',
    ].join('\n')
  return `${declarations(most, options)}
active proctype session() {
  if
${benches.map(bench).join('\n')}
  fi;
${choose(
  'kind',
  family.kind.map((kind) => KINDS.indexOf(kind)),
)}
${choose('capacity', family.capacity)}
${choose('least', family.leastKeys)}
${choose('most', family.mostKeys)}
${choose(
  'atopen',
  family.erases.map((erases) => Number(erases === 'at-open')),
)}
${choose(
  'eachkey',
  family.commits.map((commits) => Number(commits === 'each-key')),
)}
${choose(
  'counts',
  family.sameKeyTwice.map((same) => Number(same === 'counts')),
)}
${choose(
  'keeps',
  family.onBreak.map((onBreak) => BREAKS.indexOf(onBreak)),
)}
${choose('takes', family.accepts.map(flags))}
${choose(
  'opens',
  family.opensWith.map((opens) => OPENS.indexOf(opens)),
)}
${choose(
  'slotref',
  family.slotTaken.map((taken) => Number(taken === 'refused')),
)}
${choose(
  'declared',
  family.declared.map((declared) => declared ?? 0),
)}
${choose(
  'late',
  family.spends.map((spends) => Number(spends === 'when-stored')),
)}
${choose('gated', family.gated.map(Number))}
  d_step {
    COUNT_ACCEPTED();
    if
    :: gated && !code -> ok = 0
    :: (!gated || code) && opens == 0 -> ok = equipment
    :: (!gated || code) && opens == 3 -> ok = 1
    :: else -> ok = (n >= opens)
    fi;
    n = 0
  };
  if
  :: !ok -> d_step { why = 2; PRINT() }
  :: ok ->
    d_step { if :: atopen -> CLEAR_LIST() :: else fi; ok = 0 };
    do
${show.join('\n')}
    :: d_step { true -> BREAK_OFF(); why = 0; PRINT() }; break
    :: d_step { true -> if :: nt < least || nt < declared -> BREAK_OFF() :: else -> if :: !eachkey -> COMMIT() :: else fi; nt = 0; SPEND() fi; why = 1; PRINT() }; break
    od
  fi;
  skip
}
`
}

function declarations(most: number, { quiet = false, longest = LONGEST }: ModelOptions): string {
  return `/* Rules ENR-01 to ENR-10, ENR-13, ENR-15, ENR-16, ENR-18 to ENR-20; times are left out. Entries beyond a list's length are kept at 0, so that equal lists are equal states. */
byte list[${longest}], nl, taught[${longest}], tkey[${longest}], nt;
byte ident[${most}], kstate[${most}], was[${most}], slot[${most}];
bool here[${most}], shown[${most}], again[${most}];
byte keys, bench, i, j, n, one, why, at;
bool equipment, code, ok, found, refused, stranded;
byte kind, capacity, least, most, takes, opens, keeps, declared;
bool atopen, eachkey, counts, slotref, late, gated;
byte c_kind, c_capacity, c_least, c_most, c_atopen, c_eachkey, c_counts, c_keeps, c_takes, c_opens, c_slotref, c_declared, c_late, c_gated;

#define IN(found, array, length, x) found = 0; i = 0; do :: i < length -> if :: array[i] == x -> found = 1 :: else fi; i++ :: else -> break od; i = 0

/* ENR-01: how many different identities on the bench are accepted (0, 1 or more). */
inline COUNT_ACCEPTED() {
  n = 0; one = 0; j = 0;
  do
  :: j < keys ->
     IN(found, list, nl, ident[j]);
     if
     :: found && here[j] && n == 0 -> n = 1; one = ident[j]
     :: found && here[j] && n == 1 && ident[j] != one -> n = 2
     :: else
     fi;
     j++
  :: else -> break
  od;
  found = 0; one = 0; j = 0
}

/* ENR-06: refused is set when the list is full and keeps its entries. */
inline PUT(x) {
  refused = 0;
  IN(found, list, nl, x);
  if
  :: found
  :: !found && nl < capacity -> list[nl] = x; nl++
  :: !found && nl >= capacity && kind == 2 ->
     i = 0; do :: i + 1 < nl -> list[i] = list[i + 1]; i++ :: else -> break od; list[nl - 1] = x; i = 0
  :: else -> refused = 1
  fi;
  found = 0
}

/* ENR-15: 0 is an empty slot; at is the slot the key goes to. */
inline PUT_IN_SLOT(k) {
  refused = 0;
  IN(found, list, nl, ident[k]);
  if
  :: found && !counts
  :: else ->
     if
     :: slot[k] > 0 -> at = slot[k] - 1
     :: else -> at = 0; do :: at < nl && list[at] != 0 -> at++ :: else -> break od
     fi;
     if
     :: at >= capacity -> refused = 1
     :: at < nl && at < capacity && slotref && list[at] != 0 && list[at] != ident[k] -> refused = 1
     :: else -> list[at] = ident[k]; if :: at >= nl -> nl = at + 1 :: else fi
     fi;
     at = 0
  fi;
  found = 0
}

inline CLEAR_LIST() {
  i = 0; do :: i < ${longest} -> list[i] = 0; i++ :: else -> break od; i = 0; nl = 0
}

/* ENR-05 and ENR-08 for replace-all: the list becomes what was taught. */
inline TAKE_OVER() {
  CLEAR_LIST();
  do :: nl < nt -> list[nl] = taught[nl]; nl++ :: else -> break od
}

inline COMMIT() {
  if
  :: kind == 0 -> TAKE_OVER()
  :: else ->
     j = 0; do :: j < nt && kind != 3 -> PUT(taught[j]); j++ :: j < nt && kind == 3 -> PUT_IN_SLOT(tkey[j]); j++ :: else -> break od; j = 0; refused = 0
  fi
}

/* ENR-20: a key that is not stored is again what it was. */
inline SPEND() {
  if
  :: late ->
     j = 0;
     do
     :: j < keys -> IN(found, list, nl, ident[j]); if :: !found -> kstate[j] = was[j] :: else fi; j++
     :: else -> break
     od;
     found = 0; j = 0
  :: else
  fi
}

/* ENR-09, ENR-18, ENR-19 */
inline BREAK_OFF() {
  if
  :: declared > 0 && nt >= declared && nt >= least -> if :: !eachkey -> COMMIT() :: else fi
  :: !(declared > 0 && nt >= declared && nt >= least) && keeps == 2 -> CLEAR_LIST()
  :: !(declared > 0 && nt >= declared && nt >= least) && keeps == 1 && !eachkey && nt > 0 -> COMMIT()
  :: else
  fi;
  nt = 0;
  SPEND()
}

/* ENR-03 to ENR-08, ENR-13 */
inline SHOW(k) {
  d_step {
    shown[k] = 1;
    if
    :: here[k] && kstate[k] != 3 && ((takes & (1 << kstate[k])) != 0) && nt < most && !(kind == 0 && nt >= capacity) && !(declared > 0 && nt >= declared) ->
       IN(found, taught, nt, ident[k]);
       if
       :: found && !counts
       :: else ->
          refused = 0;
          if :: eachkey && kind == 3 -> PUT_IN_SLOT(k) :: eachkey && kind != 0 && kind != 3 -> PUT(ident[k]) :: else fi;
          if
          :: refused
          :: else -> taught[nt] = ident[k]; tkey[nt] = (kind == 3 -> k : 0); nt++; kstate[k] = 0;
             if :: eachkey && kind == 0 -> TAKE_OVER() :: else fi
          fi
       fi
    :: else
    fi;
    found = 0; refused = 0
  }
}

/* ENR-10 */
inline PRINT() {
  stranded = 1; j = 0;
  do :: j < keys -> IN(found, list, nl, ident[j]); if :: found && here[j] -> stranded = 0 :: else fi; j++ :: else -> break od;
  found = 0; j = 0;
${
  quiet
    ? '  skip'
    : `  c_code {
    int each;
    printf("END %d/%d-%d-%d-%d-%d-%d-%d-%d-%d-%d-%d-%d-%d-%d %s list=", now.bench, now.c_kind, now.c_capacity, now.c_least,
      now.c_most, now.c_atopen, now.c_eachkey, now.c_counts, now.c_keeps, now.c_takes, now.c_opens,
      now.c_slotref, now.c_declared, now.c_late, now.c_gated,
      now.why == 0 ? "break" : now.why == 1 ? "close" : "unopened");
    for (each = 0; each < now.nl; each++) printf("%s%d", each ? "," : "", now.list[each]);
    printf(" known=");
    for (each = 0; each < now.keys; each++) printf("%d", now.kstate[each] == 0 && now.was[each] != 0);
    printf(" stranded=%d\\n", now.stranded);
  }`
}
}
`
}
