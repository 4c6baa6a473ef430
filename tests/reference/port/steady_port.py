"""Steady flow in ports with erosive burning, by SciPy, independent of the library.

python3 tests/reference/port/steady_port.py > tests/reference/port/steady-port.json

Integrates dm/dz and dF/dz (F = A p (1 + beta gamma M^2)) with DOP853 at 1e-12 and finds the head pressure with brentq.
The Mach number of (m, F) is found by brentq on the subsonic branch, not by the quadratic of the library.
"""
import json

import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq
from scipy.special import lambertw

R = 8.31446261815324
GAMMA, MOLAR, FLAME, DENSITY = 1.14, 0.040, 1600.0, 1780.0
RT = R / MOLAR * FLAME
CSTAR = np.sqrt(RT) / np.sqrt(GAMMA * (2 / (GAMMA + 1)) ** ((GAMMA + 1) / (GAMMA - 1)))
A_RATE, N_RATE = 7.0e-3, 0.32  # m/s at 1 MPa


def base_rate(p):
    return A_RATE * (p / 1e6) ** N_RATE


def mukunda_paul(factor=1.0, mu=5e-5):
    def rate(p, flux, diameter, z):
        r0 = base_rate(p)
        g = flux / (DENSITY * r0) * (DENSITY * r0 * diameter / mu / 1000) ** -0.125
        return r0 * (1 + factor * 0.023 * max(0.0, g**0.8 - 35**0.8))

    return rate


def lenoir_robillard(alpha, of, factor=1.0, decay=53.0):
    def rate(p, flux, diameter, z):
        r0 = base_rate(p)
        length = diameter if of == "diameter" else max(z, 1e-12)
        if flux <= 0:
            return r0
        k = decay * DENSITY / flux
        h = alpha * flux**0.8 * length**-0.2
        # e k exp(e k) = h k exp(-k r0)
        x = np.log(k * h) - k * r0
        if x < -600:
            return r0
        added = lambertw(np.exp(x)).real / k if x < 500 else np.nan
        return r0 + factor * added

    return rate


def none(p, flux, diameter, z):
    return base_rate(p)


def mach_of(m, impulse, beta):
    """Subsonic Mach number; None where choked."""
    if m == 0:
        return 0.0
    s = m * m * RT / impulse**2
    f = lambda x: GAMMA * x * (1 + (GAMMA - 1) / 2 * x) / (1 + beta * GAMMA * x) ** 2 - s
    top = 1 / (1 + GAMMA * (beta - 1))
    if f(top) < 0:
        return None
    return np.sqrt(brentq(f, 0, top, xtol=1e-18, rtol=1e-15))


def stagnation(mach):
    return (1 + (GAMMA - 1) / 2 * mach**2) ** (GAMMA / (GAMMA - 1))


class Choked(Exception):
    pass


def bore(piece, m, p, mach, z0, law, beta, stations=()):
    """Along one bore; gives m, p, mach at the end and (z, p, rate, flux) at stations."""
    area, slope, around = piece["area"], piece["slope"], piece["perimeter"]

    def state(z, y):
        mach_here = mach_of(y[0], y[1], beta)
        if mach_here is None:
            raise Choked
        return mach_here, y[1] / (area(z) * (1 + beta * GAMMA * mach_here**2))

    def rhs(z, y):
        _, here = state(z, y)
        rate = law(here, y[0] / area(z), 4 * area(z) / around(z), z0 + z)
        return [DENSITY * rate * around(z), here * slope(z)]

    y = np.array([m, area(0.0) * p * (1 + beta * GAMMA * mach**2)])
    found = []
    breaks = piece["breaks"]
    for lower, upper in zip(breaks, breaks[1:]):
        inside = [s for s in stations if lower <= s <= upper]
        done = solve_ivp(rhs, (lower, upper), y, method="DOP853", rtol=1e-12, atol=1e-14, dense_output=True,
                         max_step=(upper - lower) / 40)
        if not done.success:
            raise Choked
        for s in inside:
            if found and found[-1][0] == s:
                continue
            values = done.sol(s) if s > lower else y
            mach_here, here = state(s, values)
            flux = values[0] / area(s)
            found.append((s, here, law(here, flux, 4 * area(s) / around(s), z0 + s), flux, mach_here))
        y = done.y[:, -1]
    mach_here, here = state(breaks[-1], y)
    return y[0], here, mach_here, found


