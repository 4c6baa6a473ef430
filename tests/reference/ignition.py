"""Reference runs for tests/ballistics/ignition.test.ts, computed with SciPy (solve_ivp, DOP853, rtol 1e-11).

Equations of the chamber written anew: tube burning inside and at both ends in closed form, one pressure and one gas
temperature while it burns, energy balance after burnout. Run: python3 tests/reference/ignition.py > tests/reference/ignition.json
"""
import json
import numpy as np
import scipy
from scipy.integrate import solve_ivp
from scipy.optimize import brentq

RU = 8.31446261815324
GAMMA, MOLAR, FLAME, RHO, A_MM, N = 1.14, 0.040, 1600.0, 1780.0, 7.0, 0.32
R = RU / MOLAR
VDK = np.sqrt(GAMMA * (2 / (GAMMA + 1)) ** ((GAMMA + 1) / (GAMMA - 1)))
OUTER, BORE, LENGTH = 0.050, 0.016, 0.085
CHAMBER = np.pi / 4 * 0.050**2 * 0.110
THROAT, EXPANSION = 0.007, 5.0
WEB = (OUTER - BORE) / 2
AMBIENT = 101325.0


def rate(p):
    return A_MM * 1e-3 * (p / 1e6) ** N


def area(y):
    d, l = BORE + 2 * y, LENGTH - 2 * y
    return np.pi * d * l + np.pi / 2 * (OUTER**2 - d**2)


def volume(y):
    d, l = BORE + 2 * y, LENGTH - 2 * y
    return np.pi / 4 * (OUTER**2 - d**2) * l


def choked_mach_limit():
    """Back pressure/chamber pressure at which a nozzle of this expansion chokes (subsonic root at the exit)."""
    f = lambda m: (2 / (GAMMA + 1) * (1 + (GAMMA - 1) / 2 * m * m)) ** ((GAMMA + 1) / (2 * (GAMMA - 1))) / m - EXPANSION
    m = brentq(f, 1e-6, 1)
    return (1 + (GAMMA - 1) / 2 * m * m) ** (-GAMMA / (GAMMA - 1))


CHOKES = AMBIENT / choked_mach_limit()


def flow(p, e, opening=1.0):
    """Mass flow [kg/s] of gas of R*T = e; the exit meters it below the choking pressure."""
    if p <= AMBIENT:
        return 0.0
    throat = np.pi / 4 * THROAT**2 * opening
    choked = p * throat * VDK / np.sqrt(e)
    exit_area = np.pi / 4 * THROAT**2 * EXPANSION
    m = np.sqrt(2 / (GAMMA - 1) * ((p / AMBIENT) ** ((GAMMA - 1) / GAMMA) - 1))
    if m >= 1:
        return choked
    unchoked = p * exit_area / np.sqrt(e) * np.sqrt(GAMMA) * m * (1 + (GAMMA - 1) / 2 * m * m) ** (-(GAMMA + 1) / (2 * (GAMMA - 1)))
    return min(choked, unchoked)


