"""The equations of the segment motor with SciPy's solve_ivp (LSODA), events included. Prints one JSON line for each
tolerance: seconds for a run (best of five), burnout time, pressure integral and pressure at burnout."""
import json
import math
import time

import scipy
from scipy.integrate import solve_ivp

R = 8.31446261815324
rho, a, n, gamma, M, T = 1780.0, 7e-3, 0.32, 1.14, 0.040, 1600.0
RT = R / M * T
cstar = math.sqrt(RT) / (math.sqrt(gamma) * (2 / (gamma + 1)) ** ((gamma + 1) / (2 * (gamma - 1))))
At = math.pi * 0.0035**2
Ro, r0, L = 0.025, 0.008, 0.085
Vc = math.pi * Ro**2 * 0.110
web = Ro - r0


def burning(t, s):
    p, y, _ = s
    rate = a * (p * 1e-6) ** n
    r, length = r0 + y, L - 2 * y
    section = math.pi * (Ro * Ro - r * r)
    area = 2 * math.pi * r * length + 2 * section
    return [RT / (Vc - section * length) * ((rho - p / RT) * area * rate - p * At / cstar), rate, p]


def empty(t, s):
    return [-RT / Vc * s[0] * At / cstar, 0.0, s[0]]


def burnout(t, s):
    return s[1] - web


def stop(t, s):
    return s[0] - 0.2e6


burnout.terminal = stop.terminal = True
stop.direction = -1


def run(rtol, method="LSODA"):
    atol = [rtol * 1e5, rtol * 1e-3, rtol * 1e5]
    one = solve_ivp(burning, (0, 10), [0.2e6, 0, 0], method=method, rtol=rtol, atol=atol, events=burnout)
    t, s = one.t_events[0][0], one.y_events[0][0]
    two = solve_ivp(empty, (t, 10), s, method=method, rtol=rtol, atol=atol, events=stop)
    return t, two.y_events[0][0][2], s[0]


print(json.dumps({"scipy": scipy.__version__, "reference": run(1e-13, "DOP853")}))
for rtol in (1e-4, 1e-5, 1e-6, 1e-7, 1e-8, 1e-9, 1e-10):
    best = math.inf
    for _ in range(5):
        start = time.process_time()
        result = run(rtol)
        best = min(best, time.process_time() - start)
    print(json.dumps({"rtol": rtol, "seconds": best, "result": result}))
