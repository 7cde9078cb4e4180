import { randomUUID } from 'node:crypto'
import { readFile, writeFile } from 'node:fs/promises'
import { join } from 'node:path'
import {
  amountsOf,
  draftInvoice,
  FactRefused,
  foldJob,
  type Invoice,
  type InvoiceDetails,
  type InvoiceFinding,
  invoiceFindings,
  invoiceXml,
  moneyText,
  readBody,
} from '@shearline/jobfile'
import type { Store } from '@shearline/store'
import type { Command } from 'commander'
import { type DataFlags, dataFolder, whoRecords, withStore } from '../job/data.ts'
import { CouldNot, exit, paint, print, printJson } from '../output/answer.ts'
import { jsonOf } from '../output/input.ts'

type Flags = DataFlags & { readonly json?: boolean; readonly xml?: string; readonly issue?: string }

/**
 * `shearline invoice JOB`: the electronic invoice of a job (EN 16931), issued from the agreed price or written out.
 * A job sealed after it was issued carries it inside the document.
 */
export function addInvoice(program: Command): void {
  program
    .command('invoice')
    .description('Issue the electronic invoice of a job (EN 16931), show it or write it as XML')
    .argument('<job>')
    .option(
      '--issue <details>',
      'issue it from the agreed price and these details (JSON: number, issued, due or terms, buyer, category, rateBasisPoints, priceIncludesTax; seller, unless DATA/seller.json has it); - for standard input',
    )
    .option(
      '--xml <file>',
      'write the invoice as XML (UN/CEFACT Cross Industry Invoice); - for standard output',
    )
    .option('--data <folder>', 'data folder (default: SHEARLINE_DATA, else .shearline here)')
    .option('--by <name>', 'who records (default: SHEARLINE_BY, else this user)')
    .option('--json', 'one JSON object')
    .action((job: string, flags: Flags) => withStore(flags, (store) => run(store, job, flags)))
}

async function run(store: Store, job: string, flags: Flags): Promise<void> {
  const state = foldJob(job, await store.factsOfJob(job))
  if (state.opened === null)
    throw new CouldNot(`There is no job "${job}".`, 'List them with: shearline job list.')
  const invoice =
    flags.issue === undefined
      ? state.invoice
      : drafted(state.price, await detailsOf(flags.issue, dataFolder(flags)))
  if (invoice === null)
    throw new CouldNot(`Job "${job}" has no invoice.`, 'Issue one with --issue DETAILS.json.')
  const findings = invoiceFindings(invoice)
  if (findings.length === 0 && flags.issue !== undefined) await issue(store, job, invoice, flags)
  if (findings.length === 0 && flags.xml !== undefined) await writeXml(flags.xml, invoice)
  process.exitCode = findings.length === 0 ? exit.answered : exit.no
  // The XML on standard output stands alone.
  if (flags.xml !== '-' || findings.length > 0) answer(invoice, findings, flags)
}

/** Details as given, with the seller of the data folder where they name none. */
async function detailsOf(file: string, data: string): Promise<unknown> {
  const given = await jsonOf(file)
  if (typeof given !== 'object' || given === null || 'seller' in given) return given
  const kept = await readFile(join(data, 'seller.json'), 'utf8').catch(() => null)
  if (kept === null) return given
  try {
    return { ...given, seller: JSON.parse(kept) }
  } catch {
    throw new CouldNot(
      `${join(data, 'seller.json')} is not JSON.`,
      'Mend it, or name the seller in the details.',
    )
  }
}

/** The invoice of details that a person wrote. Throws CouldNot with the first field that is not in order. */
function drafted(price: Parameters<typeof draftInvoice>[0] | null, details: unknown): Invoice {
  if (price === null)
    throw new CouldNot('No price is agreed, so there is nothing to invoice.', 'Record price-agreed first.')
  if (typeof details !== 'object' || details === null || Array.isArray(details))
    throw new CouldNot('The details are not a JSON object.', 'Give { "number": ..., "issued": ..., ... }.')
  const { priceIncludesTax, category = 'S', rateBasisPoints = 0 } = details as Partial<InvoiceDetails>
  if (typeof priceIncludesTax !== 'boolean')
    throw new CouldNot(
      'priceIncludesTax: it must be said whether the agreed price holds the tax.',
      'Give true or false.',
    )
  if (!Number.isInteger(rateBasisPoints) || rateBasisPoints < 0 || rateBasisPoints > 10_000)
    throw new CouldNot('rateBasisPoints: this is no rate in hundredths of a percent.', 'Give 2300 for 23 %.')
  const draft = draftInvoice(price, {
    ...(details as InvoiceDetails),
    priceIncludesTax,
    category,
    rateBasisPoints,
  })
  const read = readBody('invoice-issued', { ...draft })
  if (!read.ok) throw new CouldNot(`${read.path}: ${read.what}`, 'Mend the details and try again.')
  return read.body as Invoice
}

async function issue(store: Store, job: string, invoice: Invoice, flags: Flags): Promise<void> {
  const known = await store.jobEntry(job)
  const at = new Date(
    Math.max(Date.now(), Date.parse(known?.lastAt ?? '1970-01-01T00:00:00.000Z')),
  ).toISOString()
  try {
    await store.writeOwn([
      { id: randomUUID(), job, at, by: whoRecords(flags), kind: 'invoice-issued', body: { ...invoice } },
    ])
  } catch (error) {
    if (error instanceof FactRefused) throw new CouldNot(error.message, '')
    throw error
  }
}

async function writeXml(file: string, invoice: Invoice): Promise<void> {
  const xml = invoiceXml(invoice)
  if (file === '-') {
    process.stdout.write(xml)
    return
  }
  await writeFile(file, xml).catch((error: NodeJS.ErrnoException) => {
    throw new CouldNot(`${file} could not be written (${error.message}).`, 'Choose another place.')
  })
}

function answer(invoice: Invoice, findings: readonly InvoiceFinding[], flags: Flags): void {
  const amounts = amountsOf(invoice)
  if (flags.json === true) {
    const broken = findings.map(({ code, where, what, doNext }) => ({
      rule: code,
      where: where.part,
      what,
      doNext,
    }))
    const issued = findings.length === 0 && flags.issue !== undefined
    printJson({ number: invoice.number, issued, currency: invoice.currency, ...amounts, findings: broken })
    return
  }
  const money = (minor: number) => moneyText('en', invoice.currency, minor)
  print(`Invoice ${invoice.number} to ${invoice.buyer.name}, issued ${invoice.issued}`)
  print(
    `without tax ${money(amounts.basisMinor)}, tax ${money(amounts.taxMinor)}, due ${money(amounts.dueMinor)}`,
  )
  if (findings.length > 0) print(paint('Not issued: rules of EN 16931 are not kept.', 'red'))
  for (const { code, where, what, doNext } of findings) print(`- ${code}, ${where.part}: ${what} ${doNext}`)
  if (findings.length === 0 && flags.issue !== undefined)
    print('Issued. Seal the job (again) and the document carries it.')
}
