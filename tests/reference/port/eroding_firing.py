"""Firings of a tube whose surface erodes, station by station, independent of the library.

python3 tests/reference/port/eroding_firing.py > tests/reference/port/eroding-firings.json
python3 tests/reference/port/eroding_firing.py batch > tests/reference/port/eroding-batch.json

Classical Runge-Kutta along the port between nodes, web by the midpoint rule in time, gas fills the burned volume at its pressure, otherwise steady, head
pressure by brentq. The truth has an augmentation factor, and burns at a rate a few per cent off the burn law that the
person knows. Filling, igniter and tail-off of the gas are first-order lags. Noise is added by the test.
"""
import json
import math
import random
import sys

import scipy
from scipy.optimize import brentq

R, GAMMA, MOLAR, FLAME, DENSITY = 8.31446261815324, 1.14, 0.040, 1600.0, 1780.0
RT = R / MOLAR * FLAME
CSTAR = math.sqrt(RT) / math.sqrt(GAMMA * (2 / (GAMMA + 1)) ** ((GAMMA + 1) / (GAMMA - 1)))
NODES = 41


def run(outer, bore, length, throat, exponent, factor, scale, steps=160):
    n = exponent
    dz = length / (NODES - 1)
    web = [0.0] * NODES
    most = 0.5 * (outer - bore)
    at = math.pi / 4 * throat**2

    def rate_of(p, flux, d):
        r0 = scale * 7e-3 * (p / 1e6) ** n
        if flux <= 0:
            return r0
        g = flux / (DENSITY * r0) * (DENSITY * r0 * d / 5e-5 / 1000) ** -0.125
        return r0 * (1 + factor * 0.023 * max(0.0, g**0.8 - 35**0.8))

    def pressure_of(m, impulse, area):
        s = m * m * RT / impulse**2
        low, x = 0.0, s / GAMMA
        for _ in range(60):  # Newton on the balance for M^2
            f = GAMMA * x * (1 + (GAMMA - 1) / 2 * x) - s * (1 + GAMMA * x) ** 2
            d = GAMMA * (1 + (GAMMA - 1) * x) - 2 * s * GAMMA * (1 + GAMMA * x)
            if d <= 0:
                return None, None
            step = f / d
            x -= step
            if abs(step) < 1e-14 * (x + 1e-30):
                break
        if not 0 <= x <= 1:
            return None, None
        return impulse / (area * (1 + GAMMA * x)), x

    def march(p_head, web):
        d = [bore + 2 * w for w in web]
        area = lambda i, u: math.pi / 4 * (d[i] + u * (d[i + 1] - d[i])) ** 2
        m, impulse, rates = 0.0, math.pi / 4 * d[0] ** 2 * p_head, []

        def slopes(i, u, m, impulse):
            a = area(i, u)
            here = d[i] + u * (d[i + 1] - d[i])
            p, x = pressure_of(m, impulse, a)
            if p is None:
                raise ArithmeticError
            r = rate_of(p, m / a, here)
            lit = 1.0 if web[i] + u * (web[i + 1] - web[i]) < most else 0.0
            da = math.pi / 2 * here * (d[i + 1] - d[i]) / dz
            return (DENSITY - p / RT) * r * math.pi * here * lit, p * da, r  # gas fills the burned volume

        for i in range(NODES - 1):
            k1 = slopes(i, 0, m, impulse)
            k2 = slopes(i, 0.5, m + 0.5 * dz * k1[0], impulse + 0.5 * dz * k1[1])
            k3 = slopes(i, 0.5, m + 0.5 * dz * k2[0], impulse + 0.5 * dz * k2[1])
            k4 = slopes(i, 1, m + dz * k3[0], impulse + dz * k3[1])
            rates.append(k1[2])
            m += dz * (k1[0] + 2 * k2[0] + 2 * k3[0] + k4[0]) / 6
            impulse += dz * (k1[1] + 2 * k2[1] + 2 * k3[1] + k4[1]) / 6
        a = math.pi / 4 * d[-1] ** 2
        p, x = pressure_of(m, impulse, a)
        if p is None:
            raise ArithmeticError
        rates.append(rate_of(p, m / a, d[-1]))
        return m, p * (1 + (GAMMA - 1) / 2 * x) ** (GAMMA / (GAMMA - 1)), rates

    def solve(web, guess):
        def excess(ln_p):
            try:
                m, p0, _ = march(math.exp(ln_p), web)
            except ArithmeticError:
                return 1.0
            return (m * CSTAR - p0 * at) / (m * CSTAR + p0 * at)

        low, high = math.log(guess) - 0.02, math.log(guess) + 0.02
        while excess(low) < 0 and low > math.log(1e5):
            low -= 0.05
        while excess(high) > 0:
            high += 0.05
        if low <= math.log(1e5):
            return None
        ln_p = brentq(excess, low, high, xtol=1e-10)
        return math.exp(ln_p), march(math.exp(ln_p), web)

    time, head, nozzle = [0.0], [], []
    first = solve(web, 2e6)
    dt = most / first[1][2][0] / steps
    guess, found = first
    while min(web) < most and guess > 2e5:
        head.append(guess)
        nozzle.append(found[1])
        half = [w + 0.5 * dt * r if w < most else w for w, r in zip(web, found[2])]
        middle = solve(half, guess)
        if middle is None:
            break
        web = [min(most, w + dt * r) if w < most else w for w, r in zip(web, middle[1][2])]
        if sum(w < most for w in web) < 2:
            break
        after = solve(web, middle[0])
        if after is None:
            break
        guess, found = after
        time.append(time[-1] + dt)
    time = time[: len(head)]
    # Sampled evenly; lag of the chamber; ambient before and after.
    sample, lag, rows = 1e-3, 4e-3, []
    p = q = 101325.0
    t = -0.1
    while t < time[-1] + 0.15:
        if t < 0 or t > time[-1]:
            wanted_head = wanted_nozzle = 101325.0
        else:
            k = min(len(time) - 2, int(t / dt))
            u = (t - time[k]) / dt
            wanted_head = head[k] + u * (head[k + 1] - head[k])
            wanted_nozzle = nozzle[k] + u * (nozzle[k + 1] - nozzle[k])
        p += (wanted_head - p) * (1 - math.exp(-sample / lag))
        q += (wanted_nozzle - q) * (1 - math.exp(-sample / lag))
        rows.append((t, p, q))
        t += sample
    keep = rows[::5]
    return {"time": [round(a, 6) for a, _, _ in keep], "head": [round(b) for _, b, _ in keep],
            "nozzle": [round(c) for _, _, c in keep]}


