import type { Body } from '@shearline/jobfile'
import { type ReactNode, useState } from 'react'
import { Amount } from '../form/Amount.tsx'
import { Choice } from '../form/Choice.tsx'
import formCss from '../form/form.module.css'
import { Words } from '../form/Words.tsx'
import { t, type WordKey } from '../words/index.ts'
import { useDesk } from './desk.ts'
import { Facts } from './Facts.tsx'
import { Part, RecordForm, useFresh } from './Part.tsx'

type Rule = Body<'rule-chosen'>

const parameters = {
  kind: ['replace-all', 'append', 'append-drop-oldest', 'unknown'],
  commits: ['at-close', 'each-key', 'unknown'],
  erases: ['at-open', 'at-close', 'never', 'unknown'],
  onBreak: ['revert', 'keep-so-far', 'unknown'],
  opensWith: ['equipment', 'accepted-key', 'two-accepted-keys', 'unknown'],
  sameKeyTwice: ['refused', 'ignored', 'counts', 'unknown'],
} as const
type Parameter = keyof typeof parameters

/** How this car learns keys, as far as it is known; what is not known counts as its worst. */
export function RulePart() {
  const { state } = useDesk()
  const { rule } = state.teaching
  const [fresh, renew] = useFresh()
  const rows =
    rule === null
      ? []
      : (Object.keys(parameters) as Parameter[]).map((name): readonly [string, ReactNode] => [
          t(`rule.${name}`),
          valueWords(name, rule[name]),
        ])
  return (
    <Part
      title={t('rule.title')}
      need="rule-not-chosen"
      settled={rule !== null}
      more={t('rule.again')}
      about={
        rule !== null && (
          <Facts rows={[...rows, [t('rule.capacity'), rule.capacity], [t('rule.source'), rule.source]]} />
        )
      }
    >
      <RuleForm key={fresh} onDone={renew} />
    </Part>
  )
}

function valueWords(name: Parameter, value: string): string {
  const key =
    name === 'kind' ? `rule-kind.${value}` : value === 'unknown' ? 'rule.unknown' : `rule.${name}.${value}`
  return t(key as WordKey)
}

const unknownRule: Rule = {
  kind: 'unknown',
  commits: 'unknown',
  erases: 'unknown',
  onBreak: 'unknown',
  opensWith: 'unknown',
  sameKeyTwice: 'unknown',
  capacity: 8,
  source: '',
}

/** Behaviours seen on many cars (practice notes 1.1 and 1.2), to start the answers from; no maker's system. */
const usual = [
  {
    name: 'saved-at-end',
    parts: { kind: 'replace-all', commits: 'at-close', erases: 'at-close', onBreak: 'revert' },
  },
  {
    name: 'rewritten-key-by-key',
    parts: { kind: 'replace-all', commits: 'each-key', erases: 'at-close', onBreak: 'keep-so-far' },
  },
  { name: 'added', parts: { kind: 'append', commits: 'each-key', erases: 'never', onBreak: 'keep-so-far' } },
] as const

function RuleForm({ onDone }: { readonly onDone: () => void }) {
  const { state } = useDesk()
  const [rule, setRule] = useState<Rule>(state.teaching.rule ?? unknownRule)
  const [capacity, setCapacity] = useState<number | null>(rule.capacity)
  const choice = (name: Parameter) => (
    <Choice
      key={name}
      label={t(`rule.${name}`)}
      value={rule[name] as string}
      onChange={(value) => setRule({ ...rule, [name]: value })}
      options={parameters[name].map((value) => [value, valueWords(name, value)])}
    />
  )
  return (
    <RecordForm
      submit={t('record')}
      onDone={onDone}
      drafts={() => (capacity === null ? null : [{ kind: 'rule-chosen', body: { ...rule, capacity } }])}
    >
      <div className={formCss.field}>
        <span className={formCss.label}>{t('rule.usual')}</span>
        <div className={formCss.choices}>
          {usual.map(({ name, parts }) => (
            <button
              key={name}
              type="button"
              className={formCss.plain}
              onClick={() => setRule({ ...rule, ...parts })}
            >
              {t(`rule.usual.${name}`)}
            </button>
          ))}
        </div>
        <span className={formCss.hint}>{t('rule.usual.hint')}</span>
      </div>
      {choice('kind')}
      {choice('commits')}
      {choice('erases')}
      {choice('onBreak')}
      {choice('opensWith')}
      <details className={formCss.more}>
        <summary>{t('rule.more')}</summary>
        {choice('sameKeyTwice')}
        <Amount label={t('rule.capacity')} value={capacity} onChange={setCapacity} least={1} most={99} />
      </details>
      <Words
        label={t('rule.source')}
        hint={t('rule.source.hint')}
        value={rule.source}
        onChange={(source) => setRule({ ...rule, source })}
      />
    </RecordForm>
  )
}
