"""A room with a putt in it, made up: clicks, thuds, rattles, echo, hum, talk and a television, at any sample rate.

Drawn from formulas alone; the engine's own models take no part. Amplitudes are linear, 1 the loudest that a file holds.
"""

from __future__ import annotations

import subprocess
import wave
from dataclasses import dataclass, field
from pathlib import Path

import numpy as np
from scipy.signal import butter, fftconvolve, resample_poly, sosfilt

type Sound = np.ndarray
type Parts = list[tuple[float, float, float]]  # Hz, decay (s), share

STIMPMETER_SPEED = 1.83  # m/s; P: Holmes, Am. J. Phys. 59, 1991
FOOT = 0.3048
# hertz, decay in s, share: what a struck ball and what it then meets sound like; assumed, from dull to bright
STRIKES: dict[str, Parts] = {
    "dull": [(900, 0.006, 1.0), (1700, 0.004, 0.4)],
    "usual": [(1800, 0.004, 1.0), (3200, 0.003, 0.5)],
    "bright": [(2600, 0.003, 1.0), (5200, 0.003, 0.7)],
}
THINGS: dict[str, Parts] = {
    "glass": [(2900, 0.030, 0.8), (4700, 0.045, 0.6), (7100, 0.03, 0.4)],
    "skirting": [(330, 0.012, 1.0), (1100, 0.006, 0.6), (3300, 0.003, 0.2)],
    "coin": [(3600, 0.012, 0.7), (6100, 0.015, 0.7)],
    "hole": [(750, 0.010, 1.0), (1900, 0.006, 0.6), (3500, 0.004, 0.3)],
}
TONES = {"start": (440, 0.8), "top": (660, 0.8), "impact": (1320, 1.0)}  # of the app itself; decay 18 ms, cut at 70


def ring(parts: Parts, rate: int, rng: np.random.Generator) -> Sound:
    """Decaying tones that begin at once, with a breath of noise at the touch."""
    t = np.arange(int(0.25 * rate)) / rate
    sound = np.zeros_like(t)
    for hz, decay, share in parts:
        if hz < 0.47 * rate:
            sound += share * np.sin(2 * np.pi * hz * rng.uniform(0.97, 1.03) * t + rng.uniform(0, 1)) * np.exp(-t / decay)
    sound += 0.4 * rng.normal(size=t.size) * np.exp(-t / 0.0015)
    return sound / np.abs(sound).max()


def paper(rate: int, rng: np.random.Generator) -> Sound:
    """A ball that rolls on to a sheet: a short crackle without a tone."""
    t = np.arange(int(0.06 * rate)) / rate
    sos = butter(2, min(1500, 0.4 * rate), "high", fs=rate, output="sos")
    sound = sosfilt(sos, rng.normal(size=t.size)) * np.minimum(1, t / 0.001) * np.exp(-t / 0.010)
    return sound / np.abs(sound).max()


def tone(kind: str, rate: int) -> Sound:
    hz, loud = TONES[kind]
    t = np.arange(int(0.07 * rate)) / rate
    return loud * np.cos(2 * np.pi * hz * t) * np.exp(-t / 0.018)


def door(rate: int, rng: np.random.Generator) -> Sound:
    """A door that falls shut: a low blow that lasts, then its latch."""
    t = np.arange(int(0.6 * rate)) / rate
    sos = butter(2, 250, "low", fs=rate, output="sos")
    sound = sosfilt(sos, rng.normal(size=t.size)) * np.minimum(1, t / 0.008) * np.exp(-t / 0.09)
    sound = sound / np.abs(sound).max()
    latch = ring([(1500, 0.008, 1.0)], rate, rng)
    at = int(0.14 * rate)
    sound[at : at + latch.size] += 0.4 * latch[: sound.size - at]
    return sound / np.abs(sound).max()


