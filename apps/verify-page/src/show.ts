/** @module Shows what verification came to: the verdict, each check, what does not hold and where, whose seal it is. */
import { describeWhere, type Finding } from '@shearline/bus'
import { factName, type GivenCheck, type HandoverCheck, type JobRecord } from '@shearline/jobfile'
import { checks } from './checks.ts'
import { asStated, element, english, markShape, table } from './dom.ts'
import { fileStrip } from './strip.ts'
import { t, type WordKey } from './words.ts'

/** What a person has typed into the result, kept when the page says it again in another language. */
interface Entered {
  fingerprint: string
}

/** The whole result for a file, and the heading to move to. */
export function result(
  given: GivenCheck,
  file: { readonly name: string; readonly size: number },
  entered: Entered,
): HTMLElement {
  const { check } = given
  const { record } = check
  const findings: readonly Finding<string>[] = check.findings
  const sealed = given.what === 'file' && given.check.sealedBy !== null
  const coverage = given.what === 'file' ? given.check.coverage : null
  return element(
    'div',
    { id: 'result', 'data-proven': String(check.proven) },
    verdict(given, file.name),
    wrong(findings),
    element('section', { class: 'sheet' }, element('ul', { class: 'checks' }, ...checks(given))),
    sealed ? whoseSeal(given.check as HandoverCheck, entered) : null,
    coverage === null ? null : fileStrip(coverage),
    record === null ? null : facts(record, findings),
    about(given, file),
  )
}

function verdict({ what, check }: GivenCheck, name: string): HTMLElement {
  const wrongs = check.findings.filter(({ severity }) => severity === 'error').length
  const bare = what === 'file' && check.sealedBy === null
  const means: WordKey = !check.proven
    ? 'verdict.fails-means'
    : what === 'bundle'
      ? 'verdict.holds-bundle'
      : bare
        ? 'verdict.holds-record'
        : 'verdict.holds-means'
  return element(
    'section',
    { class: `verdict ${check.proven ? 'holds' : 'fails'}`, role: 'status' },
    markShape(check.proven ? 'holds' : 'fails'),
    element(
      'div',
      {},
      element('h1', { tabindex: '-1', id: 'verdict' }, t(check.proven ? 'verdict.holds' : 'verdict.fails')),
      element('p', {}, t(means, { name, count: wrongs })),
    ),
  )
}

function wrong(findings: readonly Finding<string>[]): HTMLElement | null {
  if (findings.length === 0) return null
  const items = findings.map(({ where, what, doNext, severity, code }) =>
    element(
      'li',
      { 'data-code': code, 'data-severity': severity },
      severity === 'error' ? null : element('span', { class: 'note' }, t('wrong.note')),
      english('strong', {}, describeWhere(where)),
      english('span', { class: 'what' }, what),
      english('span', { class: 'next' }, doNext),
    ),
  )
  return element(
    'section',
    { class: 'sheet' },
    element(
      'h2',
      {},
      t(findings.some(({ severity }) => severity === 'error') ? 'wrong.title' : 'wrong.notes'),
    ),
    element('ol', { class: 'wrong' }, ...items),
  )
}

function whoseSeal({ sealedBy }: HandoverCheck, entered: Entered): HTMLElement | null {
  if (sealedBy === null) return null
  const { device, name, fingerprint } = sealedBy
  const answer = element('p', { role: 'status', id: 'compared' })
  const field = element('input', {
    id: 'fingerprint',
    type: 'text',
    autocomplete: 'off',
    spellcheck: 'false',
    autocapitalize: 'off',
    dir: 'ltr',
  })
  field.value = entered.fingerprint
  const compare = () => {
    entered.fingerprint = field.value
    const given = field.value.toLowerCase().replace(/[^0-9a-f]/g, '')
    answer.textContent =
      given === ''
        ? ''
        : given.length < 64
          ? t('who.short', { count: given.length })
          : t(given === fingerprint ? 'who.same' : 'who.other')
    answer.className = given.length < 64 ? '' : given === fingerprint ? 'same' : 'other'
  }
  compare()
  field.addEventListener('input', compare)
  return element(
    'section',
    { class: 'sheet' },
    element('h2', {}, t('who.title')),
    pairs([
      [t('who.device'), asStated(name === '' ? device : `${name} (${device})`)],
      [t('who.print'), element('code', { dir: 'ltr' }, inGroups(fingerprint))],
    ]),
    element('p', {}, t('who.means')),
    element('label', { for: 'fingerprint' }, t('who.compare')),
    field,
    answer,
  )
}

function facts({ facts }: JobRecord, findings: readonly Finding<string>[]): HTMLElement {
  const wrong = new Set(
    findings.filter(({ severity }) => severity === 'error').map(({ where }) => where.part),
  )
  const rows = facts.map(({ kind, at, by }, index) => {
    const name = factName(index + 1, kind)
    return [
      english('span', {}, name),
      asStated(at),
      asStated(by),
      t(wrong.has(name) ? 'mark.fails' : 'mark.holds'),
    ]
  })
  const heads = [t('facts.fact'), t('facts.at'), t('facts.by'), t('strip.state')]
  return element(
    'section',
    { class: 'sheet' },
    element(
      'details',
      {},
      element('summary', {}, t('facts.title', { count: facts.length })),
      table(heads, rows),
    ),
  )
}

function about(
  { what, check }: GivenCheck,
  file: { readonly name: string; readonly size: number },
): HTMLElement {
  return element(
    'section',
    { class: 'sheet' },
    element('h2', {}, t('file.title')),
    pairs([
      [t('file.name'), asStated(file.name)],
      [t('file.bytes'), String(file.size)],
      ...(check.record === null ? [] : [[t('file.job'), asStated(check.record.job)] as const]),
      ...(what === 'bundle' && check.packedBy !== null
        ? [[t('who.packed'), asStated(check.packedBy)] as const]
        : []),
    ]),
  )
}

function pairs(rows: readonly (readonly [string, Node | string])[]): HTMLElement {
  return element(
    'dl',
    {},
    ...rows.flatMap(([label, value]) => [element('dt', {}, label), element('dd', {}, value)]),
  )
}

/** Hex in groups of four, so that two people can read it to each other. */
function inGroups(hex: string): string {
  return hex.match(/.{1,4}/g)?.join(' ') ?? ''
}
