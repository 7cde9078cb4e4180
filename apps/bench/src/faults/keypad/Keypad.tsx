import { dtcBytes } from '@shearline/bus'
import type { UnitScan } from '@shearline/keywork'
import { type KeyboardEvent, type ReactNode, useRef, useState } from 'react'
import formCss from '../../form/form.module.css'
import { Words } from '../../form/Words.tsx'
import { useDesk } from '../../job/desk.ts'
import { t } from '../../words/index.ts'
import { knownUnits } from '../known-units.ts'
import type { ScannedUnits } from '../scanned.ts'
import css from './keypad.module.css'
import { FIRST_DIGITS, HEX_DIGITS, keysAfter, LETTERS, wholeCode, withKey } from './typing.ts'

type Typed = ReadonlyMap<string, readonly string[]>

/** A scan typed with large keys, unit by unit. */
export function Keypad({ keep }: { readonly keep: (units: ScannedUnits) => ReactNode }) {
  const { state } = useDesk()
  const [unit, setUnit] = useState<string | null>(null)
  const [scan, setScan] = useState<Typed>(new Map())
  const [typed, setTyped] = useState('')
  const pending = unit === null ? null : wholeCode(typed)
  // A whole code still on the display counts: nobody loses one by keeping the scan before "next code".
  const whole = pending === null || unit === null ? scan : withCode(scan, unit, pending)
  const settle = () => {
    setScan(whole)
    setTyped('')
  }
  const choose = (name: string) => {
    settle()
    setUnit(name)
  }
  const names = [...new Set([...knownUnits(state.scans), ...scan.keys(), ...(unit === null ? [] : [unit])])]
  return (
    <div className={css.pad}>
      <Units names={names} unit={unit} scan={whole} onChoose={choose} />
      {unit === null ? (
        <p className={formCss.hint}>{t('keypad.choose-unit')}</p>
      ) : (
        <Keys
          unit={unit}
          typed={typed}
          onTyped={setTyped}
          onNext={settle}
          onNone={() => {
            setScan(new Map(whole).set(unit, []))
            setTyped('')
            setUnit(null)
          }}
          mayBeNone={typed === '' && (scan.get(unit) ?? []).length === 0}
        />
      )}
      <TypedList
        scan={whole}
        onChange={(next) => {
          setScan(next)
          setTyped('')
        }}
      />
      {whole.size > 0 && keep(unitsOf(whole))}
    </div>
  )
}

function withCode(scan: Typed, unit: string, code: string): Typed {
  const codes = scan.get(unit) ?? []
  return codes.includes(code) ? scan : new Map(scan).set(unit, [...codes, code])
}

function unitsOf(scan: Typed): ScannedUnits {
  return [...scan].map(
    ([unit, codes]): UnitScan => ({
      unit,
      time: null,
      availability: null,
      faults: codes.map((code) => ({ code, raw: hex(dtcBytes(code)), status: null })),
    }),
  )
}

function hex(bytes: Uint8Array | undefined): string {
  return [...(bytes ?? [])].map((byte) => byte.toString(16).toUpperCase().padStart(2, '0')).join('')
}

function Units({
  names,
  unit,
  scan,
  onChoose,
}: {
  readonly names: readonly string[]
  readonly unit: string | null
  readonly scan: Typed
  readonly onChoose: (name: string) => void
}) {
  const [name, setName] = useState('')
  const add = () => {
    if (name.trim() === '') return
    onChoose(name.trim())
    setName('')
  }
  return (
    <fieldset className={formCss.field}>
      <legend className={formCss.label}>{t('keypad.units')}</legend>
      <div className={formCss.choices}>
        {names.map((one) => (
          <button
            key={one}
            type="button"
            className={css.unit}
            aria-pressed={one === unit}
            onClick={() => onChoose(one)}
          >
            {one}
            {scan.has(one) && <span className={css.count}>{scan.get(one)?.length}</span>}
          </button>
        ))}
      </div>
      <form
        className={css.adder}
        onSubmit={(event) => {
          event.preventDefault()
          add()
        }}
      >
        <Words
          label={t('keypad.new-unit')}
          hint={t('keypad.new-unit.hint')}
          value={name}
          onChange={setName}
          optional
        />
        <button type="submit" className={formCss.plain}>
          {t('keypad.use-unit')}
        </button>
      </form>
    </fieldset>
  )
}