def voice(rate: int, seconds: float, rng: np.random.Generator) -> Sound:
    """Talk without espeak-ng: syllables of a buzz through three formants, some begun by the burst of a t, p or k."""
    inner = 16_000
    n = int(seconds * inner)
    sound, at = np.zeros(n), 0.0
    while at < seconds - 0.4:
        length, pitch = rng.uniform(0.12, 0.28), rng.uniform(95, 210)
        t = np.arange(int(length * inner)) / inner
        buzz = np.sign(np.sin(2 * np.pi * pitch * t * (1 + 0.1 * t / length)) - 0.9) + 1
        vowel = np.zeros_like(t)
        for hz, wide in zip(rng.uniform((300, 900, 2300), (800, 2100, 2900)), (80, 120, 180), strict=True):
            vowel += sosfilt(butter(1, (hz - wide, hz + wide), "band", fs=inner, output="sos"), buzz)
        vowel *= np.minimum(1, t / 0.03) * np.minimum(1, (length - t) / 0.05)
        vowel /= np.abs(vowel).max()
        start = int(at * inner)
        if rng.random() < 0.5:
            burst_t = np.arange(int(0.05 * inner)) / inner
            burst = sosfilt(butter(2, rng.uniform(1200, 3500), "high", fs=inner, output="sos"), rng.normal(size=burst_t.size))
            burst *= np.exp(-burst_t / rng.uniform(0.008, 0.02))
            burst *= 0.25 / np.abs(burst).max()
            sound[start : start + burst.size] += burst
            start += int(rng.uniform(0.02, 0.06) * inner)
        vowel = vowel[: n - start]
        sound[start : start + vowel.size] += vowel
        at += length + rng.choice([0.05, 0.12, 0.5], p=[0.5, 0.35, 0.15])
    return at_rate(sound, inner, rate)


def spoken(program: str, words: str, folder: Path) -> Sound:
    """The same by espeak-ng, at its own 22,050 Hz."""
    path = folder / "spoken.wav"
    subprocess.run([program, "-w", str(path), words], check=True)
    with wave.open(str(path)) as file:
        assert file.getframerate() == 22_050
        sound = np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32768
    return sound / np.abs(sound).max()


def television(rate: int, seconds: float, rng: np.random.Generator) -> Sound:
    """A programme through a wall's worth of loudspeaker: pink noise that swells, with a beat and a voice in it."""
    n = int(seconds * rate)
    spectrum = np.fft.rfft(rng.normal(size=n))
    hz = np.fft.rfftfreq(n, 1 / rate)
    pink = np.fft.irfft(spectrum / np.sqrt(np.maximum(hz, 40)), n)
    swell = np.interp(np.arange(n) / rate, np.arange(0, seconds + 1, 0.5), rng.uniform(0.4, 1.0, int(seconds * 2) + 2))
    talk = voice(rate, seconds, rng)
    talk = np.pad(talk, (0, max(0, n - talk.size)))[:n]
    return pink / pink.std() * swell + talk / talk.std()


