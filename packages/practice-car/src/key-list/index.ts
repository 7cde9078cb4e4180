/**
 * @module The immobiliser's list of keys, which follows any teaching rule of the rehearsal model.
 *
 * Written from the numbered rules (ENR-01 to ENR-09) and not from the engine that computes with them, so that the two
 * can be held against each other. Identities are labels: there is no secret and no algorithm in a practice car.
 */

export type PracticeKeyState = 'known' | 'blank' | 'prepared' | 'locked-elsewhere'

/** The parameters of a teaching rule, as the plan's JSON has them. */
export interface PracticeRule {
  readonly kind: 'replace-all' | 'append' | 'append-drop-oldest'
  readonly capacity: number
  readonly leastKeys: number
  readonly mostKeys: number
  readonly opensWith: 'equipment' | 'accepted-key' | 'two-accepted-keys'
  readonly erases: 'at-open' | 'at-close' | 'never'
  readonly commits: 'each-key' | 'at-close'
  readonly sameKeyTwice: 'refused' | 'ignored' | 'counts'
  readonly onBreak: 'revert' | 'keep-so-far'
  readonly accepts: readonly PracticeKeyState[]
}

/** A key in somebody's hand. */
export interface PracticeKey {
  readonly label: string
  /** What the car recognises; a clone has that of its original. */
  readonly identity: string
  readonly state: PracticeKeyState
  readonly onBench: boolean
  /** Volts of its cell under load; below 2.4 the buttons and passive entry are dead. Common practice, no source. */
  readonly cellVolts: number
}

/** What the car said to a key. */
export type ShowResult = 'taken' | 'no-session' | 'not-accepted' | 'same-key' | 'list-full'

/** The list and, while one is open, its session. */
export class KeyList {
  readonly rule: PracticeRule
  #list: string[]
  #taught: string[] | null = null

  constructor(rule: PracticeRule, stored: readonly string[]) {
    this.rule = rule
    this.#list = [...stored]
  }

  /** Identities the car accepts now, oldest first. */
  get accepted(): readonly string[] {
    return this.#list
  }

  /** What was taught in the open session, null when none is open. */
  get taught(): readonly string[] | null {
    return this.#taught
  }

  /** True when this key starts the car. */
  starts(key: PracticeKey): boolean {
    return key.onBench && this.#list.includes(key.identity)
  }

  /** Opens a session (ENR-01, ENR-02); false when what opens it is not there. */
  open(keys: readonly PracticeKey[], equipment: boolean): boolean {
    const shown = new Set(keys.filter((key) => this.starts(key)).map((key) => key.identity))
    const needed = { equipment: 0, 'accepted-key': 1, 'two-accepted-keys': 2 }[this.rule.opensWith]
    if (this.#taught !== null || shown.size < needed || (needed === 0 && !equipment)) return false
    if (this.rule.erases === 'at-open') this.#list = []
    this.#taught = []
    return true
  }

  /** Shows a key to the open session (ENR-03 to ENR-08). */
  show(key: PracticeKey): ShowResult {
    const taught = this.#taught
    const rule = this.rule
    if (taught === null) return 'no-session'
    if (!key.onBench || key.state === 'locked-elsewhere' || !rule.accepts.includes(key.state))
      return 'not-accepted'
    if (taught.includes(key.identity) && rule.sameKeyTwice !== 'counts') return 'same-key'
    const most = rule.kind === 'replace-all' ? Math.min(rule.mostKeys, rule.capacity) : rule.mostKeys
    if (taught.length >= most) return 'list-full'
    if (rule.commits === 'each-key' && rule.kind !== 'replace-all' && !this.#append(key.identity))
      return 'list-full'
    taught.push(key.identity)
    if (rule.commits === 'each-key' && rule.kind === 'replace-all') this.#list = [...taught]
    return 'taken'
  }

  /** Closes the session (ENR-08); false when that was a break because too few were taught. */
  close(): boolean {
    const taught = this.#taught
    if (taught === null) return false
    if (taught.length < this.rule.leastKeys) {
      this.breakOff()
      return false
    }
    this.#commit(taught)
    this.#taught = null
    return true
  }

  /** The session ends without being closed (ENR-09). */
  breakOff(): void {
    const taught = this.#taught
    this.#taught = null
    if (taught === null || taught.length === 0) return
    if (this.rule.commits === 'at-close' && this.rule.onBreak === 'keep-so-far') this.#commit(taught)
  }

  /** Puts a saved list back, as the technician's own equipment would (ENR-11). */
  restore(list: readonly string[]): void {
    this.#taught = null
    this.#list = [...list]
  }

  #commit(taught: readonly string[]): void {
    if (this.rule.commits === 'each-key') return
    if (this.rule.kind === 'replace-all') this.#list = [...taught]
    else for (const identity of taught) this.#append(identity)
  }

  #append(identity: string): boolean {
    if (this.#list.includes(identity)) return true
    if (this.#list.length >= this.rule.capacity) {
      if (this.rule.kind !== 'append-drop-oldest') return false
      this.#list.shift()
    }
    this.#list.push(identity)
    return true
  }
}
