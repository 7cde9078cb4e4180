import { existsSync } from 'node:fs'
import { stat, writeFile } from 'node:fs/promises'
import { dirname, resolve, sep } from 'node:path'
import {
  addRecipient,
  backupProven,
  compareReads,
  identityText,
  newIdentity,
  readIdentities,
  readRecipients,
  recipientsSetting,
  recipientsText,
  type SecretClass,
  secretClasses,
  secretSealed,
  wrapIdentity,
} from '@shearline/jobfile'
import { type Command, Option } from 'commander'
import { type DataFlags, dataFolder, whoRecords, withStore } from '../job/data.ts'
import { CouldNot, exit, paint, print, printJson, say, sayFinding } from '../output/answer.ts'
import { bytesOf } from '../output/input.ts'
import { fileSource, leaveNoCore, passphraseFrom, vaultWork } from '../vault/files.ts'
import { freshKey, keepSealed, recordIn, sealIntoJob, sealToOf } from '../vault/keep.ts'
import { saveSecret, secretNamed, secretsOf } from '../vault/open.ts'

interface Flags extends DataFlags {
  readonly json?: boolean
  readonly passphraseFile?: string
}

/** `shearline vault ...`: vehicle secrets, sealed with age before they touch the data folder. */
export function addVault(program: Command): void {
  const vault = program.command('vault').description('Vehicle secrets of a job, sealed with age')
  const verb = (parent: Command, name: string, description: string) =>
    parent
      .command(name)
      .description(description)
      .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
      .option('--json', 'one JSON object')
  const onJob = (name: string, description: string) =>
    verb(vault, name, description)
      .argument('<job>')
      .option('--by <name>', 'who records (default: SHEARLINE_BY, else this user)')
  const passphrase = '--passphrase-file <file>'

  const recipients = vault.command('recipients').description('Who can open what is sealed from now on')
  verb(recipients, 'list', 'List them').action((flags: Flags) => listRecipients(flags))
  verb(recipients, 'add', 'Add one by public key')
    .argument('<public key>', 'age1..., as age-keygen or "shearline vault identity" prints it')
    .requiredOption('--name <words>', 'whose it is')
    .action((recipient: string, flags: Flags & { name: string }) => add(recipient, flags))
  verb(recipients, 'remove', 'Remove one; what was sealed before stays open to it')
    .argument('<public key>')
    .action((recipient: string, flags: Flags) => remove(recipient, flags))
  vault
    .command('identity')
    .description('Make a private key: shown once to be printed, or wrapped by a passphrase in a file')
    .option(passphrase, 'wrap it by the passphrase in this file; - for standard input')
    .option('--out <file>', 'where the wrapped key goes')
    .option('--json', 'one JSON object')
    .action((flags: Flags & { out?: string }) => vaultWork(() => makeIdentity(flags)))
  onJob('prove', 'Compare two separate reads; when they are equal, seal one and record the backup as proven')
    .argument('<first>', 'file of the first read')
    .argument('<second>', 'file of the second read')
    .requiredOption('--what <words>', 'what was read: control unit and memory')
    .option(passphrase, 'seal by a passphrase instead of to the recipients')
    .action((job: string, first: string, second: string, flags: Flags & { what: string }) =>
      vaultWork(() => prove(job, first, second, flags)),
    )
  onJob('seal', 'Seal a file into a job')
    .argument('<file>')
    .requiredOption('--what <words>', 'what it is, without the secret')
    .addOption(new Option('--class <class>').choices([...secretClasses]).default('other'))
    .option(passphrase, 'seal by a passphrase instead of to the recipients')
    .action((job: string, file: string, flags: Flags & { what: string; class: SecretClass }) =>
      vaultWork(() => seal(job, file, flags)),
    )
  onJob('list', 'List the secrets of a job and every opening').action((job: string, flags: Flags) =>
    list(job, flags),
  )
  onJob('open', 'Open a secret into a file; the reason goes on record first')
    .argument('<secret>', 'eight or more digits of it, from "shearline vault list"')
    .requiredOption('--reason <words>', 'why it is opened')
    .requiredOption('--out <file>', 'a new file outside the data folder')
    .option('--identity <file>', 'private key, plain or wrapped by a passphrase')
    .option(passphrase, 'passphrase of the secret or of the wrapped private key')
    .action((job: string, secret: string, flags: Flags & OpenFlags) =>
      vaultWork(() => open(job, secret, flags)),
    )
}

