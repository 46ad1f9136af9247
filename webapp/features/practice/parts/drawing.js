/**
 * The drawing of a drill. Where the engine has figures it is to scale, one unit a millimetre; a curve is that of the putt in
 * hand.
 * @import {Drill, State} from '../../../types.js'
 */
import { svg } from 'lit-html';
import { GATE_AT_M } from '../questions.js';
import { sides } from '../words.js';
import { ball, circle, hole, label, line, MM, R, rect, through } from './shapes.js';
import { SKETCHES } from './sketches.js';

const AHEAD = GATE_AT_M * MM;

/** Two balls, a foot ahead, the gap between them to scale. @param {State} state */
function gate({ practice, answers }) {
  const known = practice.gap_m ?? answers.gate?.matching_gap_m;
  const gap = (known ?? 0.06) * MM;
  const y = gap / 2 + R;
  const half = Math.max(90, y + R + 10);
  return {
    box: `-40 ${-half} 440 ${2 * half}`,
    body: [
      line(`M0 0H${AHEAD + 26}`, 'd-aim'),
      ball(0, 0),
      ball(AHEAD, -y),
      ball(AHEAD, y),
      ...(known
        ? [line(`M${AHEAD + 34} ${-gap / 2}v${gap}`, 'd-mark'), label(AHEAD + 44, 5, `${Math.round(gap)} mm`, 'start')]
        : []),
    ],
  };
}

/** The line on the ball and the same line a degree off, over a foot. @param {State} state */
function ballLine({ answers: { ballLine } }) {
  const off = ballLine ? ballLine.at_foot_m * MM : 5;
  return {
    box: '-40 -60 440 120',
    body: [
      line(`M${-R} 0H${AHEAD}`, 'd-aim'),
      line(`M0 0L${AHEAD} ${-off}`, 'd-mark'),
      ball(0, 0),
      line(`M${-R * 0.7} 0H${R * 0.7}`),
      label(AHEAD + 8, -off - 6, '1°', 'start'),
    ],
  };
}

/** Eyes beside the line, from above; across to scale. @param {State} state */
function eyes({ practice }) {
  const y = -practice.eyes_m * MM;
  const half = Math.max(80, Math.abs(y) + 40);
  return {
    box: `-60 ${-half} 440 ${2 * half}`,
    body: [
      line('M-40 0H300', 'd-aim'),
      line(`M0 ${y}L300 0`, 'd-mark'),
      ball(0, 0),
      svg`<ellipse class="d-eye" cx="0" cy=${y} rx="16" ry="9"></ellipse>`,
      circle('d-dot', 0, y, 4),
      hole(310, 0, 12),
      label(0, y - 18, 'eyes'),
      label(310, 34, 'hole'),
    ],
  };
}

/** The head's way on the floor, to scale. @param {State} state */
function arc({ answers, settings }) {
  const [left, right] = sides(settings);
  const points = answers.arc?.points ?? [];
  const half = points.map(({ along_m, inside_m }) => ({ x: along_m * MM, y: -inside_m * MM }));
  const way = [
    ...half
      .slice(1)
      .map(({ x, y }) => ({ x: -x, y }))
      .reverse(),
    ...half,
  ];
  return {
    box: '-330 -110 660 180',
    body: [
      line('M-320 0H320', 'd-aim'),
      way.length ? line(through(way), 'd-mark') : '',
      rect('d-head', -6, -50, 12, 100),
      label(-320, 44, left, 'start', 'd-text far'),
      label(320, 44, right, 'end', 'd-text far'),
      label(0, -76, 'feet on this side', 'middle', 'd-text far'),
    ],
  };
}

/** The curve that was read, to scale, from above; without a read, some curve. @param {State} state */
function chalk({ read }) {
  if (!read)
    return {
      box: '0 0 320 120',
      body: [line('M30 100C110 20 210 10 286 70', 'd-mark'), ball(30, 100, 9), hole(288, 72)],
    };
  const scale = 258 / read.putt.distance_m;
  const way = read.value.path
    .filter(([, x]) => x <= read.putt.distance_m)
    .map(([, x, y]) => ({ x: 30 + x * scale, y: -y * scale }));
  const high = Math.min(0, ...way.map(({ y }) => y)) - 26;
  const low = Math.max(0, ...way.map(({ y }) => y)) + 26;
  return {
    box: `0 ${high} 320 ${low - high}`,
    body: [line('M30 0H288', 'd-aim'), line(through(way), 'd-mark'), ball(30, 0, 9), hole(288, 0)],
  };
}

/** @typedef {{box: string, body: unknown}} Picture */
/** @type {Record<Drill['picture'], Picture | ((state: State) => Picture)>} */
const PICTURES = {
  ...SKETCHES,
  eyes,
  arc,
  gate,
  chalk,
  ball_line: ballLine,
  shim: ({ answers: { shim } }) => ({
    box: '0 0 320 140',
    body: [
      line('M20 112H300'),
      rect('d-foot', 76, 56, 44, 56, 16),
      rect('d-hole', 196, 100, 52, 12),
      rect('d-foot', 200, 44, 44, 56, 16),
      line('M98 30H222m-8 -5l8 5l-8 5M106 25l-8 5l8 5', 'd-mark'),
      label(160, 22, '30 cm'),
      label(222, 130, shim ? `2 %: ${Math.round((shim.shims[1]?.thickness_m ?? 0) * MM)} mm` : ''),
    ],
  }),
};

/** @param {Drill} drill @param {State} state */
export function drawing(drill, state) {
  const picture = PICTURES[drill.picture];
  const { box, body } = typeof picture === 'function' ? picture(state) : picture;
  return svg`<svg class="drawing" viewBox=${box} role="img" aria-label=${`Drawing: ${drill.setup[0]}`}>${body}</svg>`;
}
