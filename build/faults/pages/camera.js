/**
 * A phone that stands still, and a camera whose picture is drawn here: a ball is struck toward a hole again and again, and
 * comes to rest short of it.
 */

const [WIDTH, HEIGHT, FOCAL] = [360, 640, 475];
const [PITCH, LENS_M, BACK_M, BALL_M] = [0.3, 0.4, 0.9, 0.0427];
const [LIES_S, ROLLS_S, RESTS_S] = [1.5, 2.4, 0.9];
const [LAUNCH, HARDER, SLOWING] = [1.1, 0.02, 0.55];
const HOLE_M = 3.048;
const HELD = { alpha: 0, beta: 90 - (PITCH * 180) / Math.PI, gamma: 0 };

/** Where a place so far from the ball is seen, and how wide a metre is there, px. @param {number} x @param {number} up m */
function seen(x, up) {
  const [on, down] = [x + BACK_M, LENS_M - up];
  const depth = on * Math.cos(PITCH) + down * Math.sin(PITCH);
  const metre = FOCAL / depth;
  return { u: WIDTH / 2, v: HEIGHT / 2 + metre * (down * Math.cos(PITCH) - on * Math.sin(PITCH)), metre };
}

/** Ball and hole, as shares of the picture. */
export const MARKS = [seen(0, BALL_M / 2), seen(HOLE_M, 0)].map(({ u, v }) => [u / WIDTH, v / HEIGHT]);

/** How far the ball has gone. @param {number} t s since the camera was opened */
function gone(t) {
  const whole = LIES_S + ROLLS_S + RESTS_S;
  const launch = LAUNCH + HARDER * (Math.floor(t / whole) % 10);
  const rolled = Math.max(0, Math.min(launch / SLOWING, (t % whole) - LIES_S));
  return launch * rolled - (SLOWING * rolled ** 2) / 2;
}

export function open() {
  setInterval(() => dispatchEvent(new DeviceOrientationEvent('deviceorientation', HELD)), 200);
  navigator.mediaDevices.getUserMedia = async () => {
    const canvas = Object.assign(document.createElement('canvas'), { width: WIDTH, height: HEIGHT });
    const pen = canvas.getContext('2d');
    const began = performance.now();
    const disc = ({ u, v, metre }, size, flat, ink) => {
      pen.fillStyle = ink;
      pen.beginPath();
      pen.ellipse(u, v, (metre * size) / 2, (metre * size * flat) / 2, 0, 0, 7);
      pen.fill();
    };
    const draw = () => {
      pen.fillStyle = 'rgb(50 110 60)';
      pen.fillRect(0, 0, WIDTH, HEIGHT);
      disc(seen(HOLE_M, 0), 0.108, 0.15, '#101010');
      disc(seen(gone((performance.now() - began) / 1000), BALL_M / 2), BALL_M, 1, '#f0f0f0');
      setTimeout(draw, 33);
    };
    draw();
    return canvas.captureStream();
  };
}
