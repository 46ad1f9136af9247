/** Drills of which a sketch tells enough. */
import { ball, circle, hole, label, line, rect } from './shapes.js';
import { svg } from 'lit-html';

export const SKETCHES = {
  tempo: {
    box: '0 0 320 130',
    body: [
      line('M60 46A190 190 0 0 0 260 46', 'd-aim'),
      line('M160 4V68'),
      rect('d-head', 142, 68, 36, 14),
      label(68, 32, 'top: middle note'),
      label(264, 32, 'through'),
      label(160, 108, 'start: low note'),
      label(160, 127, 'ball’s place: high note'),
    ],
  },
  feet: {
    box: '0 0 320 130',
    body: [
      line('M30 112L290 88', 'd-mark'),
      rect('d-foot', 90, 42, 46, 60, 20),
      rect('d-foot', 184, 34, 46, 60, 20),
      line('M76 44v52m-5 -8l5 8l5 -8'),
      line('M248 58v22m-5 -8l5 8l5 -8'),
      label(66, 62, 'more', 'end'),
      label(258, 62, 'less', 'start'),
    ],
  },
  string: {
    box: '0 0 320 110',
    body: [
      line('M10 90H310'),
      line('M20 90V30M300 90V30'),
      line('M20 34H300', 'd-mark'),
      ball(90, 81, 9),
      hole(262, 90, 12),
      label(165, 24, 'string over ball and hole'),
      label(54, 106, '2 ft'),
    ],
  },
  past: {
    box: '0 0 320 100',
    body: [
      line('M30 60H291', 'd-aim'),
      ball(30, 60, 9),
      hole(262, 60),
      line('M291 34V86', 'd-mark'),
      label(276, 24, '1 ft'),
      label(146, 44, '8 ft'),
    ],
  },
  stop: {
    box: '0 0 320 100',
    body: [
      line('M30 60H268', 'd-aim'),
      ball(30, 60, 9),
      circle('d-ring', 268, 60, 9),
      line('M292 34V86', 'd-mark'),
      label(284, 24, 'towel', 'end'),
    ],
  },
  shallow: {
    box: '0 0 320 100',
    body: [line('M30 70H280', 'd-aim'), line('M30 70C120 62 210 61 282 69', 'd-mark'), ball(30, 70, 9), hole(288, 70)],
  },
  long: {
    box: '0 0 320 100',
    body: [
      line('M20 60H290', 'd-aim'),
      ball(20, 60, 9),
      [110, 200, 290].map((x) => circle('d-ring', x, 60, 15)),
      label(110, 30, '20 ft'),
      label(200, 30, '40 ft'),
      label(286, 30, '60 ft'),
      label(155, 96, 'each within a yard'),
    ],
  },
  walk: {
    box: '0 0 320 100',
    body: [
      line('M40 60H200', 'd-aim'),
      [60, 95, 130, 165].map((x, i) => svg`<ellipse class="d-foot" cx=${x} cy=${i % 2 ? 72 : 48} rx="12" ry="6"></ellipse>`),
      ball(215, 60, 9),
      hole(288, 60),
      label(120, 22, '40 s'),
    ],
  },
  stance: {
    box: '0 0 320 130',
    body: [
      rect('d-foot', 106, 52, 34, 62, 16),
      rect('d-foot', 180, 52, 34, 62, 16),
      line('M123 42V24M197 42V24'),
      line('M106 122H214', 'd-mark'),
      label(160, 18, 'weight even'),
      ball(160, 34, 8),
    ],
  },
  books: {
    box: '0 0 320 150',
    body: [
      line('M20 75H300', 'd-aim'),
      rect('d-head', 153, 50, 14, 50),
      rect('d-foot', 96, 16, 128, 28),
      rect('d-foot', 96, 106, 128, 28),
      label(160, 36, 'book at toe'),
      label(160, 126, 'book at heel'),
    ],
  },
  skirting: {
    box: '0 0 320 130',
    body: [
      rect('d-hole', 20, 6, 280, 14),
      line('M70 42Q160 28 250 42', 'd-mark'),
      rect('d-head', 153, 32, 14, 46),
      label(160, 122, 'you stand here, facing the wall'),
      label(20, 40, 'board', 'start'),
    ],
  },
  hand: {
    box: '0 0 320 130',
    body: [
      line('M60 40A190 190 0 0 0 260 40', 'd-aim'),
      line('M160 10V76', 'd-mark'),
      circle('d-dot', 160, 12, 9),
      rect('d-head', 142, 76, 36, 14),
      label(176, 18, 'one hand', 'start'),
      label(160, 116, 'as long as for 6 ft'),
    ],
  },
  closed: {
    box: '0 0 320 120',
    body: [
      line('M30 78H290', 'd-aim'),
      rect('d-head', 92, 56, 12, 44),
      rect('d-foot', 226, 20, 26, 46, 12),
      line('M240 70V106', 'd-mark'),
      label(262, 46, 'shoe', 'start'),
      label(110, 36, 'eyes closed'),
    ],
  },
  coins: {
    box: '0 0 320 110',
    body: [
      line('M40 90H290'),
      rect('d-foot', 140, 80, 44, 9, 3),
      rect('d-hole', 140, 70, 44, 9, 3),
      rect('d-head', 84, 58, 14, 24),
      line('M104 70h28m-8 -5l8 5l-8 5', 'd-mark'),
      label(192, 78, 'upper goes', 'start'),
      label(192, 106, 'lower stays', 'start'),
    ],
  },
  wall: {
    box: '0 0 320 140',
    body: [
      rect('d-foot', 20, 8, 280, 62),
      rect('d-hole', 74, 40, 14, 18),
      rect('d-hole', 232, 40, 14, 18),
      line('M84 66Q160 120 236 66', 'd-mark'),
      rect('d-head', 142, 88, 36, 12),
      label(81, 32, 'through'),
      label(239, 32, 'back'),
      label(160, 132, 'right-handed, facing the wall'),
    ],
  },
  heard: {
    box: '0 0 320 120',
    body: [
      line('M40 70H262', 'd-aim'),
      ball(40, 70, 9),
      line('M272 26V104', 'd-mark'),
      rect('d-head', 18, 52, 9, 36),
      rect('d-foot', 150, 88, 34, 18, 4),
      label(296, 70, 'wall'),
      label(192, 102, 'phone', 'start'),
      label(40, 46, 'click'),
      label(262, 22, 'click', 'end'),
    ],
  },
  last: {
    box: '0 0 320 100',
    body: [line('M90 60H218', 'd-aim'), ball(90, 60, 9), hole(230, 60, 14), label(160, 26, 'one putt')],
  },
};
