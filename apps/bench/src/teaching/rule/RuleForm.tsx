import type { Body } from '@shearline/jobfile'
import { type SyntheticEvent, useState } from 'react'
import { Choice } from '../../form/Choice.tsx'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { useDesk } from '../../job/desk.ts'
import { RecordForm } from '../../job/Part.tsx'
import type { Draft } from '../../sync/write.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import { type Answer, type Answers, answersOf, isAsked, ruleFrom } from './answers.ts'
import { keepRule } from './kept-rules.ts'
import { type Group, groups, questions, type RulePath } from './questions.ts'
import { RuleQuestion } from './RuleQuestion.tsx'
import type { Start } from './starts.ts'

type NewKeys = NonNullable<Body<'rule-chosen'>['newKeys']>
const newKeyStates = ['blank', 'prepared', 'pre-coded', 'unknown'] as const

/** A rule put into plain questions, filled in from where it starts. */
export function RuleForm({ start, onDone }: { readonly start: Start; readonly onDone: () => void }) {
  const onRecord = useDesk().state.teaching.rule
  const [answers, setAnswers] = useState<Answers>(() => answersOf(start.rule))
  const [open, setOpen] = useState<ReadonlySet<Group>>(new Set(['session']))
  const [tried, setTried] = useState(false)
  const [source, setSource] = useState(start.source)
  const [name, setName] = useState(start.name)
  const [newKeys, setNewKeys] = useState<NewKeys>(onRecord?.newKeys ?? 'blank')
  const [code, setCode] = useState<'yes' | 'no' | 'unknown'>('unknown')
  const made = ruleFrom(answers)
  const wrong = 'path' in made ? made.path : null

  const drafts = (): readonly Draft[] | null => {
    if ('path' in made) {
      setTried(true)
      const group = questions.find((question) => question.path === made.path)?.group
      if (group !== undefined) setOpen(new Set([...open, group]))
      return null
    }
    const own = name.trim()
    const { archetype } = start
    const body = {
      // The form's rule has every word the record has; only its lists are read-only.
      ...(structuredClone(made) as unknown as Omit<Body<'rule-chosen'>, 'source'>),
      source,
      newKeys,
      ...(made.gate === undefined ? {} : { codeAtHand: code === 'unknown' ? code : code === 'yes' }),
      ...(archetype === '' ? {} : { archetype }),
      ...(own === '' ? {} : { name: own }),
    }
    return [{ kind: 'rule-chosen', body }]
  }
  const kept = () => {
    const own = name.trim()
    // A name that cannot be kept on this device is still on record; nothing else hangs on it.
    if (own !== '' && !('path' in made))
      void keepRule({ name: own, rule: made, source, archetype: start.archetype }).catch(() => undefined)
    onDone()
  }
  return (
    <RecordForm submit={t('rule.record')} onDone={kept} drafts={drafts}>
      <p className={formCss.hint}>{t('rule.form')}</p>
      {groups.map((group) => (
        <details
          key={group}
          className={formCss.more}
          open={open.has(group)}
          onToggle={(event: SyntheticEvent<HTMLDetailsElement>) => {
            const next = new Set(open)
            if (event.currentTarget.open) next.add(group)
            else next.delete(group)
            if (next.size !== open.size) setOpen(next)
          }}
        >
          <summary>{t(`rule.group.${group}`)}</summary>
          <div className={css.questions}>
            {questions
              .filter((question) => question.group === group && isAsked(question, answers))
              .map((question) => (
                <RuleQuestion
                  key={question.path}
                  question={question}
                  path={question.path}
                  value={answers[question.path] ?? null}
                  problem={tried && wrong === question.path ? wrongWords(question.path, answers) : ''}
                  onChange={(value: Answer) => setAnswers({ ...answers, [question.path]: value })}
                />
              ))}
          </div>
        </details>
      ))}
      {answers.gate !== 'no' && (
        <Choice
          label={t('rule.code')}
          hint={t('rule.code.hint')}
          value={code}
          onChange={setCode}
          options={(['yes', 'no', 'unknown'] as const).map((each) => [
            each,
            each === 'unknown' ? t('rule.unknown') : t(each),
          ])}
        />
      )}
      <Choice
        label={t('rule.new-keys')}
        value={newKeys}
        onChange={setNewKeys}
        options={newKeyStates.map((each) => [
          each,
          each === 'unknown' ? t('rule.unknown') : t(`rule.accepts.${each}`),
        ])}
      />
      <Words label={t('rule.source')} hint={t('rule.source.hint')} value={source} onChange={setSource} />
      <Words label={t('rule.name')} hint={t('rule.name.hint')} value={name} onChange={setName} optional />
    </RecordForm>
  )
}

function wrongWords(path: RulePath, answers: Answers): string {
  const answer = answers[path]
  if (path === 'leastKeys' && typeof answer === 'number') return t('rule.wrong.least')
  return t(answer === null ? 'rule.wrong.missing' : 'rule.wrong.figure')
}