def tube(diameter, length):
    return {"area": lambda z: np.pi / 4 * diameter**2, "slope": lambda z: 0.0, "perimeter": lambda z: np.pi * diameter,
            "breaks": [0.0, length]}


def tabulated(z, areas, around):
    def slope(at):
        k = min(len(z) - 2, max(0, int(np.searchsorted(z, at, side="right")) - 1))
        return (areas[k + 1] - areas[k]) / (z[k + 1] - z[k])

    return {"area": lambda at: float(np.interp(at, z, areas)), "perimeter": lambda at: float(np.interp(at, z, around)),
            "slope": slope, "breaks": list(z)}


def enter(m, stagnation_pressure, area, loss):
    """Mach number and pressure behind an entrance with a loss of dynamic heads."""
    def excess(mach):
        p = m * np.sqrt(RT / GAMMA) / (area * mach * np.sqrt(1 + (GAMMA - 1) / 2 * mach**2))
        return p * stagnation(mach) + loss * 0.5 * GAMMA * p * mach**2 - stagnation_pressure, p

    if excess(1.0)[0] > 0:
        raise Choked
    mach = brentq(lambda x: excess(x)[0], 1e-6, 1.0, xtol=1e-16, rtol=1e-15)
    return mach, excess(mach)[1]


def march(motor, p_head, stations=()):
    law, beta = motor["law"], motor["beta"]
    m, p, mach, z0, found = 0.0, p_head, 0.0, 0.0, []
    for i, piece in enumerate(motor["pieces"]):
        if i > 0:
            gap = motor["gaps"][i - 1]
            m, p, mach = through_gap(m, p, mach, gap, motor["pieces"][i - 1], beta, law)
            z0 += gap["length"]
            mach, p = enter(m, p * stagnation(mach), piece["area"](0.0), motor["loss"])
        here = [max(0.0, s - z0) for s in stations if -1e-12 <= s - z0 <= piece["breaks"][-1] + 1e-12]
        m, p, mach, part = bore(piece, m, p, mach, z0, law, beta, here)
        found += [(z0 + s, *rest) for s, *rest in part]
        z0 += piece["breaks"][-1]
    exit_state = (m, p, mach)
    if len(motor["gaps"]) == len(motor["pieces"]):
        m, p, mach = through_gap(m, p, mach, motor["gaps"][-1], motor["pieces"][-1], beta, law)
    return m, p * stagnation(mach), exit_state, found


def through_gap(m, p, mach, gap, piece, beta, law):
    a1 = piece["area"](piece["breaks"][-1])
    impulse = a1 * p * (1 + beta * GAMMA * mach**2) + p * (gap["area"] - a1)
    # Rate of the faces at the pressure of the gap in its middle, where half of their gas has been added.
    rate = base_rate(p)
    for _ in range(60):
        half = mach_of(m + 0.5 * DENSITY * rate * gap["faces"], impulse, beta)
        if half is None:
            raise Choked
        rate = base_rate(impulse / (gap["area"] * (1 + beta * GAMMA * half**2)))
    m += DENSITY * rate * gap["faces"]
    mach = mach_of(m, impulse, beta)
    if mach is None:
        raise Choked
    return m, impulse / (gap["area"] * (1 + beta * GAMMA * mach**2)), mach