def at_rate(sound: Sound, had: int, rate: int) -> Sound:
    """The same sound with ``rate`` samples a second in place of ``had``."""
    common = np.gcd(had, rate)
    return resample_poly(sound, rate // common, had // common)


def level_of(sound: Sound) -> float:
    return float(np.sqrt(np.mean(sound**2)))


def slowing(stimp_ft: float) -> float:
    """D: v^2 / (2 S), S the Stimpmeter's length."""
    return STIMPMETER_SPEED**2 / (2 * stimp_ft * FOOT)


def time_to(distance: float, launch: float, stimp_ft: float) -> float:
    """When a rolling ball is there: the smaller root of d = v t - a t^2 / 2."""
    a = slowing(stimp_ft)
    return float((launch - np.sqrt(launch**2 - 2 * a * distance)) / a)


@dataclass
class Room:
    """What is heard in a room: ``seconds`` at ``rate`` samples a second; ``putts`` are impact, arrivals and launch."""

    rate: int
    seconds: float
    seed: int
    strike: str = "usual"
    things: tuple[str, ...] = ("glass",)
    stimp_ft: float = 9.0
    marks_m: tuple[float, ...] = (2.5,)
    sound: Sound = field(init=False)
    putts: list[tuple[float, list[float], float]] = field(default_factory=list)
    clicks: list[float] = field(default_factory=list)

    def __post_init__(self) -> None:
        self.rng = np.random.default_rng(self.seed)
        self.sound = np.zeros(int(self.seconds * self.rate))

    def put(self, at: float, sound: Sound, loud: float) -> None:
        first = round(at * self.rate)
        part = sound[: max(0, self.sound.size - first)]
        self.sound[first : first + part.size] += loud * part

    def thing(self, name: str) -> Sound:
        return paper(self.rate, self.rng) if name == "paper" else ring(THINGS[name], self.rate, self.rng)

    def putt(self, at: float, launch: float, loud: float = 0.2, arrival: float = 0.2) -> None:
        """A putt that meets the marks that it reaches; what it met last, it leaves with a clatter."""
        self.put(at, ring(STRIKES[self.strike], self.rate, self.rng), loud * self.rng.uniform(1.0, 1.6))
        arrivals = []
        for mark, name in zip(self.marks_m, self.things, strict=True):
            if launch**2 <= 2 * slowing(self.stimp_ft) * mark * 1.02:
                break
            then = at + time_to(mark, launch, self.stimp_ft)
            if then > self.seconds - 0.3:
                break
            arrivals.append(then)
            self.put(then, self.thing(name), arrival * self.rng.uniform(1.0, 1.6))
            self.clicks.append(then)
            if name in ("hole", "glass"):
                for after in (0.09, 0.21):
                    self.put(then + after, self.thing(name), 0.4 * arrival * self.rng.uniform(0.5, 1))
        self.clicks.append(at)
        self.putts.append((at, arrivals, launch))

    def echo(self, seconds: float = 0.35, share: float = 0.35) -> None:
        """A room's answer: reflections that thin out, ``seconds`` until they are 60 dB down."""
        t = np.arange(int(seconds * self.rate)) / self.rate
        tail = self.rng.normal(size=t.size) * np.exp(-6.9 * t / seconds) * (self.rng.random(t.size) < 0.15)
        tail[: int(0.002 * self.rate)] = 0
        tail *= share / np.sqrt(np.sum(tail**2))
        self.sound += fftconvolve(self.sound, tail)[: self.sound.size]

    def noise(self, sound: Sound, decibels: float, loud: float = 0.2) -> None:
        """Noise so far below the softest strike: root mean squares, that of the strike over its first 5 ms."""
        noise = np.resize(sound, self.sound.size)
        strike = ring(STRIKES[self.strike], self.rate, np.random.default_rng(0))[: int(0.005 * self.rate)]
        self.sound += noise / level_of(noise) * loud * level_of(strike) / 10 ** (decibels / 20)

    def white(self) -> Sound:
        return self.rng.normal(size=self.sound.size)

    def hum(self) -> Sound:
        t = np.arange(self.sound.size) / self.rate
        return np.sum(
            [share * np.sin(2 * np.pi * hz * t) for hz, share in ((50, 1.0), (100, 0.7), (150, 0.4), (250, 0.2))], axis=0
        )

    def levels(self) -> list[list[float]]:
        return bands(np.clip(self.sound, -1, 1), self.rate)


def bands(sound: Sound, rate: int) -> list[list[float]]:
    """Largest amplitude a millisecond below 800 Hz, to 3 kHz and above, as the page's worklet tells them."""
    count = int(sound.size * 1000 / rate)
    edges = (np.arange(count + 1) * rate / 1000).round().astype(int)[:-1]
    parts = (
        sosfilt(butter(2, 800, "low", fs=rate, output="sos"), sound),
        sosfilt(butter(2, 3000, "low", fs=rate, output="sos"), sosfilt(butter(2, 800, "high", fs=rate, output="sos"), sound)),
        sosfilt(butter(2, 3000, "high", fs=rate, output="sos"), sound),
    )
    return [np.minimum(1, np.maximum.reduceat(np.abs(part), edges)).round(6).tolist() for part in parts]
