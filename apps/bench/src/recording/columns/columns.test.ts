import { mappingFrom, sampleTable } from '@shearline/bus'
import { describe, expect, it } from 'vitest'
import { fieldsOfColumn, lacking, readerColumns, tableOf } from './columns.ts'

const text = 'when;who;b0;b1;b2\n0,001;7E0;02;3E;00\n0,002;7E8;02;7E;00\n'

function sample() {
  const found = sampleTable(new TextEncoder().encode(text), true)
  if (found === undefined) throw new Error('the table was not recognised')
  return found
}

describe('the columns of a table', () => {
  it('said back to the reader are the very mapping that was guessed', () => {
    const spoken = new TextEncoder().encode('time_us,id,data\n1500,7E8,0641008000000100\n2500,7E0,02010D\n')
    const found = sampleTable(spoken, true)
    if (found?.guess.mapping === undefined) throw new Error('nothing was guessed')
    const { mapping, findings } = mappingFrom(
      readerColumns(tableOf(found).columns),
      found.header,
      found.guess.found,
    )
    expect(findings).toEqual([])
    expect(mapping).toEqual({ ...found.guess.mapping })
  })

  it('are lacking until identifier and data are named, and none is named twice', () => {
    const { columns } = tableOf(sample())
    const said = { ...columns, fields: { ...columns.fields, time: 0, id: 1 }, dataFirst: 2, dataLast: 4 }
    expect(lacking(said)).toBe(null)
    expect(lacking({ ...said, fields: { ...said.fields, id: null } })).toBe('id')
    expect(lacking({ ...said, dataFirst: null })).toBe('data')
    expect(lacking({ ...said, dataLast: 1 })).toBe('data-order')
    expect(lacking({ ...said, fields: { ...said.fields, length: 3 } })).toBe('twice')
    expect(lacking({ ...said, fields: { ...said.fields, channel: 0 } })).toBe('twice')
    expect(fieldsOfColumn(said, 3)).toEqual(['data'])
    expect(readerColumns(said)).toMatchObject({ time: '#1', id: '#2', data: '#3..#5', length: '' })
  })
})
