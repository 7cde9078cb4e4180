/** Everything the doctor can find. The list is closed: a caller can switch over it. */
export type DoctorCode =
  | 'database-damaged'
  | 'database-unreadable'
  | 'schema-newer'
  | 'schema-behind'
  | 'server-setting'
  | 'index-not-checked'
  | 'device-changed'
  | 'chain-end-wrong'
  | 'chain-gap'
  | 'fact-unreadable'
  | 'fact-changed'
  | 'signature-wrong'
  | 'link-broken'
  | 'seal-broken'
  | 'blob-row-changed'
  | 'blob-missing'
  | 'blob-changed'
  | 'blob-not-listed'
  | 'document-row-changed'
  | 'receipt-changed'
  | 'not-trusted'
  | 'document-broken'
  | 'setting-changed'
  | 'key-missing'
  | 'key-damaged'
  | 'key-open-to-others'
  | 'backup-file-changed'
  | 'little-room'

/** One thing the doctor found: where it stands, what it is and what to do. `error`: something kept is not as it was. */
export interface DoctorFinding {
  readonly code: DoctorCode
  readonly severity: 'note' | 'warning' | 'error'
  readonly where: string
  readonly what: string
  readonly doNext: string
}

/** How much was looked at. */
export interface Looked {
  facts: number
  signatures: number
  links: number
  devices: number
  seals: number
  blobs: number
  blobBytes: number
  documents: number
}

/** What an examination found. `sound` when nothing of it is an error. */
export interface Examination {
  readonly sound: boolean
  readonly looked: Readonly<Looked>
  readonly findings: readonly DoctorFinding[]
}

/** Collects what is found and counts what was looked at. */
export class Notes {
  readonly findings: DoctorFinding[] = []
  readonly looked: Looked = {
    facts: 0,
    signatures: 0,
    links: 0,
    devices: 0,
    seals: 0,
    blobs: 0,
    blobBytes: 0,
    documents: 0,
  }

  #protect: (work: () => Promise<void>) => Promise<void> = (work) => work()

  /** Runs every check by this, for a database in which a failed statement would spoil those that follow. */
  protectBy(protect: (work: () => Promise<void>) => Promise<void>): void {
    this.#protect = protect
  }

  say(
    code: DoctorCode,
    where: string,
    what: string,
    doNext: string,
    severity: DoctorFinding['severity'] = 'error',
  ): void {
    this.findings.push({ code, severity, where, what, doNext })
  }

  /** Runs one check; when the database cannot be read there, says so, and the other checks go on. */
  async check(where: string, work: () => Promise<void>): Promise<void> {
    try {
      await this.#protect(work)
    } catch (error) {
      this.say(
        'database-unreadable',
        where,
        `It could not be read to its end: ${error instanceof Error ? error.message : String(error)}.`,
        restore,
      )
    }
  }

  examination(): Examination {
    const sound = !this.findings.some(({ severity }) => severity === 'error')
    return { sound, looked: this.looked, findings: this.findings }
  }
}

/** What to do when something kept is not as it was. */
export const restore =
  'Keep everything as it is, restore the latest backup into a new folder or database with "shearline restore", and let the devices send what they wrote since.'
