/**
 * Draws the three lines into the picture: white on a dark casing, to be seen on any grass.
 * @import {Answers, State} from '../../types.js'
 */
import { linesOnGreen } from './questions.js';

/** @typedef {readonly [number, number]} Pixel */

// Not the page's: a picture is looked at anywhere
const CASING = 'rgb(0 0 0 / 65%)';
const LINE = '#ffffff';
const AIM = '#ffd400';
/** Of the picture's width. */
const THIN = 1 / 260;

/**
 * @param {CanvasRenderingContext2D} pen @param {Pixel[]} points @param {number} width @param {string} colour
 * @param {number[]} [dash]
 */
function trace(pen, points, width, colour, dash = []) {
  for (const [ink, broad, pattern] of /** @type {[string, number, number[]][]} */ ([
    [CASING, width * 1.9, []],
    [colour, width, dash],
  ])) {
    pen.beginPath();
    for (const [u, v] of points) pen.lineTo(u, v);
    pen.strokeStyle = ink;
    pen.lineWidth = broad;
    pen.setLineDash(pattern);
    pen.stroke();
  }
  pen.setLineDash([]);
}

/**
 * The lines as they lie in a picture so many pixels wide.
 * @param {State} state @param {Answers['camera'] | Answers['follow'] | undefined} answer @param {number} width
 */
export function placed(state, answer, width) {
  const lines = linesOnGreen(state);
  // a new read is known a moment before its place in the picture
  if (!answer || !lines || answer.points_px.length !== Object.values(lines).flat().length) return null;
  const scale = width / answer.asked.width_px;
  let from = 0;
  /** @param {unknown[]} line @returns {Pixel[]} */
  const next = (line) =>
    answer.points_px
      .slice(from, (from += line.length))
      .flatMap((pixel) => (pixel ? [/** @type {Pixel} */ ([pixel[0] * scale, pixel[1] * scale])] : []));
  return {
    chosen: next(lines.chosen),
    high: next(lines.high),
    low: next(lines.low),
    spot: next(lines.spot)[0],
    marks: next(lines.marks),
  };
}

/**
 * @param {CanvasRenderingContext2D} pen @param {NonNullable<ReturnType<typeof placed>>} lines
 * @param {number} off how far they may be off
 */
function inked(pen, { chosen, high, low, spot, marks }, off) {
  const thin = pen.canvas.width * THIN;
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  if (high.length && low.length) {
    pen.beginPath();
    for (const [u, v] of [...high, ...low.toReversed()]) pen.lineTo(u, v);
    pen.fillStyle = 'rgb(255 255 255 / 25%)';
    pen.fill();
    trace(pen, high, thin * 0.7, LINE, [thin * 4, thin * 3]);
    trace(pen, low, thin * 0.7, LINE, [thin * 0.5, thin * 3]);
  }
  const [ball] = marks;
  if (spot && ball && marks.length > 1) trace(pen, [ball, spot], thin * 0.8, AIM, [thin * 5, thin * 4]);
  trace(pen, chosen, thin * 1.5, LINE);
  if (!spot) return;
  const [u, v] = spot;
  trace(
    pen,
    [
      [u - thin * 4, v],
      [u + thin * 4, v],
    ],
    thin * 1.4,
    AIM,
  );
  trace(
    pen,
    [
      [u, v - thin * 4],
      [u, v + thin * 4],
    ],
    thin * 1.4,
    AIM,
  );
  pen.beginPath();
  pen.arc(u, v, off, 0, 2 * Math.PI);
  pen.strokeStyle = AIM;
  pen.lineWidth = thin * 0.5;
  pen.setLineDash([thin, thin * 2]);
  pen.stroke();
  pen.setLineDash([]);
}

/** @param {HTMLCanvasElement} canvas @param {State} state */
export function draw(canvas, state) {
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const {
    linePage: { photo, live, measuring },
    answers,
    refusals,
  } = state;
  if (photo) pen.drawImage(photo.picture, 0, 0);
  else pen.clearRect(0, 0, canvas.width, canvas.height);
  const [width, height] = [canvas.width, canvas.height];
  if (measuring && photo?.end && photo.other)
    trace(
      pen,
      [photo.end, photo.other].map(([x, y]) => [x * width, y * height]),
      width * THIN,
      LINE,
    );
  const marked = photo
    ? !measuring && photo.ball && photo.hole && !refusals.camera
    : live?.ball && live.hole && !refusals.follow;
  const lines = marked ? placed(state, photo ? answers.camera : answers.follow, width) : null;
  const told = photo ? answers.camera : answers.marked;
  if (lines) inked(pen, lines, told ? ((told.error_px ?? 0) * width) / told.asked.width_px : 0);
}

/** What was painted last: the canvas, and what it showed. @type {unknown[]} */
let last = [];

/** Paints the picture on the screen, when it or its lines have changed. @param {ParentNode} root @param {State} state */
export function paint(root, state) {
  for (const mark of /** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll('.photo-mark'))) {
    const [left, top] = (mark.dataset.at ?? '').split(' ').map((share) => `${Number(share) * 100}%`);
    Object.assign(mark.style, { left, top });
  }
  /** @type {HTMLCanvasElement | null} */
  const canvas = root.querySelector('.photo canvas');
  if (!canvas) return;
  const shown = [canvas, state.linePage, state.answers, state.refusals, state.read, state.window];
  if (shown.every((part, i) => part === last[i])) return;
  last = shown;
  draw(canvas, state);
}

/** The photograph with its lines, to give away. @param {State} state */
export function drawn(state) {
  const { photo } = state.linePage;
  if (!photo) return null;
  const canvas = Object.assign(document.createElement('canvas'), { width: photo.picture.width, height: photo.picture.height });
  draw(canvas, state);
  return canvas;
}
