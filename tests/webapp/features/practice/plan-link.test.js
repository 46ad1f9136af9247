import assert from 'node:assert/strict';
import test from 'node:test';
import { planAddress, planIn, unknownOf } from '../../../../webapp/features/practice/plan-link.js';

globalThis.location = { origin: 'https://example.org', pathname: '/' };
const BLOCKS = [
  { drill: 'set_up', minutes: 3, why: 'Why.', instead: ['eye_line'] },
  { drill: 'tempo', minutes: 17, why: 'Why.', instead: [] },
];
const SENT = { place: 'green', blocks: BLOCKS.map(({ drill, minutes }) => ({ drill, minutes })) };
const fragment = new URL(planAddress({ place: 'green', blocks: BLOCKS })).hash.slice(1);

test('a plan comes back from its link, also as some messengers write it', () => {
  assert.deepEqual(planIn(fragment), SENT);
  assert.deepEqual(planIn(fragment.replace('?', '%3F')), SENT);
});

test('what is no plan is left to others, and a damaged one is told', () => {
  assert.equal(planIn('putt?m=3'), undefined);
  for (const damaged of [
    'plan',
    'plan?',
    fragment.slice(0, -4),
    'plan?place=moon&do=tempo.20',
    'plan?place=room&do=tempo.0~set_up.20',
    'plan?place=room&do=tempo.99',
    'plan?place=room&do=<b>.20',
  ])
    assert.equal(planIn(damaged), null, damaged);
});

test('drills that this version does not have are named', () => {
  assert.deepEqual(unknownOf(SENT, [{ id: 'tempo' }]), [SENT.blocks[0]]);
});