def batch(count=24):
    """Random motors for the coverage of the interval: what the person knows of the exponent is off by a standard error of 0.02."""
    stream = random.Random(13)
    found = []
    while len(found) < count:
        bore = stream.uniform(0.012, 0.03)
        outer = bore * stream.uniform(2.0, 2.8)
        length = bore * stream.uniform(15, 25)
        n = stream.uniform(0.2, 0.45)
        ratio = stream.uniform(1.3, 2.0)
        motor = {"outer": outer, "bore": bore, "length": length, "throat": bore / ratio**0.5, "exponent": n,
                 "factor": stream.uniform(0.2, 2.0), "scale": stream.gauss(1, 0.03)}
        known = n + stream.gauss(0, 0.02)
        lumped = (DENSITY * 7e-3 * 1e6**-n * CSTAR * 4 * length * outer / bore**2 * ratio) ** (1 / (1 - n))
        if not 4e6 < lumped < 2.5e7:
            continue
        record = run(**motor, steps=120)
        keep = slice(None, None, max(1, len(record["time"]) // 250))
        found.append({**motor, "knownExponent": known, "time": record["time"][keep],
                      "head": [round(p, -3) for p in record["head"][keep]]})
    return found


if "batch" in sys.argv:
    print(json.dumps({"program": f"Python, SciPy {scipy.__version__}", "firings": batch()}))
    sys.exit()

cases = [
    {"name": "tight", "outer": 0.05, "bore": 0.02, "length": 0.4, "throat": 0.0145, "exponent": 0.32, "factor": 1.4, "scale": 1.03},
    {"name": "mild", "outer": 0.05, "bore": 0.02, "length": 0.4, "throat": 0.0145, "exponent": 0.32, "factor": 0.6, "scale": 0.97},
    {"name": "none", "outer": 0.05, "bore": 0.02, "length": 0.4, "throat": 0.0145, "exponent": 0.32, "factor": 0.0, "scale": 1.0},
    {"name": "wide", "outer": 0.05, "bore": 0.03, "length": 0.12, "throat": 0.008, "exponent": 0.32, "factor": 1.0, "scale": 1.0},
]
print(json.dumps({"program": f"Python, SciPy {scipy.__version__}", "firings": [
    {**c, **run(c["outer"], c["bore"], c["length"], c["throat"], c["exponent"], c["factor"], c["scale"])} for c in cases]}))
