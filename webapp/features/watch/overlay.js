/**
 * Draws over the moving picture: the marks with their rims, and the way of the last ball over the line that was meant.
 * @import {State, WatchPage, WatchedPutt} from '../../types.js'
 */

// Not the page's: a picture is looked at anywhere
const CASING = 'rgb(0 0 0 / 65%)';
const MEANT = '#ffffff';
const SEEN = '#ffd400';
/** Of the picture's width. */
const THIN = 1 / 200;
/** How much larger the magnifier shows it, and how much of the picture, px. */
const TIMES = 6;
const HALF = 20;

/**
 * @param {CanvasRenderingContext2D} pen @param {readonly (readonly [number, number] | null)[]} points @param {string} colour
 * @param {number[]} dash
 */
function trace(pen, points, colour, dash = []) {
  const width = pen.canvas.width * THIN;
  for (const [ink, wide, pattern] of /** @type {[string, number, number[]][]} */ ([
    [CASING, width * 2, []],
    [colour, width, dash.map((each) => each * width)],
  ])) {
    pen.beginPath();
    for (const point of points) if (point) pen.lineTo(point[0], point[1]);
    pen.lineWidth = wide;
    pen.strokeStyle = ink;
    pen.setLineDash(pattern);
    pen.stroke();
  }
  pen.setLineDash([]);
}

/** @param {CanvasRenderingContext2D} pen @param {WatchedPutt} last */
function ways(pen, { value }) {
  pen.lineCap = 'round';
  trace(pen, value.points_px, MEANT, [4, 4]);
  trace(pen, value.path_px, SEEN);
}

/** @param {CanvasRenderingContext2D} pen @param {WatchPage} page */
function marks(pen, { ball, hole, end, other }) {
  const least = pen.canvas.width / 40;
  for (const at of [ball, hole, end, other]) {
    if (!at) continue;
    for (const [ink, wide] of /** @type {[string, number][]} */ ([
      [CASING, 4],
      [MEANT, 2],
    ])) {
      pen.lineWidth = (wide * pen.canvas.width) / 720;
      pen.strokeStyle = ink;
      pen.beginPath();
      pen.ellipse(at.u, at.v, (at.width || least) / 2, (at.height || least) / 2, 0, 0, 2 * Math.PI);
      pen.stroke();
      if (at === hole) continue;
      pen.beginPath();
      pen.arc(at.u, at.v, Math.max(at.width, least), 0, 2 * Math.PI);
      pen.stroke();
    }
  }
}

/** The last putt on its still picture, to give away. @param {WatchedPutt} last */
export function drawn(last) {
  if (!last.still) return null;
  const canvas = Object.assign(document.createElement('canvas'), { width: last.still.width, height: last.still.height });
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  pen.drawImage(last.still, 0, 0);
  ways(pen, last);
  return canvas;
}

/** @type {unknown[]} */
let painted = [];

/** @param {ParentNode} root @param {State} state */
export function paint(root, { watchPage }) {
  /** @type {HTMLCanvasElement | null} */
  const canvas = root.querySelector('.over-film');
  const shown = [canvas, watchPage];
  if (!canvas || shown.every((part, i) => part === painted[i])) return;
  painted = shown;
  const pen = /** @type {CanvasRenderingContext2D} */ (canvas.getContext('2d'));
  pen.clearRect(0, 0, canvas.width, canvas.height);
  if (watchPage.last && watchPage.phase !== 'moved' && watchPage.hole) ways(pen, watchPage.last);
  marks(pen, watchPage);
}

/** What is under the magnifier now: anew with every frame. @param {HTMLVideoElement} video @param {WatchPage} page */
export function magnified(video, page) {
  /** @type {HTMLCanvasElement | null} */
  const glass = document.querySelector('.glass');
  const at = page.chosen && page[page.chosen];
  if (glass && at) magnify(glass, video, at);
}

/**
 * @param {HTMLCanvasElement} glass @param {HTMLVideoElement} video
 * @param {{u: number, v: number, width: number, height: number}} at
 */
function magnify(glass, video, at) {
  const half = Math.max(HALF, at.width * 0.8);
  const times = (TIMES * HALF) / half;
  const pen = /** @type {CanvasRenderingContext2D} */ (glass.getContext('2d'));
  const side = glass.width;
  pen.imageSmoothingEnabled = false;
  pen.fillRect(0, 0, side, side);
  pen.drawImage(video, at.u - half, at.v - half, 2 * half, 2 * half, 0, 0, side, side);
  const middle = side / 2;
  for (const [ink, wide] of /** @type {[string, number][]} */ ([
    [CASING, 4],
    [MEANT, 1.5],
  ])) {
    pen.strokeStyle = ink;
    pen.lineWidth = wide;
    pen.beginPath();
    pen.moveTo(middle - 14, middle);
    pen.lineTo(middle + 14, middle);
    pen.moveTo(middle, middle - 14);
    pen.lineTo(middle, middle + 14);
    pen.stroke();
    if (!at.width) continue;
    pen.beginPath();
    pen.ellipse(middle, middle, (at.width * times) / 2, (at.height * times) / 2, 0, 0, 2 * Math.PI);
    pen.stroke();
  }
}

export const GLASS_PX = 2 * HALF * TIMES;