interface OpenFlags {
  readonly reason: string
  readonly out: string
  readonly identity?: string
}

function listRecipients(flags: Flags): Promise<void> {
  return vaultWork(() =>
    withStore(flags, async (store) => {
      const list = readRecipients(await store.setting(recipientsSetting))
      if (flags.json === true) printJson({ recipients: list })
      else for (const { recipient, name } of list) print(`${recipient}  ${name}`)
    }),
  )
}

function add(recipient: string, flags: Flags & { name: string }): Promise<void> {
  return vaultWork(() =>
    withStore(flags, async (store) => {
      const before = readRecipients(await store.setting(recipientsSetting))
      const list = addRecipient(before, { recipient, name: flags.name })
      await store.putSetting(recipientsSetting, recipientsText(list))
      if (flags.json === true) printJson({ recipients: list })
      else print(`What is sealed from now on can be opened by ${list.map(({ name }) => name).join(', ')}.`)
    }),
  )
}

function remove(recipient: string, flags: Flags): Promise<void> {
  return vaultWork(() =>
    withStore(flags, async (store) => {
      const before = readRecipients(await store.setting(recipientsSetting))
      const list = before.filter((known) => known.recipient !== recipient.trim())
      if (list.length === before.length)
        throw new CouldNot('That key is not in the list.', 'See: shearline vault recipients list.')
      await store.putSetting(recipientsSetting, recipientsText(list))
      if (flags.json === true) printJson({ recipients: list })
      else print('Removed. What was sealed before can still be opened with its private key.')
    }),
  )
}

async function makeIdentity(flags: Flags & { out?: string }): Promise<void> {
  leaveNoCore()
  if ((flags.out === undefined) !== (flags.passphraseFile === undefined))
    throw new CouldNot(
      'A private key is kept in a file only wrapped by a passphrase.',
      'Give both --passphrase-file and --out, or neither to have it shown once.',
    )
  const made = await newIdentity()
  const text = identityText(made, new Date().toISOString())
  if (flags.out !== undefined && flags.passphraseFile !== undefined) {
    const wrapped = await wrapIdentity(text, await passphraseFrom(flags.passphraseFile))
    await writeFile(flags.out, wrapped, { flag: 'wx', mode: 0o600 }).catch((error: Error) => {
      throw new CouldNot(`${flags.out} could not be written (${error.message}).`, 'Name a new file.')
    })
    if (flags.json === true) printJson({ recipient: made.recipient, file: flags.out })
    else print(`Public key: ${made.recipient}`)
    return
  }
  if (flags.json === true) printJson(made)
  else print(text.trimEnd())
  say('This private key is shown once and kept nowhere. Print it and lock it away: without it nothing opens.')
}

/** Length of a plain file. Throws CouldNot. */
async function lengthOf(file: string): Promise<number> {
  const found = await stat(file).catch(() => null)
  if (found?.isFile() !== true) throw new CouldNot(`${file} is no file that can be read.`, 'Check its name.')
  return found.size
}

async function prove(
  job: string,
  first: string,
  second: string,
  flags: Flags & { what: string },
): Promise<void> {
  leaveNoCore()
  const [one, other] = await Promise.all([stat(first).catch(() => null), stat(second).catch(() => null)])
  if (one !== null && other !== null && one.ino === other.ino && one.dev === other.dev)
    throw new CouldNot('Both names are the same file.', 'Read the memory a second time, into another file.')
  await Promise.all([lengthOf(first), lengthOf(second)])
  await withStore(flags, async (store) => {
    const to = await sealToOf(store, flags.passphraseFile)
    const key = freshKey()
    const comparison = await compareReads(fileSource(first), fileSource(second), key)
    for (const found of comparison.findings)
      sayFinding(found.where.part === 'first read' ? first : second, found)
    if (!comparison.proven) {
      process.exitCode = exit.no
      if (flags.json === true) printJson({ job, proven: false, ...told(comparison) })
      else print(paint('Not proven. Nothing was sealed or recorded.', 'bold'))
      return
    }
    const { bytes, digest } = comparison.first
    const source = fileSource(first)
    const secret = {
      source,
      class: 'immobiliser-data',
      what: flags.what,
      bytes,
      key,
      expected: digest,
    } as const
    const kept = await keepSealed(store, secret, to)
    await recordIn(store, job, whoRecords(flags), [secretSealed(kept), backupProven(comparison, kept)])
    if (flags.json === true) printJson({ job, proven: true, secret: kept.blob, ...told(comparison) })
    else print(`${paint('Proven:', 'green')} two equal reads of ${bytes} bytes, sealed as ${kept.blob}.`)
    say(
      'The two files you read are still in the clear where they are. Delete them once this is sent or backed up.',
    )
  })
}

