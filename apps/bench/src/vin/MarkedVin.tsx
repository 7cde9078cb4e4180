import css from './vin.module.css'

/** A VIN with some of its signs boxed, not coloured. Positions count from 1. */
export function MarkedVin({
  vin,
  positions,
}: {
  readonly vin: string
  readonly positions: readonly number[]
}) {
  return [...vin].map((character, index) =>
    positions.includes(index + 1) ? (
      // biome-ignore lint/suspicious/noArrayIndexKey: a VIN's characters are told apart by their position
      <mark key={index} className={css.differs}>
        {character}
      </mark>
    ) : (
      character
    ),
  )
}