def solve(motor):
    at = np.pi / 4 * motor["throat"] ** 2

    def excess(ln_p):
        try:
            m, p0, _, _ = march(motor, np.exp(ln_p))
        except Choked:
            return 1e9
        return m * CSTAR / (p0 * at) - 1

    low, high = np.log(1e4), np.log(1e9)
    while high - low > 1e-13:  # bisection: the excess may jump from choked to negative
        middle = 0.5 * (low + high)
        if excess(middle) > 0:
            low = middle
        else:
            high = middle
        if high - low < 1e-3 and excess(low) < 1e8:
            root = brentq(excess, low, high, xtol=1e-13, rtol=1e-14)
            return np.exp(root)
    return np.exp(high)


table = {"z": [0.0, 0.05, 0.15, 0.25, 0.4], "area": [4e-4, 4.2e-4, 5e-4, 5.2e-4, 6.5e-4],
         "perimeter": [0.12, 0.11, 0.1, 0.1, 0.095]}
motors = {
    "tabulated section, Mukunda-Paul, profile of injected flow": {
        "pieces": [tabulated(table["z"], table["area"], table["perimeter"])], "gaps": [], "loss": 0.0, "throat": 0.019,
        "law": mukunda_paul(), "beta": 1.2337, "stations": [0.0, 0.05, 0.2, 0.3, 0.4]},
    "tube choked at its aft end, Lenoir-Robillard by diameter": {
        "pieces": [tube(0.02, 0.4)], "gaps": [], "loss": 0.0, "throat": 0.024,
        "law": lenoir_robillard(7.23698928e-6, "diameter"), "beta": 1.0, "stations": [0.0, 0.1, 0.2, 0.3, 0.4]},
    "tube choked at its aft end, profile of injected flow": {
        "pieces": [tube(0.02, 0.4)], "gaps": [], "loss": 0.0, "throat": 0.0201,
        "law": none, "beta": 1.2337, "stations": [0.0, 0.2, 0.4]},
    "two bores, burning faces in the gap, aft volume, Mukunda-Paul by half": {
        "pieces": [tube(0.02, 0.2), tube(0.024, 0.15)],
        "gaps": [{"area": 0.0019, "faces": 2e-3, "length": 0.004}, {"area": 0.0019, "faces": 0.0, "length": 0.02}],
        "loss": 0.5, "throat": 0.0165, "law": mukunda_paul(0.5), "beta": 1.0, "stations": [0.0, 0.1, 0.2, 0.204, 0.354]},
    "tube, Lenoir-Robillard by distance with twice the augmentation": {
        "pieces": [tube(0.012, 0.3)], "gaps": [], "loss": 0.0, "throat": 0.0095,
        "law": lenoir_robillard(7.23698928e-6, "distance", 2.0), "beta": 1.0, "stations": [0.0, 0.1, 0.2, 0.3]},
}

records = []
for name, motor in motors.items():
    p_head = solve(motor)
    m, p0, (_, p_aft, mach_aft), found = march(motor, p_head, motor["stations"])
    records.append({"name": name, "headPressure": p_head, "nozzleStagnation": p0, "aftPressure": p_aft, "massFlow": m,
                    "aftMach": mach_aft, "position": [f[0] for f in found], "pressure": [f[1] for f in found],
                    "rate": [f[2] for f in found], "massFlux": [f[3] for f in found]})
lambert = []
for r0, flux, length, alpha in [(7e-3, 50.0, 0.02, 7e-6), (7e-3, 300.0, 0.02, 7e-6), (7e-3, 1500.0, 0.3, 1.7e-5),
                                (2e-3, 4000.0, 0.01, 5e-5), (2e-2, 900.0, 0.05, 2e-5)]:
    law = lenoir_robillard(alpha, "diameter")
    k, h = 53 * DENSITY / flux, alpha * flux**0.8 * length**-0.2
    lambert.append({"baseRate": r0, "flux": flux, "length": length, "coefficient": alpha,
                    "rate": r0 + lambertw(k * h * np.exp(-k * r0)).real / k})
print(json.dumps({"program": f"SciPy {scipy.__version__}", "table": table, "records": records, "lambert": lambert}, indent=1))