function told({ first, second, findings }: Awaited<ReturnType<typeof compareReads>>) {
  return { first, second, findings: findings.map(({ code, where, what }) => ({ code, where, what })) }
}

async function seal(
  job: string,
  file: string,
  flags: Flags & { what: string; class: SecretClass },
): Promise<void> {
  leaveNoCore()
  const bytes = await lengthOf(file)
  await withStore(flags, async (store) => {
    const to = await sealToOf(store, flags.passphraseFile)
    const secret = { source: fileSource(file), class: flags.class, what: flags.what, bytes, key: freshKey() }
    const kept = await sealIntoJob(store, job, whoRecords(flags), secret, to)
    if (flags.json === true) printJson({ job, secret: kept.blob, bytes, digest: kept.digest })
    else print(`Sealed ${bytes} bytes as ${kept.blob}.`)
    say(`${file} is still in the clear where it is.`)
  })
}

function list(job: string, flags: Flags): Promise<void> {
  return withStore(flags, async (store) => {
    const secrets = secretsOf(await store.factsOfJob(job))
    const names = new Map(
      readRecipients(await store.setting(recipientsSetting)).map(({ recipient, name }) => [recipient, name]),
    )
    for (const { sealed, at, by, opened } of secrets) {
      const here = (await store.blobEntry(sealed.blob)) !== null
      if (flags.json === true) {
        printJson({ ...sealed, at, by, here, opened })
        continue
      }
      const openers = sealed.passphrase
        ? 'a passphrase'
        : sealed.recipients.map((one) => names.get(one) ?? one).join(', ')
      print(
        `${sealed.blob.slice(0, 12)}  ${sealed.what} (${sealed.class}), ${sealed.secretBytes ?? '?'} bytes`,
      )
      print(`  sealed ${at} by ${by} for ${openers}${here ? '' : '; the sealed file is not here'}`)
      for (const opening of opened) print(`  opened ${opening.at} by ${opening.by}: ${opening.reason}`)
    }
  })
}

async function open(job: string, name: string, flags: Flags & OpenFlags): Promise<void> {
  leaveNoCore()
  const reason = flags.reason.trim()
  if (reason === '') throw new CouldNot('Opening needs a reason.', 'Say why with --reason.')
  const out = resolve(flags.out)
  if (`${out}${sep}`.startsWith(`${dataFolder(flags)}${sep}`))
    throw new CouldNot(
      'That file would lie in the data folder.',
      'Secrets are kept there only sealed; name another place.',
    )
  if (existsSync(out) || !existsSync(dirname(out)))
    throw new CouldNot(`${out} exists already, or its folder does not.`, 'Name a new file.')
  const passphrase =
    flags.passphraseFile === undefined ? undefined : await passphraseFrom(flags.passphraseFile)
  const keys =
    flags.identity !== undefined
      ? { identities: await readIdentities(await bytesOf(flags.identity), passphrase) }
      : { passphrases: passphrase === undefined ? [] : [passphrase] }
  await withStore(flags, async (store) => {
    const { sealed } = secretNamed(await store.factsOfJob(job), name)
    const by = whoRecords(flags)
    const saved = await saveSecret(store, { job, secret: sealed, keys, reason, by, out })
    const answer = { job, secret: sealed.blob, file: out, ...saved }
    if (saved.asRecorded === false) process.exitCode = exit.no
    if (flags.json === true) printJson(answer)
    else print(`${saved.bytes} bytes in ${out}. ${asRecorded[String(saved.asRecorded)]}`)
    say('The file is in the clear. Delete it as soon as it has served.')
  })
}

const asRecorded: Readonly<Record<string, string>> = {
  true: 'They are the ones that were recorded when it was sealed.',
  false: 'They are NOT the ones that were recorded when it was sealed.',
  null: 'The record holds no digest to compare them with.',
}
