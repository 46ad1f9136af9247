/**
 * Draws the three lines into the photograph: white on a dark casing, to be seen on any grass.
 * @import {Seen, State} from '../../types.js'
 */
import { linesOnGreen } from './asks.js';

/** @typedef {readonly [number, number]} Pixel */

// Not the page's: a picture is looked at anywhere
const CASING = 'rgb(0 0 0 / 65%)';
const LINE = '#ffffff';
const AIM = '#ffd400';
/** Of the picture's width. */
const THIN = 1 / 260;

/** @param {CanvasRenderingContext2D} pen @param {Pixel[]} points @param {number} width @param {string} colour @param {number[]} [dash] */
function trace(pen, points, width, colour, dash = []) {
  for (const [ink, broad, pattern] of /** @type {[string, number, number[]][]} */ ([[CASING, width * 1.9, []], [colour, width, dash]])) {
    pen.beginPath();
    for (const [u, v] of points) pen.lineTo(u, v);
    pen.strokeStyle = ink;
    pen.lineWidth = broad;
    pen.setLineDash(pattern);
    pen.stroke();
  }
  pen.setLineDash([]);
}

/** The lines as they lie on the picture, in its own pixels. @param {State} state */
function placed(state) {
  const { sighting: { photo, answers: { camera }, refusals } } = state;
  const lines = linesOnGreen(state);
  if (!photo?.ball || !photo.hole || !camera || !lines || refusals.camera) return null;
  // a new read is known a moment before its place in the picture
  if (camera.points_px.length !== Object.values(lines).flat().length) return null;
  const scale = photo.picture.width / camera.asked.width_px;
  let from = 0;
  /** @param {unknown[]} line @returns {Pixel[]} */
  const next = (line) => camera.points_px.slice(from, (from += line.length)).flatMap((pixel) => (pixel ? [/** @type {Pixel} */ ([pixel[0] * scale, pixel[1] * scale])] : []));
  const [chosen, high, low, [spot]] = [next(lines.chosen), next(lines.high), next(lines.low), next(lines.spot)];
  return { chosen, high, low, spot, off: (camera.error_px ?? 0) * scale, ball: /** @type {Pixel} */ ([photo.ball[0] * photo.picture.width, photo.ball[1] * photo.picture.height]) };
}

/** @param {HTMLCanvasElement} canvas @param {State} state */
function draw(canvas, state) {
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  const { photo } = state.sighting;
  if (!photo) return;
  pen.drawImage(photo.picture, 0, 0);
  const lines = placed(state);
  if (!lines) return;
  const thin = canvas.width * THIN;
  pen.lineCap = 'round';
  pen.lineJoin = 'round';
  if (lines.high.length && lines.low.length) {
    pen.beginPath();
    for (const [u, v] of [...lines.high, ...lines.low.toReversed()]) pen.lineTo(u, v);
    pen.fillStyle = 'rgb(255 255 255 / 25%)';
    pen.fill();
    trace(pen, lines.high, thin * 0.7, LINE, [thin * 4, thin * 3]);
    trace(pen, lines.low, thin * 0.7, LINE, [thin * 0.5, thin * 3]);
  }
  if (lines.spot) trace(pen, [lines.ball, lines.spot], thin * 0.8, AIM, [thin * 5, thin * 4]);
  trace(pen, lines.chosen, thin * 1.5, LINE);
  if (!lines.spot) return;
  const [u, v] = lines.spot;
  trace(pen, [[u - thin * 4, v], [u + thin * 4, v]], thin * 1.4, AIM);
  trace(pen, [[u, v - thin * 4], [u, v + thin * 4]], thin * 1.4, AIM);
  pen.beginPath();
  pen.arc(u, v, lines.off, 0, 2 * Math.PI);
  pen.strokeStyle = AIM;
  pen.lineWidth = thin * 0.5;
  pen.setLineDash([thin, thin * 2]);
  pen.stroke();
  pen.setLineDash([]);
}

/** @type {[HTMLCanvasElement, State['sighting'], unknown, unknown] | undefined} */
let last;

/** Paints the photograph on the screen, when it or its lines have changed. @param {ParentNode} root @param {State} state */
export function paint(root, state) {
  for (const mark of /** @type {NodeListOf<HTMLElement>} */ (root.querySelectorAll('.photo-mark'))) {
    const [x, y] = (mark.dataset.at ?? '').split(' ').map(Number);
    mark.style.left = `${x * 100}%`;
    mark.style.top = `${y * 100}%`;
  }
  /** @type {HTMLCanvasElement | null} */
  const canvas = root.querySelector('canvas#photo');
  if (!canvas) return;
  if (last && last[0] === canvas && last[1] === state.sighting && last[2] === state.read && last[3] === state.window) return;
  last = [canvas, state.sighting, state.read, state.window];
  draw(canvas, state);
}

/** The photograph with its lines, to give away. @param {State} state */
export function drawn(state) {
  const { photo } = state.sighting;
  if (!photo) return null;
  const canvas = Object.assign(document.createElement('canvas'), { width: photo.picture.width, height: photo.picture.height });
  draw(canvas, state);
  return canvas;
}
