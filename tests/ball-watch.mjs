// Plays a film to the app's own ball watch: frames come in by standard input, a byte a pixel; what it saw goes out as JSON.
import { readSync } from 'node:fs';
import { ballNear, holeNear, partOf } from '../webapp/device/ball-finder.js';
import { createBallWatch } from '../webapp/device/ball-watch.js';

const [width, height, rate, near, ...touched] = process.argv.slice(2).map(Number);
const [ball, hole] = [
  { u: touched[0], v: touched[1] },
  { u: touched[2], v: touched[3] },
];
const frame = { x: 0, y: 0, width, height, light: new Uint8Array(width * height) };
const [wide, high] = [Math.round(width / 10), Math.round(height / 10)];

/** As a browser shrinks it. */
function small() {
  const light = new Uint8Array(wide * high);
  for (let y = 0; y < high; y++)
    for (let x = 0; x < wide; x++) {
      let sum = 0;
      for (let i = 0; i < 100; i++) sum += frame.light[(y * 10 + Math.floor(i / 10)) * width + x * 10 + (i % 10)];
      light[y * wide + x] = sum / 100;
    }
  return { x: 0, y: 0, width: wide, height: high, light };
}

function next() {
  for (let got = 0; got < frame.light.length; ) {
    const more = readSync(0, frame.light, got, frame.light.length - got, null);
    if (!more) return false;
    got += more;
  }
  return true;
}

const around = ({ u, v }) => partOf(frame, Math.round(u - near), Math.round(v - near), 2 * near, 2 * near);
const film = { width, height, part: (x, y, w, h) => partOf(frame, x, y, w, h), small };
const [rolls, phases] = [[], []];
const found = {};
let watch;
for (let i = 0; next(); i++) {
  if (!watch) {
    Object.assign(found, { ball: ballNear(around(ball), ball), hole: holeNear(around(hole), hole) });
    watch = createBallWatch({
      film,
      ball: found.ball ?? ball,
      onPhase: (phase) => phases.push(phase),
      onRoll: (sights) => rolls.push(sights),
    });
  }
  watch.frame(i / rate);
}
console.log(JSON.stringify({ ...found, rolls, phases }));