function Keys({
  unit,
  typed,
  onTyped,
  onNext,
  onNone,
  mayBeNone,
}: {
  readonly unit: string
  readonly typed: string
  readonly onTyped: (typed: string) => void
  readonly onNext: () => void
  readonly onNone: () => void
  readonly mayBeNone: boolean
}) {
  const allowed = keysAfter(typed)
  const pad = useRef<HTMLDivElement>(null)
  const tap = (key: string) => {
    onTyped(withKey(typed, key))
    // The tapped key may be gone with the next sign; a keyboard goes on typing where it was.
    pad.current?.focus({ preventScroll: true })
  }
  const whole = wholeCode(typed) !== null
  const keys = typed.length === 0 ? LETTERS : typed.length === 1 ? FIRST_DIGITS : HEX_DIGITS
  const press = (event: KeyboardEvent) => {
    const key = event.key.toUpperCase()
    if (event.ctrlKey || event.metaKey || event.altKey) return
    if (allowed.includes(key)) onTyped(withKey(typed, key))
    else if (event.key === 'Backspace') onTyped(typed.slice(0, -1))
    else return
    event.preventDefault()
  }
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: the keys of a keyboard are a quicker way to the buttons
    <div className={css.keys} ref={pad} tabIndex={-1} onKeyDown={press}>
      <p className={css.display}>
        <span>{t('keypad.typed', { unit })}</span>
        <output className={css.code} aria-label={typed === '' ? t('keypad.empty') : typed}>
          {[...'·····'].map((dot, index) => typed[index] ?? dot).join('')}
          {typed.length > 5 || whole ? (
            <span className={css.type}>-{typed.slice(5).padEnd(2, '·')}</span>
          ) : null}
        </output>
      </p>
      {/* biome-ignore lint/a11y/useSemanticElements: keys are no form fields */}
      <div className={keys.length === 4 ? css.four : css.sixteen} role="group" aria-label={t('keypad.keys')}>
        {keys.map((key) => (
          <button
            key={key}
            type="button"
            className={css.key}
            disabled={!allowed.includes(key)}
            onClick={() => tap(key)}
          >
            {key}
          </button>
        ))}
      </div>
      {whole && <p className={formCss.hint}>{t('keypad.type-optional')}</p>}
      <div className={css.acts}>
        <button
          type="button"
          className={formCss.plain}
          disabled={typed === ''}
          onClick={() => onTyped(typed.slice(0, -1))}
        >
          {t('keypad.back')}
        </button>
        {mayBeNone ? (
          <button type="button" className={formCss.plain} onClick={onNone}>
            {t('keypad.none')}
          </button>
        ) : (
          <button type="button" className={formCss.submit} disabled={!whole} onClick={onNext}>
            {t('keypad.next')}
          </button>
        )}
      </div>
    </div>
  )
}

function TypedList({ scan, onChange }: { readonly scan: Typed; readonly onChange: (scan: Typed) => void }) {
  if (scan.size === 0) return null
  const without = (unit: string, code: string | null) => {
    const next = new Map(scan)
    const codes = (scan.get(unit) ?? []).filter((one) => one !== code)
    // A unit whose last code is taken back was not thereby found without faults.
    if (code === null || codes.length === 0) next.delete(unit)
    else next.set(unit, codes)
    onChange(next)
  }
  return (
    <section aria-label={t('keypad.list')} className={formCss.field}>
      <p className={formCss.label}>{t('keypad.list')}</p>
      <ul className={css.list}>
        {[...scan].map(([unit, codes]) => (
          <li key={unit} className={formCss.chips}>
            <strong className={css.name}>{unit}</strong>
            {codes.length === 0 && (
              <span className={formCss.chip}>
                <span>{t('report.no-fault')}</span>
                <button
                  type="button"
                  aria-label={t('keypad.remove-unit', { unit })}
                  onClick={() => without(unit, null)}
                >
                  ×
                </button>
              </span>
            )}
            {codes.map((code) => (
              <span key={code} className={formCss.chip}>
                <code>{code}</code>
                <button
                  type="button"
                  aria-label={t('keypad.remove', { code, unit })}
                  onClick={() => without(unit, code)}
                >
                  ×
                </button>
              </span>
            ))}
          </li>
        ))}
      </ul>
    </section>
  )
}
