import { useEffect, useRef, useState } from 'react'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { say } from '../../words/engine.ts'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import { forgetRule, type KeptRule, keptRules } from './kept-rules.ts'
import { behaviours, isArchetype, type Start, startOfKept, startOfRecord } from './starts.ts'

/** How cars learn keys, by behaviour, each with what becomes of keys that are not here; the firm's own rules first. */
export function ChooseStart({ onChoose }: { readonly onChoose: (start: Start) => void }) {
  const { rule } = useDesk().state.teaching
  const [own, setOwn] = useState<readonly KeptRule[]>([])
  useEffect(() => {
    let live = true
    // Without storage there are no own rules; the behaviours are always there.
    keptRules().then(
      (rules) => live && setOwn(rules),
      () => undefined,
    )
    return () => {
      live = false
    }
  }, [])
  const first = [...(rule === null ? [] : [startOfRecord(rule)]), ...own.map(startOfKept)]
  return (
    <>
      {first.length > 0 && <Starts title={t('rule.own')} starts={first} onChoose={onChoose} />}
      <Starts title={t('rule.behaviours')} starts={behaviours} onChoose={onChoose} />
    </>
  )
}

function Starts({
  title,
  starts,
  onChoose,
}: {
  readonly title: string
  readonly starts: readonly Start[]
  readonly onChoose: (start: Start) => void
}) {
  return (
    <div className={formCss.field}>
      <p className={formCss.label}>{title}</p>
      <ul className={css.starts}>
        {starts.map((start) => (
          <li key={start.id}>
            <button type="button" className={css.start} onClick={() => onChoose(start)}>
              <StartWords start={start} />
            </button>
          </li>
        ))}
      </ul>
    </div>
  )
}

/** The rule the form starts from, with the way to another one and, for one of the firm's own, to forget it. */
export function Chosen({ start, onLeave }: { readonly start: Start; readonly onLeave: () => void }) {
  const again = useRef<HTMLButtonElement>(null)
  // The list that held the focus is gone: go on from here.
  useEffect(() => again.current?.focus(), [])
  return (
    <div className={css.chosen}>
      <StartWords start={start} />
      <div className={formCss.foot}>
        <button type="button" ref={again} className={formCss.plain} onClick={onLeave}>
          {t('rule.another')}
        </button>
        {start.id.startsWith('kept ') && (
          <button
            type="button"
            className={formCss.plain}
            onClick={() => {
              // What cannot be forgotten is offered again; nothing else hangs on it.
              void forgetRule(start.name)
                .catch(() => undefined)
                .then(onLeave)
            }}
          >
            {t('rule.forget', { name: start.name })}
          </button>
        )}
      </div>
    </div>
  )
}

function StartWords({ start }: { readonly start: Start }) {
  return (
    <>
      <strong>{titleOf(start)}</strong>
      {isArchetype(start.archetype) && <span>{say(`archetype-absent.${start.archetype}`)}</span>}
    </>
  )
}

function titleOf({ id, name, archetype, rule }: Start): string {
  const own =
    name !== '' ? name : isArchetype(archetype) ? say(`archetype.${archetype}`) : t(`rule-kind.${rule.kind}`)
  return id === 'on record' ? t('rule.on-record', { name: own }) : own
}