def run(start=AMBIENT, igniter=0.0, full=0.0, fall=0.0, igniter_energy=None, delay=0.0, spread=0.0,
        fraction=1.0, threshold=0.0, blocked=0.0, b_from=0.0, b_until=0.0,
        tail=('isothermal', 0.0, 0.0), efficiency=1.0, stop=0.2e6):
    e0 = R * FLAME * efficiency**2
    ratio = 1.0 if igniter_energy is None else igniter_energy / e0
    held = [fraction < 1 and start < threshold]

    def m_ig(t):
        if igniter == 0:
            return 0.0
        top = igniter / (full + fall / 2)
        return top if t < full else max(0.0, top * (full + fall - t) / fall) if fall > 0 else 0.0

    def slopes(t, s):
        p, y, out = s
        lit = 0.0 if t < delay else (min(1.0, (t - delay) / spread) if spread > 0 else 1.0)
        lit *= fraction if held[0] else 1.0
        r = rate(p) * lit
        opening = 1 - blocked if b_from <= t < b_until else 1.0
        g = RHO * area(y) * r
        s_ig = m_ig(t)
        mix = (s_ig * ratio + g) / (s_ig + g) if s_ig > 0 and ratio != 1 else 1.0
        leaving = flow(p, e0, opening) * np.sqrt(mix)
        made = s_ig * ratio + (RHO - p / e0) * area(y) * r - leaving
        return [e0 * made / (CHAMBER - volume(y)), r, leaving]

    breaks = sorted({b for b in (full, full + fall, delay, delay + spread, b_from, b_until) if b > 0})
    t, s = 0.0, np.array([start, 0.0, 0.0])
    peak, at_peak, opens = start, 0.0, None
    burnout = None
    integral = 0.0
    for stop_time in breaks + [10.0]:
        while t < stop_time and burnout is None:
            events = [lambda t, s: s[1] - WEB * (1 - 1e-15)]
            if held[0]:
                events.append(lambda t, s: s[0] - threshold)
            for ev in events:
                ev.terminal, ev.direction = True, 1
            sol = solve_ivp(slopes, (t, stop_time * (1 - 1e-14)), s, method='DOP853', rtol=1e-11, atol=[1e-4, 1e-14, 1e-13],
                            events=events, max_step=2e-4)
            k = int(np.argmax(sol.y[0]))
            if sol.y[0][k] > peak:
                peak, at_peak = float(sol.y[0][k]), float(sol.t[k])
            integral += float(np.trapezoid(sol.y[0], sol.t))
            t, s = float(sol.t[-1]), sol.y[:, -1].copy()
            if sol.status == 1:
                if len(sol.t_events[0]):
                    burnout = t
                else:
                    held[0] = False
                    opens = t
            else:
                t = stop_time
        if burnout is not None:
            break
    # Tail-off
    law, conductance, wall = tail

    def after(t, s):
        p, e, out = s
        m = flow(p, e)
        if law == 'isothermal':
            return [-m * e / CHAMBER, 0.0, m]
        heat = conductance / R * (e - R * wall)
        dp = (-GAMMA * m * e - (GAMMA - 1) * heat) / CHAMBER
        return [dp, e * (dp / p + m * e / (p * CHAMBER)), m]

    ends = lambda t, s: s[0] - stop
    ends.terminal, ends.direction = True, -1
    tail_run = solve_ivp(after, (burnout, burnout + 5), [s[0], e0, s[2]], method='DOP853', rtol=1e-11,
                         atol=[1e-4, 1e-3, 1e-13], events=[ends], dense_output=True, max_step=1e-3)
    times = burnout + np.array([0.002, 0.005, 0.010])
    return {
        'peak': peak, 'timeOfPeak': at_peak, 'burnout': burnout, 'end': float(tail_run.t[-1]),
        'burnoutPressure': float(s[0]), 'massThroughNozzle': float(tail_run.y[2][-1]),
        'tail': [float(v) for v in tail_run.sol(times)[0]], 'fullIgnition': opens,
        'endEnergy': float(tail_run.y[1][-1]),
    }


def main():
    runs = {
        'fallingIgniter': dict(igniter=1.5e-3, full=0.020, fall=0.015, delay=0.004, spread=0.030),
        'ownGas': dict(igniter=1.0e-3, full=0.020, fall=0.010, igniter_energy=RU / 0.050 * 2600.0, delay=0.005, spread=0.020),
        'partial': dict(igniter=1.2e-3, full=0.030, fall=0.0, fraction=0.3, threshold=1.0e6, spread=0.010),
        'blockage': dict(blocked=0.3, b_from=0.8, b_until=0.81),
        'adiabatic': dict(tail=('adiabatic', 0.0, 0.0)),
        'heatLoss': dict(tail=('heat-loss', 900.0 * 0.020, 500.0)),
    }
    print(json.dumps({'computedWith': f'SciPy {scipy.__version__}', **{k: run(**v) for k, v in runs.items()}}, indent=2))


main()
