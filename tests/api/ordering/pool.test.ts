import { describe, expect, test } from 'vitest';
import type { OrderList } from '../../../api/ordering/order-list.ts';
import { poolNeeds } from '../../../api/ordering/pool.ts';
import { poolOf } from './pool-of.ts';

/** An order in short: item → total, and who needs how many. */
const totals = ({ lines }: OrderList) => Object.fromEntries(lines.map(line => [line.item, line.total]));
const lineOf = (list: OrderList, item: string) => {
  const line = list.lines.find(one => one.item === item);
  if (!line) throw new Error(`no line "${item}" among ${list.lines.map(one => one.item).join(', ')}`);
  return line;
};
const asks = (list: OrderList) => list.lines.flatMap(line => line.asks.map(ask => ask.code));

const twoShields = 'bearing 5x11x4 two-shields';

describe('poolNeeds adds up equal items', () => {
  test('nothing gives nothing', () => {
    expect(poolNeeds(poolOf({ needs: [] }))).toEqual({ lines: [], leftOut: [] });
  });

  test('over jobs and makers, with who needs how many', () => {
    const list = poolNeeds(
      poolOf({
        jobs: { a: {}, b: {} },
        parts: { '12-1': { item: twoShields }, 'C 77': { item: twoShields, maker: 'Corvane' } },
        needs: [
          ['a', 'part:12-1', 2],
          ['b', 'part:C 77', 3],
          ['b', 'item:bearing 5x11x4 two-shields', 1],
        ],
      }),
    );
    const line = lineOf(list, twoShields);
    expect(line.total).toBe(6);
    expect(line.jobs.map(({ number, qty }) => [number, qty])).toEqual([
      [1, 2],
      [2, 4],
    ]);
    expect(line.numbers.map(({ maker, number }) => `${maker} ${number}`)).toEqual([
      'Brindlow 12-1',
      'Corvane C 77',
    ]);
  });

  test('a size that differs stays another line', () => {
    const list = poolNeeds(
      poolOf({
        parts: { a: { item: 'bearing 5x11x4' }, b: { item: 'bearing 5x11x3' } },
        needs: [
          ['a', 'part:a', 1],
          ['a', 'part:b', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'bearing 5x11x3': 1, 'bearing 5x11x4': 1 });
  });

  test('a pan and a countersunk head stay two items', () => {
    const list = poolNeeds(
      poolOf({
        parts: { a: { item: 'screw M3x0.5x8 pan' }, b: { item: 'screw M3x0.5x8 countersunk' } },
        needs: [
          ['a', 'part:a', 4],
          ['a', 'part:b', 4],
        ],
      }),
    );
    expect(list.lines).toHaveLength(2);
  });

  test('a part without a size is its own item, by maker and number', () => {
    const list = poolNeeds(
      poolOf({
        parts: { knob: { maker: 'Hestrel' }, handle: { maker: 'Hestrel' } },
        needs: [
          ['a', 'part:knob', 1],
          ['a', 'part:knob', 1],
          ['a', 'part:handle', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Hestrel handle': 1, 'part Hestrel knob': 2 });
  });

  test('two parts without numbers are never one, whatever they are called', () => {
    const nameless = { number: null, name: 'Knob' };
    const list = poolNeeds(
      poolOf({
        parts: { one: nameless, two: nameless },
        needs: [
          ['a', 'part:one', 1],
          ['a', 'part:two', 1],
        ],
      }),
    );
    expect(list.lines).toHaveLength(2);
  });

  test('left and right stay two', () => {
    const list = poolNeeds(
      poolOf({
        parts: { l: { item: 'bushing 5x7x5', side: 'left' }, r: { item: 'bushing 5x7x5', side: 'right' } },
        needs: [
          ['a', 'part:l', 1],
          ['a', 'part:r', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'bushing 5x7x5, left': 1, 'bushing 5x7x5, right': 1 });
  });

  test('an open attribute is not equal to a stated one, and asks', () => {
    const list = poolNeeds(
      poolOf({
        parts: { open: { item: 'bearing 5x11x4' }, closed: { item: twoShields } },
        needs: [
          ['a', 'part:open', 1],
          ['a', 'part:closed', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'bearing 5x11x4': 1, [twoShields]: 1 });
    expect(lineOf(list, 'bearing 5x11x4').asks.map(ask => ask.code)).toEqual(['open-attributes']);
    expect(lineOf(list, twoShields).asks).toEqual([]);
  });

  test.each([
    [
      'screw M3x0.5x8 pan',
      ['screw M3x0.5x8 pan phillips'],
      'Its drive is not stated; screw M3 × 0.5 × 8 pan phillips stands on a line of its own. Is it the same article?',
    ],
    [
      'screw M3x0.5x8',
      ['screw M3x0.5x8 pan phillips'],
      'Its head and drive are not stated; screw M3 × 0.5 × 8 pan phillips stands on a line of its own. Is it the same article?',
    ],
    [
      'bearing 5x11x4',
      ['bearing 5x11x4 flanged', 'bearing 5x11x4 two-shields'],
      'Its flange and seal are not stated; bearing 5 × 11 × 4 flanged and bearing 5 × 11 × 4 two shields stand on lines of their own. Is it one of them?',
    ],
  ])('%s beside %j asks for what only those state', (open, stated, text) => {
    const list = poolNeeds(poolOf({ needs: [open, ...stated].map(item => ['a', `item:${item}`, 1]) }));
    expect(list.lines.flatMap(line => line.asks)).toEqual([
      { code: 'open-attributes', text, needs: ['need 1'], takeAs: stated, own: open },
    ]);
    expect(lineOf(list, open).asks).toHaveLength(1);
  });

  test.each([
    [['screw M3x0.5x8 countersunk', 'screw M3x0.5x8 pan phillips']],
    [['screw M3x0.5x8 pan', 'screw M3x0.5x8 phillips']],
    [['screw M3x0.5x8 pan', 'screw M3x0.5x10 pan phillips']],
    [['screw M3x0.5x8 pan', 'screw M3x0.5x8 pan']],
    [['bearing 5x11x4']],
  ])('%j asks nothing: none is another said more closely', items => {
    expect(asks(poolNeeds(poolOf({ needs: items.map(item => ['a', `item:${item}`, 1]) })))).toEqual([]);
  });

  test('a person’s word makes an open article the stated one, and is said on its line', () => {
    const needs: Parameters<typeof poolOf>[0]['needs'] = [
      ['a', 'part:open', 2, twoShields],
      ['a', `item:${twoShields}`, 1],
    ];
    const list = poolNeeds(poolOf({ parts: { open: { item: 'bearing 5x11x4' } }, needs }));
    expect(totals(list)).toEqual({ [twoShields]: 3 });
    expect(list.lines[0]).toMatchObject({
      asks: [],
      taken: [{ need: 'need 1', what: 'open', as: twoShields, apart: false }],
    });
  });

  test('a person’s word that it is its own article asks no more of that need, only of the others', () => {
    const list = poolNeeds(
      poolOf({
        needs: [
          ['a', 'item:bearing 5x11x4', 1, 'bearing 5x11x4'],
          ['a', 'item:bearing 5x11x4', 2],
          ['a', `item:${twoShields}`, 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'bearing 5x11x4': 3, [twoShields]: 1 });
    const line = lineOf(list, 'bearing 5x11x4');
    expect(line.asks.map(ask => ask.needs)).toEqual([['need 2']]);
    expect(line.taken).toMatchObject([{ need: 'need 1', apart: true }]);
  });

  test('a left part is asked of left parts alone, and may be taken as one of them', () => {
    const parts = {
      open: { item: 'bearing 5x11x4', side: 'left' as const },
      closed: { item: twoShields, side: 'left' as const },
      right: { item: 'bearing 5x11x4 flanged', side: 'right' as const },
    };
    const others: Parameters<typeof poolOf>[0]['needs'] = [
      ['a', 'part:closed', 1],
      ['a', 'part:right', 1],
    ];
    const asking = poolNeeds(poolOf({ parts, needs: [['a', 'part:open', 1], ...others] }));
    const [ask] = asking.lines.flatMap(line => line.asks);
    expect(ask).toMatchObject({ takeAs: [twoShields], own: 'bearing 5x11x4' });
    const answered = poolNeeds(
      poolOf({ parts, needs: [['a', 'part:open', 1, ask!.takeAs![0]!], ...others] }),
    );
    expect(totals(answered)).toEqual({ [`${twoShields}, left`]: 2, 'bearing 5x11x4 flanged, right': 1 });
  });

  test('a person’s word does not hold for what has become another size since, nor where only the maker’s part will do', () => {
    const part = { item: 'bearing 5x11x3' };
    for (const parts of [{ p: part }, { p: { item: 'bearing 5x11x4', critical: true } }])
      expect(poolNeeds(poolOf({ parts, needs: [['a', 'part:p', 1, twoShields]] })).lines).toMatchObject([
        { taken: [], size: parts.p.item },
      ]);
  });

  test('tenths add up without what binary fractions leave behind', () => {
    const list = poolNeeds(
      poolOf({
        needs: [
          ['a', 'item:lubricant x', 0.1],
          ['a', 'item:lubricant x', 0.2],
        ],
      }),
    );
    expect(list.lines[0]!.total).toBe(0.3);
  });
});

describe('poolNeeds never orders an assembly and its children both', () => {
  const lines = { '15': { qty: 1 }, '16': { parent: '15', qty: 2 }, '17': { parent: '16', qty: 3 } };

  test('the assembly covers a child of the same job, said on its line', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '16', 2],
          ['a', '15', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 15': 1 });
    expect(list.lines[0]!.because).toEqual(['includes 16 16']);
    expect(list.leftOut).toEqual([
      { need: 'need 1', job: 'a', what: '16 16', why: 'ships with 15 15, which this job orders' },
    ]);
  });

  test('through an assembly within the assembly', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '17', 6],
          ['a', '15', 1],
          ['a', '16', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 15': 1 });
    expect(asks(list)).toEqual([]);
  });

  test('another job still needs its child', () => {
    const list = poolNeeds(
      poolOf({
        jobs: { a: {}, b: {} },
        lines,
        needs: [
          ['a', '15', 1],
          ['b', '16', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 15': 1, 'part Brindlow 16': 1 });
  });

  test('more of a child than the assemblies hold asks', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '15', 1],
          ['a', '16', 3],
        ],
      }),
    );
    expect(asks(list)).toEqual(['more-than-the-assembly-holds']);
  });

  test('a child whose pieces are not stated asks when more than one is wanted', () => {
    const unstated = { '15': {}, '16': { parent: '15', qty: null } };
    const asked = (qty: number | null) =>
      asks(
        poolNeeds(
          poolOf({
            lines: unstated,
            needs: [
              ['a', '15', 1],
              ['a', '16', qty],
            ],
          }),
        ),
      );
    expect(asked(1)).toEqual([]);
    expect(asked(2)).toEqual(['more-than-the-assembly-holds']);
    expect(asked(null)).toEqual(['more-than-the-assembly-holds']);
  });

  test('what was asked of the child is asked still', () => {
    const list = poolNeeds(
      poolOf({
        lines: {
          '15': {},
          early: { ref: '16', parent: '15', facts: [{ kind: 'serial', to: '4999' }] },
          late: { ref: '16', parent: '15', facts: [{ kind: 'serial', from: '5000' }] },
        },
        needs: [
          ['a', '15', 1],
          ['a', 'early', 1],
        ],
      }),
    );
    expect(asks(list)).toEqual(['serial-unknown']);
  });

  test('a list that circles ends', () => {
    const list = poolNeeds(
      poolOf({
        lines: { '1': { parent: '2' }, '2': { parent: '1' } },
        needs: [['a', '1', 1]],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 1': 1 });
  });
});

describe('poolNeeds takes the smallest assembly for what is not sold separately', () => {
  const nss = { facts: ['not-sold-separately'] };
  const lines = {
    '15': {},
    '16': { parent: '15' },
    '17': { parent: '16', qty: 2, ...nss },
    '18': { parent: '16', qty: 1, ...nss },
    '19': nss,
  };

  test('the nearest one that is sold', () => {
    const list = poolNeeds(poolOf({ lines, needs: [['a', '17', 1]] }));
    expect(totals(list)).toEqual({ 'part Brindlow 16': 1 });
    expect(list.lines[0]!.because).toEqual(['17 17: not sold separately, comes with this']);
  });

  test('two such parts come with one of it; three of a pair with two', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '17', 3],
          ['a', '18', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 16': 2 });
  });

  test('what the job wants of the assembly anyway counts', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '16', 1],
          ['a', '17', 2],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 16': 1 });
    expect(list.leftOut.map(left => left.need)).toEqual(['need 2']);
  });

  test('the assembly that it becomes is covered by a larger one', () => {
    const list = poolNeeds(
      poolOf({
        lines,
        needs: [
          ['a', '15', 1],
          ['a', '17', 2],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 15': 1 });
  });

  test('pieces within an assembly of the assembly multiply', () => {
    const deep = {
      '15': {},
      '16': { parent: '15', qty: 2, ...nss },
      '17': { parent: '16', qty: 3, ...nss },
    };
    expect(totals(poolNeeds(poolOf({ lines: deep, needs: [['a', '17', 7]] })))).toEqual({
      'part Brindlow 15': 2,
    });
  });

  test('where the list does not say how many it holds, one piece comes with one and more asks', () => {
    const unstated = { '15': {}, '16': { parent: '15', qty: null, ...nss } };
    const order = (qty: number) => poolNeeds(poolOf({ lines: unstated, needs: [['a', '16', qty]] }));
    expect(totals(order(1))).toEqual({ 'part Brindlow 15': 1 });
    expect(asks(order(1))).toEqual([]);
    expect(asks(order(2))).toEqual(['as-required']);
  });

  test('a list with a column for each model counts by the model of the job', () => {
    const byModel = { '15': {}, '16': { parent: '15', qty: null, qtyByModel: { m20: 1, m30: 4 }, ...nss } };
    const order = (model: string) =>
      totals(poolNeeds(poolOf({ jobs: { a: { model } }, lines: byModel, needs: [['a', '16', 4]] })));
    expect(order('m20')).toEqual({ 'part Brindlow 15': 4 });
    expect(order('m30')).toEqual({ 'part Brindlow 15': 1 });
  });

  test('without a known assembly it asks', () => {
    expect(asks(poolNeeds(poolOf({ lines, needs: [['a', '19', 1]] })))).toEqual(['no-assembly-known']);
  });
});

describe('poolNeeds asks what only a person can say', () => {
  test('a line that the model of the job has none of asks', () => {
    const lines = { '16': { qtyByModel: { m20: 0, m30: 2 } } };
    const order = (model: string) =>
      asks(poolNeeds(poolOf({ jobs: { a: { model } }, lines, needs: [['a', '16', 1]] })));
    expect(order('m20')).toEqual(['not-on-this-model']);
    expect(order('m30')).toEqual([]);
  });

  test('a reference line is not counted', () => {
    const list = poolNeeds(
      poolOf({ lines: { '20': { facts: ['reference-only'] } }, needs: [['a', '20', 1]] }),
    );
    expect(list.lines).toEqual([]);
    expect(list.leftOut[0]).toMatchObject({ need: 'need 1', why: expect.stringContaining('reference') });
  });

  test('as required asks until somebody has said how many', () => {
    const lines = { '24': { facts: ['as-required'], qty: null } };
    const asked = poolNeeds(poolOf({ lines, needs: [['a', '24', null]] }));
    expect(asks(asked)).toEqual(['as-required']);
    expect(asked.lines[0]).toMatchObject({ total: 0, jobs: [{ qty: null }] });
    const said = poolNeeds(poolOf({ lines, needs: [['a', '24', 2]] }));
    expect(asks(said)).toEqual([]);
    expect(said.lines[0]!.total).toBe(2);
  });

  test('a doubtful size asks', () => {
    const list = poolNeeds(
      poolOf({ parts: { a: { item: twoShields, doubtful: true } }, needs: [['a', 'part:a', 1]] }),
    );
    expect(asks(list)).toEqual(['disagreement']);
  });
});

describe('poolNeeds lets the serial number of the unit decide', () => {
  const lines = {
    early: { ref: '7', facts: [{ kind: 'serial', to: '4999' }] },
    late: { ref: '7', facts: [{ kind: 'serial', from: '5000' }] },
  };
  const ordered = (serial: string | null, line: string) =>
    poolNeeds(poolOf({ jobs: { a: { serial } }, lines, needs: [['a', line, 1]] }));

  test.each([
    ['4999', 'early', 'part Brindlow early'],
    ['5000', 'early', 'part Brindlow late'],
    ['5000', 'late', 'part Brindlow late'],
    ['12', 'late', 'part Brindlow early'],
  ])('serial %s picked at %s is %s', (serial, line, item) => {
    const list = ordered(serial, line);
    expect(totals(list)).toEqual({ [item]: 1 });
    expect(asks(list)).toEqual([]);
  });

  test.each([null, 'lost', 'XB-5000'])('serial %s asks', serial => {
    expect(asks(ordered(serial, 'early'))).toEqual(['serial-unknown']);
  });
});

describe('poolNeeds follows the maker’s word to the successor', () => {
  const order = (superseded: Parameters<typeof poolOf>[0]['superseded'], serial: string | null = null) =>
    poolNeeds(
      poolOf({
        jobs: { a: { serial } },
        parts: { old: {}, mid: {}, fresh: { item: twoShields } },
        superseded,
        needs: [['a', 'part:old', 2]],
      }),
    );

  test('over several numbers, said on the line', () => {
    const list = order({ old: [{ part: 'mid' }], mid: [{ part: 'fresh' }] });
    expect(totals(list)).toEqual({ [twoShields]: 2 });
    expect(list.lines[0]!.because).toEqual(['old is superseded by mid, then fresh']);
  });

  test('to a number that stands on no list here', () => {
    expect(totals(order({ old: [{ number: '99-1', numberKey: '991' }] }))).toEqual({
      'part Brindlow 99-1': 2,
    });
  });

  test('which pools with a need of that number', () => {
    const list = poolNeeds(
      poolOf({
        parts: { old: {}, '99-1': {} },
        superseded: { old: [{ number: '99-1', numberKey: '991' }] },
        needs: [
          ['a', 'part:old', 2],
          ['a', 'part:99-1', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ 'part Brindlow 99-1': 3 });
  });

  test('never backwards', () => {
    expect(totals(order({ fresh: [{ part: 'old' }] }))).toEqual({ 'part Brindlow old': 2 });
  });

  test('a branch asks, and nothing is chosen', () => {
    const list = order({ old: [{ part: 'mid' }, { part: 'fresh' }] });
    expect(totals(list)).toEqual({ 'part Brindlow old': 2 });
    expect(asks(list)).toEqual(['superseded-branches']);
  });

  test('a loop asks, and nothing is chosen', () => {
    const list = order({ old: [{ part: 'mid' }], mid: [{ part: 'old' }] });
    expect(totals(list)).toEqual({ 'part Brindlow old': 2 });
    expect(asks(list)).toEqual(['superseded-in-a-loop']);
  });

  test('a condition asks for the serial number, and follows it once it is known', () => {
    const superseded = { old: [{ part: 'mid', serialFrom: '5000' }] };
    expect(asks(order(superseded))).toEqual(['superseded-on-condition']);
    expect(totals(order(superseded, '6000'))).toEqual({ 'part Brindlow mid': 2 });
    expect(totals(order(superseded, '100'))).toEqual({ 'part Brindlow old': 2 });
  });
});

describe('poolNeeds takes only the maker’s own number where someone could be hurt', () => {
  test('on a line of its own, apart from the same item elsewhere', () => {
    const list = poolNeeds(
      poolOf({
        parts: { 'W 8': { item: twoShields }, 'R 8': { item: twoShields, maker: 'Corvane' } },
        lines: { pawl: { part: 'W 8', critical: true } },
        needs: [
          ['a', 'pawl', 1],
          ['a', 'part:R 8', 1],
        ],
      }),
    );
    expect(totals(list)).toEqual({ [twoShields]: 1, 'part Brindlow W 8': 1 });
    const line = lineOf(list, 'part Brindlow W 8');
    expect(line.makersPartOnly).toBe(true);
    expect(line.because).toContain("someone could be hurt here: maker's part only");
  });
});
