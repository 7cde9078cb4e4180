import { useMemo, useState } from 'react'
import { Amount } from '../../form/Amount.tsx'
import formCss from '../../form/form.module.css'
import { useDesk } from '../../job/desk.ts'
import { ifItStops } from '../../job/if-it-stops.ts'
import { Part, RecordForm } from '../../job/Part.tsx'
import { Tag } from '../../keys/Tag.tsx'
import { t } from '../../words/index.ts'
import css from '../teaching.module.css'
import { sessionOrder } from '../teaching-order.ts'
import { ItStopped } from './ItStopped.tsx'
import { Meters } from './Meters.tsx'
import { TakeBack } from './TakeBack.tsx'

/** An open session, one step at a time: what to do, what to say, the count, and the way to say that it stopped. */
export function SessionGuide() {
  const { state } = useDesk()
  const { shown, order } = sessionOrder(state)
  const left = order.filter((key) => !shown.includes(key))
  const [chosen, setChosen] = useState('')
  const [stopping, setStopping] = useState(false)
  const next = left.includes(chosen) ? chosen : left[0]
  const now = useMemo(() => ifItStops(state), [state])
  return (
    <>
      <section
        className={css.guide}
        aria-label={t('guide.title')}
        // The next step leads to the whole card: what to do and what to say, then what to fill in.
        data-need={next === undefined ? 'session-not-closed' : `key-not-taught key-not-taught:${next}`}
      >
        <p className={css.guideCount}>
          {t('guide.count', { step: shown.length + 2, of: order.length + 2 })}
          {' · '}
          {t('guide.keys', { count: shown.length, of: order.length })}
        </p>
        {next === undefined ? (
          <h3 className={css.guideStep}>{t('teach.close')}</h3>
        ) : (
          <h3 className={css.guideStep}>
            <BigTag label={next} />
            {t('teach.key', { key: next })}
          </h3>
        )}
        <p className={css.say}>
          {next === undefined
            ? t('guide.say.close')
            : t('guide.say.show', { key: next, left: left.length - 1 })}
        </p>
        <Meters />
        {next !== undefined && <ShowKey key={next} label={next} />}
        {left.length > 1 && (
          <div className={formCss.foot}>
            <span className={css.under}>{t('guide.other')}</span>
            {left
              .filter((key) => key !== next)
              .map((key) => (
                <button key={key} type="button" className={formCss.plain} onClick={() => setChosen(key)}>
                  {t('guide.first', { key })}
                </button>
              ))}
          </div>
        )}
        {next === undefined && <Close ready />}
        <p className={css.guideStops}>
          <strong>{t('stops.title')}:</strong> {now.keys} <span className={css.quiet}>{now.wayBack}</span>
        </p>
        <button type="button" className={css.itStopped} onClick={() => setStopping(true)}>
          {t('stopped.button')}
        </button>
      </section>
      {shown.length > 0 && (
        <ul className={css.doneSteps}>
          {[...new Set(shown)].map((key) => (
            <li key={key}>
              <span>{t('teach.taught', { key })}</span>
              {key === shown.at(-1) && <TakeBack kind="key-taught" named={key} />}
            </li>
          ))}
        </ul>
      )}
      {next !== undefined && (
        <Part title={t('teach.close')} need="session-not-closed" settled more={t('teach.close.early')}>
          <Close ready={false} />
        </Part>
      )}
      {stopping && <ItStopped onClose={() => setStopping(false)} />}
    </>
  )
}

function BigTag({ label }: { readonly label: string }) {
  const key = useDesk().state.keys.find((one) => one.id === label)
  return key === undefined ? null : <Tag letter={label} colour={key.colour} />
}

function ShowKey({ label }: { readonly label: string }) {
  const [count, setCount] = useState<number | null>(null)
  const [volts, setVolts] = useState<number | null>(null)
  return (
    <RecordForm
      submit={t('teach.key.record', { key: label })}
      drafts={() => [
        {
          kind: 'key-taught',
          body: {
            key: label,
            ...(count === null ? {} : { carCount: count }),
            ...(volts === null ? {} : { volts }),
          },
        },
      ]}
    >
      <div className={formCss.row}>
        <Amount
          label={t('teach.count')}
          hint={t('teach.count.hint')}
          value={count}
          onChange={setCount}
          most={99}
          optional
        />
        <Amount
          label={t('supply.volts')}
          unit="V"
          value={volts}
          onChange={setVolts}
          most={60}
          step={0.1}
          decimals={2}
          optional
        />
      </div>
    </RecordForm>
  )
}

function Close({ ready }: { readonly ready: boolean }) {
  const [count, setCount] = useState<number | null>(null)
  return (
    <RecordForm
      submit={t('teach.close.record')}
      drafts={() => [{ kind: 'session-closed', body: count === null ? {} : { carCount: count } }]}
    >
      {!ready && <p>{t('teach.not-all')}</p>}
      <Amount
        label={t('teach.count')}
        hint={t('teach.count.hint')}
        value={count}
        onChange={setCount}
        most={99}
        optional
      />
    </RecordForm>
  )
}
