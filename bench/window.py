# The window of bench/window.ts once more in numpy, plane by plane: same laws, same limits, one core.
import sys
import time

import numpy as np

cells, rounds = int(sys.argv[1]), int(sys.argv[2])
speeds, forces = np.geomspace(1e-5, 1, cells), np.geomspace(0.05, 20, cells)[:, None]
ball, lever, factor, contacts = 6.35e-3, 6.35e-3 * np.sin(np.pi / 4), np.sqrt(2), 3
modulus = 1 / ((1 - 0.25) / 2e6 + (1 - 0.04) / 64e9)
viscosity, roughness, thickness = 3.5e-3, np.hypot(2e-8, 1.2e-6), 3e-3
floor, ceiling, noise, scale, tilt = 1e-6, 0.2, 1e-7, 0.005, np.tan(np.radians(0.2))
boundary, spread, least, most, wanted = 0.25, 1.6, 5.0, 120.0, 0.05


count = np.arange(52)


def gaps(low, high):
    return np.where(low == high, 0, np.maximum(1, np.round(10 * np.log10(high / low))))


def sweep(start, ratio, gap):
    return start[:, None] * (ratio ** (1 / np.maximum(1, gap)))[:, None] ** count


def held(steps):
    return np.clip(2 * np.pi * lever / steps, least, most)


def window():
    load = factor * forces / contacts
    radius = np.cbrt(0.75 * load * ball / modulus)
    approach = radius**2 / ball
    peak = 1.5 * load / (np.pi * radius**2)
    doubled = 2 * modulus
    u = viscosity * speeds / 2 / (doubled * ball)
    w = load / (doubled * ball**2)
    # Ĥ = (h/R)(W/U)² of the two regimes that a liquid without pressure thickening has.
    soft = 8.7 * (1 - 0.85 * np.exp(-0.31)) * u**0.66 * w ** (8 / 3 * 0.67 - 2)
    rigid = 128 * 0.6**2 * (0.131 * np.arctan(0.5) + 1.683) ** 2 * u**2 * w**-2
    ratio = ball * np.maximum(soft, rigid) / roughness
    shear = 2 * (3.8 * u**0.71 * w**-0.76 + 0.96 * u**0.36 * w**-0.11)
    square = ratio**2 / 3
    wide = np.exp(4 * np.sqrt((2 / 3 * 0.2 / 3.5) ** 2 + 0.3**2 + 0.3**2))
    touching, fewer, more = 1 / (1 + square), 1 / (1 + square * wide), wide / (wide + square)
    friction = shear + (boundary - shear) * touching
    low0, high0, thin, thick = boundary / spread, boundary * spread, shear / 2, shear * 2
    low = thin + (low0 - thin) * np.where(low0 > thin, fewer, more)
    high = thick + (high0 - thick) * np.where(high0 > thick, more, fewer)
    turn = 2 * np.pi * lever / speeds
    dwell = np.clip(turn, least, most)
    turns = dwell / turn
    bias = np.where(turns < 1, np.abs(np.sin(np.pi * turns)) / (np.pi * turns) * tilt, 0)
    rest, past = gaps(speeds, 1.0), gaps(np.minimum(1e-4, speeds), speeds)
    onwards = sweep(speeds, 1.0 / speeds, rest)
    back = sweep(speeds, np.minimum(1e-4, speeds) / speeds, past)
    time_from = 2 * np.where(count <= rest[:, None], held(onwards), 0).sum(1)
    distance = 2 + 2 * np.where(count <= past[:, None], back * held(back), 0).sum(1)
    per = factor * lever * forces
    torque = friction * per
    total = (
        2 * scale**2 / 3 + 3.5e-3**2
        + ((noise / torque) ** 2 + (1e-3 / forces) ** 2) / np.maximum(1, dwell)
        + (noise / torque) ** 2
        + (1e-3 / forces) ** 2
        + (bias / friction) ** 2 / 3
    )
    uncertainty = np.sqrt(total)
    rotation = speeds / lever
    broken = (
        1 * (low * per < max(floor, noise / wanted))
        | 2 * (high * per > ceiling)
        | 4 * (forces < 0.01)
        | 8 * (forces > 50)
        | 16 * (rotation < 1e-5)
        | 32 * (rotation > 300)
        | 64 * (peak > 1e12)
        | 256 * (approach > 0.1 * thickness)
        | 1024 * (bias > wanted * friction)
        | 2048 * (distance > 100)
        | 8192 * (time_from > 3600)
        | 16384 * (uncertainty > wanted)
    )
    return broken, friction, low, high, ratio, uncertainty


taken = []
for _ in range(rounds):
    started = time.perf_counter()
    broken = window()[0]
    taken.append(1e3 * (time.perf_counter() - started))
print(f"{np.median(taken):.2f} ms  {cells} × {cells} cells, {(broken == 0).sum()} measurable (median of {rounds})")
