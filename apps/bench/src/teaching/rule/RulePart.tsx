import { useState } from 'react'
import { useDesk } from '../../job/desk.ts'
import { Facts } from '../../job/Facts.tsx'
import { Part, useFresh } from '../../job/Part.tsx'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import { answersOf, isAsked, notKnown } from './answers.ts'
import { ChooseStart, Chosen } from './ChooseStart.tsx'
import { questions } from './questions.ts'
import { RuleForm } from './RuleForm.tsx'
import { type RuleBody, ruleOf } from './rule-of.ts'
import { answerWords } from './rule-words.ts'
import { isArchetype, type Start } from './starts.ts'

/** How this car learns keys, as far as it is known; what is not known counts as its worst. */
export function RulePart() {
  const { state } = useDesk()
  const { rule } = state.teaching
  const [fresh, renew] = useFresh()
  return (
    <Part
      title={t('rule.title')}
      need="rule-not-chosen"
      settled={rule !== null}
      more={t('rule.again')}
      about={rule !== null && <OnRecord rule={rule} />}
    >
      <ChooseRule key={fresh} onDone={renew} />
    </Part>
  )
}

function ChooseRule({ onDone }: { readonly onDone: () => void }) {
  const [start, setStart] = useState<Start | null>(null)
  if (start === null) return <ChooseStart onChoose={setStart} />
  return (
    <>
      <Chosen start={start} onLeave={() => setStart(null)} />
      <RuleForm start={start} onDone={onDone} />
    </>
  )
}

/** The rule on record in words: its name, what it means for keys that are not here, and its answers. */
function OnRecord({ rule }: { readonly rule: RuleBody }) {
  const answers = answersOf(ruleOf(rule))
  const asked = questions.filter((question) => isAsked(question, answers))
  const open = asked.filter(({ path }) => answers[path] === notKnown).length
  const told = asked.filter(
    ({ path, group }) => group === 'session' || group === 'numbers' || answers[path] !== notKnown,
  )
  const { archetype = '' } = rule
  return (
    <>
      <p>
        <strong>
          {rule.name ??
            (isArchetype(archetype) ? say(`archetype.${archetype}`) : t(`rule-kind.${rule.kind}`))}
        </strong>
        {isArchetype(archetype) && <span className={css.under}>{say(`archetype-absent.${archetype}`)}</span>}
      </p>
      {open > 0 && <p className={css.under}>{t('rule.open', { count: open })}</p>}
      <Facts
        rows={[
          [t('rule.source'), rule.source],
          ...told.map(({ path }) => [t(`rule.${path}`), answerWords(path, answers[path])] as const),
        ]}
      />
    </>
  )
}
