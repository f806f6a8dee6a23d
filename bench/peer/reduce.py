"""What somebody at a rig writes in an afternoon with pandas and scipy: a record to a friction curve with its band.

python3 reduce.py RECORD.csv LEVER_ARM_IN_METRES DRAWS

Reads the whole table, drops the first fifth of every step, takes the ratio of means with a standard error from twenty
blocks, fits the five-parameter curve by weighted least squares in ln µ, and draws a bootstrap band over the steps.
No zeroes, no whole turns, no remarks, no choice of a model: less than `kufe reduce` does, as the other half of bench/run.ts.
"""

import json
import sys

import numpy as np
import pandas as pd
from scipy.optimize import least_squares

BLOCKS = 20
SPEEDS = 100
LOWEST = [-15.0, -1.0, -15.0, -20.0, 0.2]
HIGHEST = [5.0, 1.5, 3.0, 5.0, 6.0]


def points_of(table, lever):
    """Speed, friction and standard error of each step."""
    for _, step in table.groupby("Step", sort=False):
        kept = step.iloc[len(step) // 5 :]
        torque = kept["Torque"].to_numpy()
        force = kept["Axial force"].to_numpy()
        friction = torque.mean() / (lever * force.mean())
        residual = (torque - friction * lever * force) / (lever * force.mean())
        length = len(residual) // BLOCKS
        blocks = residual[: length * BLOCKS].reshape(BLOCKS, length).mean(axis=1)
        speed = kept["Angular velocity"].mean() * lever
        yield speed, friction, blocks.std(ddof=1) / np.sqrt(BLOCKS)


def curve(parameters, speed):
    film_scale, film_exponent, boundary, transition, sharpness = parameters
    film = np.exp(film_scale) * speed**film_exponent
    return film + (np.exp(boundary) - film) / (1 + (speed / np.exp(transition)) ** sharpness)


def fitted(speed, friction, weight, start):
    def residual(parameters):
        return weight * (np.log(curve(parameters, speed)) - np.log(friction))

    return least_squares(residual, start, bounds=(LOWEST, HIGHEST), x_scale="jac").x


def main(path, lever, draws):
    # The first line says that the record is invented, the third holds the units.
    table = pd.read_csv(path, skiprows=[0, 2])
    points = list(points_of(table, lever))
    speed, friction, error = np.array(points).T
    weight = 1 / np.maximum(error / friction, 0.005)
    weight /= weight.mean()
    middle = np.sqrt(speed[0] * speed[-1])
    parameters = fitted(speed, friction, weight, [np.log(friction[-1]), 0.2, np.log(friction[0]), np.log(middle), 1.2])
    random = np.random.default_rng(1)
    grid = np.geomspace(speed.min(), speed.max(), SPEEDS)
    curves = []
    for _ in range(draws):
        drawn = np.sort(random.integers(0, len(speed), len(speed)))
        curves.append(curve(fitted(speed[drawn], friction[drawn], weight[drawn], parameters), grid))
    low, high = np.percentile(curves, [2.5, 97.5], axis=0)
    result = {
        "rows": len(table),
        "parameters": parameters.tolist(),
        "points": [{"slidingSpeed": v, "friction": m, "ownUncertainty": u} for v, m, u in points],
        "band": [{"slidingSpeed": v, "low": a, "high": b} for v, a, b in zip(grid, low, high)],
    }
    json.dump(result, sys.stdout)


main(sys.argv[1], float(sys.argv[2]), int(sys.argv[3]))
