"""Three firings with the flow along their ports and erosive burning, solved apart from the library.

Method (other than the library's): all sections at once. For a head pressure and its rate of change the profiles of mass
flow, impulse and rate along the port are iterated to a fixed point on 201 nodes of each bore (cumulative trapezoids);
the rate of change is the root of mass flow at the nozzle = p0 A_t/c* (scipy.optimize.brentq); radii, ends and head
pressure go with time by the classical Runge-Kutta method. Model: /Model P/ of Shapiro (1953) ch. 8 with distributed
storage, Borda-Carnot at gaps, isentropic entrances.

python3 tests/reference/coupled-firings.py > tests/reference/coupled-firings.json   (minutes; SciPy 1.17.1)
"""
import json
import sys

import numpy as np
import scipy
from scipy.optimize import brentq, newton

RU = 8.314462618
N = 200


class Choked(Exception):
    """No subsonic flow; its argument is the direction of the flow that does not pass."""


class Motor:
    def __init__(self, **k):
        self.__dict__.update(k)
        self.RT = RU / self.M * self.T
        g = self.gamma
        self.Gamma = np.sqrt(g) * (2 / (g + 1)) ** ((g + 1) / (2 * (g - 1)))
        self.cstar = np.sqrt(self.RT) / self.Gamma
        self.At = np.pi / 4 * self.throat**2
        self.Ac = np.pi / 4 * self.outer**2


def base_rate(m, p):
    return m.a * (p / 1e6) ** m.n


def rate(m, p, G, D):
    r0 = base_rate(m, p)
    if m.law == "mukunda-paul":
        g = G / (m.rho * r0) * (m.rho * r0 * D / m.mu / 1000) ** -0.125
        return r0 * (1 + 0.023 * np.maximum(0.0, g**0.8 - 35**0.8))
    # Lenoir-Robillard, length = hydraulic diameter: bisection-free Newton on the Lambert form.
    G = np.maximum(G, 1e-9)
    h = m.alpha * G**0.8 * D**-0.2
    k = 53 * m.rho / G
    x = h * np.exp(-np.minimum(k * r0, 700))
    for _ in range(60):
        e = h * np.exp(-np.minimum(k * (r0 + x), 700))
        step = (e - x) / (1 + k * e)
        x = x + step
        if np.max(np.abs(step)) < 1e-13 * np.max(r0):
            break
    return r0 + x


def mach2(m, flow, F):
    g, s = m.gamma, flow * flow * m.RT / (F * F)
    a = s * g * g - g * (g - 1) / 2
    b = g - 2 * s * g
    d = b * b - 4 * a * s
    if np.any(d < 0) or np.any(b <= 0):
        flow = np.atleast_1d(flow)
        raise Choked(np.sign(flow[np.argmax(np.abs(flow))]))
    return 2 * s / (b + np.sqrt(d))


def stag(m, M2):
    return (1 + (m.gamma - 1) / 2 * M2) ** (m.gamma / (m.gamma - 1))


def enter(m, flow, p0, A):
    g = m.gamma
    full = p0 * A / np.sqrt(m.RT)
    f = lambda M: full * np.sqrt(g) * M * (1 + (g - 1) / 2 * M * M) ** (-(g + 1) / (2 * (g - 1))) - flow
    if flow <= 0:
        return 0.0
    if f(1.0) < 0:
        raise Choked(1.0)
    return brentq(f, 0, 1, xtol=1e-14)


class Firing:
    def __init__(self, m):
        self.m = m
        self.profile = [None] * len(m.segments)

    def start(self):
        m = self.m
        y = [m.start]
        for s in m.segments:
            y += list(np.linspace(s["bore"][0] / 2, s["bore"][1] / 2, N + 1))
            y += [0.0, 0.0]
        return np.array(y)

    def parts(self, y):
        out = []
        for k in range(len(self.m.segments)):
            at = 1 + k * (N + 3)
            out.append((y[at : at + N + 1], y[at + N + 1], y[at + N + 2]))
        return out

    def flow(self, y, slope, keep=None):
        """Marches; gives (exit flow - nozzle flow) and fills keep with rates."""
        m = self.m
        p = y[0]
        st = slope / m.RT
        Ro = m.outer / 2
        flow = 0.0
        where = "head"
        pend = 0.0  # burning face behind, that of the segment before
        F = None
        gap0 = m.position0
        behind = 0.0
        for k, (R, lo, hi) in enumerate(self.parts(y)):
            s = m.segments[k]
            L = s["length"]
            z0, z1 = lo, L - hi
            if z1 - z0 < 1e-4 * L or np.all(R >= Ro):
                continue
            zs = np.linspace(z0, z1, N + 1)
            nodes = np.linspace(0, L, N + 1)
            r = np.minimum(np.interp(zs, nodes, R), Ro)
            solid = lambda x: np.pi * max(0.0, Ro**2 - min(x, Ro) ** 2)
            face = pend + (solid(r[0]) if s["ends"] else 0.0)
            length = s["at"] + z0 - behind
            if length > 1e-9 or face > 0:
                extra = m.spare if behind == 0.0 else 0.0
                if F is None:
                    F = m.Ac * p
                else:
                    M2 = mach2(m, flow, F)
                    pb = F / (area * (1 + m.gamma * M2))
                    F = F + pb * (m.Ac - area)
                pg = p if flow == 0 else F / (m.Ac * (1 + m.gamma * mach2(m, flow, F)))
                V = m.Ac * max(length, 0.0) + extra
                for _ in range(30):
                    rg = base_rate(m, pg)
                    mid = flow + 0.5 * ((m.rho - pg / m.RT) * rg * face - V * st)
                    pg2 = F / (m.Ac * (1 + m.gamma * mach2(m, mid, F)))
                    if abs(pg2 - pg) < 1e-12 * pg:
                        break
                    pg = pg2
                if keep is not None:
                    if s["ends"]:
                        keep[("lo", k)] = rg
                    if k > 0 and m.segments[k - 1]["ends"]:
                        keep[("hi", k - 1)] = rg
                flow = flow + (m.rho - pg / m.RT) * rg * face - V * st
                M2 = mach2(m, flow, F)
                p0 = F / (m.Ac * (1 + m.gamma * M2)) * stag(m, M2)
                area = np.pi * r[0] ** 2
                M = enter(m, flow, p0, area)
                ps = p0 / stag(m, M * M)
                F = area * ps * (1 + m.gamma * M * M)
            elif F is None:
                area = np.pi * r[0] ** 2
                F = area * p
                # A closed bore: the spare volume at the head is fed from it.
                flow -= m.spare * st
            A = np.pi * r * r
            burns = (r < Ro * (1 - 1e-12)).astype(float)
            dz = (z1 - z0) / N
            prof = self.profile[k]
            if prof is None:
                prof = (np.full(N + 1, F / A[0]), np.full(N + 1, base_rate(m, p)))
            ps, rt = prof
            for it in range(200):
                gen = ((m.rho - ps / m.RT) * rt * 2 * np.pi * r * burns) - A * st
                ml = flow + np.concatenate(([0], np.cumsum(0.5 * (gen[1:] + gen[:-1])))) * dz
                pm = 0.5 * (ps[1:] + ps[:-1])
                Fl = F + np.concatenate(([0], np.cumsum(pm * np.diff(A))))
                M2 = mach2(m, ml, Fl)
                new = Fl / (A * (1 + m.gamma * M2))
                nr = rate(m, new, np.abs(ml) / A, 2 * r)
                err = np.max(np.abs(new - ps) / new) + np.max(np.abs(nr - rt) / nr)
                ps, rt = new, nr
                if err < 1e-9:
                    break
            self.profile[k] = (ps, rt)
            if keep is not None:
                keep[("r", k)] = np.interp(nodes, zs, rt)
                keep[("aft", k)] = ps[-1]
            flow, F, area = ml[-1], Fl[-1], A[-1]
            behind = s["at"] + z1
            pend = solid(r[-1]) if s["ends"] else 0.0
            endpending = k
        last = m.segments[-1]
        rest = last["at"] + last["length"] - behind
        if F is None:  # nothing is left: one volume
            V = m.Ac * rest + 2 * m.spare
            return -V * st - p * m.At / m.cstar, p, p
        if m.plenum or rest > 1e-9 or pend > 0:
            M2 = mach2(m, flow, F)
            pb = F / (area * (1 + m.gamma * M2))
            F = F + pb * (m.Ac - area)
            pg = F / (m.Ac * (1 + m.gamma * mach2(m, flow, F)))
            V = m.Ac * max(rest, 0.0) + m.spare
            for _ in range(30):
                rg = base_rate(m, pg)
                mid = flow + 0.5 * ((m.rho - pg / m.RT) * rg * pend - V * st)
                pg = F / (m.Ac * (1 + m.gamma * mach2(m, mid, F)))
            if keep is not None and m.segments[endpending]["ends"]:
                keep[("hi", endpending)] = rg
            flow = flow + (m.rho - pg / m.RT) * rg * pend - V * st
            area = m.Ac
        else:
            flow -= m.spare * st
        M2 = mach2(m, flow, F)
        pe = F / (area * (1 + m.gamma * M2))
        p0 = pe * stag(m, M2)
        return flow - p0 * m.At / m.cstar, p0, pe

    def slopes(self, y, guess):
        def f(s):
            try:
                return self.flow(y, s)[0]
            except Choked as way:
                return 1e3 * way.args[0]
        scale = max(abs(guess), y[0] / 0.01)
        try:
            s = newton(f, guess, x1=guess + 1e-4 * scale, tol=1e-7 * scale, maxiter=8)
            if abs(f(s)) > 1e-6 * y[0] * self.m.At / self.m.cstar:
                raise RuntimeError
        except RuntimeError:
            lo, hi = guess - 1e-3 * scale, guess + 1e-3 * scale
            w = 2e-3 * scale
            while f(lo) < 0:
                w *= 3
                lo -= w
            w = 2e-3 * scale
            while f(hi) > 0:
                w *= 3
                hi += w
            s = brentq(f, lo, hi, xtol=1e-8 * scale, rtol=1e-12)
        keep = {}
        _, p0, pe = self.flow(y, s, keep)
        out = np.zeros_like(y)
        out[0] = s
        for k, (R, lo_, hi_) in enumerate(self.parts(y)):
            at = 1 + k * (N + 3)
            if ("r", k) in keep:
                c = self.m.segments[k]
                t = (c["bore"][1] - c["bore"][0]) / 2 / c["length"]
                out[at : at + N + 1] = keep[("r", k)] * np.sqrt(1 + t * t)
                out[at + N + 1] = keep.get(("lo", k), 0.0)
                out[at + N + 2] = keep.get(("hi", k), 0.0)
        return out, p0, pe

    def solid(self, y):
        Ro = self.m.outer / 2
        v = 0.0
        for k, (R, lo, hi) in enumerate(self.parts(y)):
            L = self.m.segments[k]["length"]
            z = np.linspace(lo, max(lo, L - hi), N + 1)
            r = np.minimum(np.interp(z, np.linspace(0, L, N + 1), R), Ro)
            v += np.trapezoid(np.pi * (Ro**2 - r * r), z)
        return v

    def run(self, times, stop):
        y = self.start()
        t, s = 0.0, 0.0
        rows, integral, contact = [], 0.0, None
        first = self.solid(y)
        want = list(times)
        peak = (0.0, 0.0)
        while True:
            fine = 0.1e-3 if t < 0.02 else 1e-3
            h = fine
            if want and t + h >= want[0] - 1e-12:
                h = want[0] - t
            k1, p0, pe = self.slopes(y, s)
            s = k1[0]
            if y[0] > peak[0]:
                peak = (y[0], t)
            if contact is None and any(np.any(R >= self.m.outer / 2) for R, _, _ in self.parts(y)):
                contact = (t, self.solid(y) / first)
            if want and abs(t - want[0]) < 1e-12:
                rows.append(dict(time=t, head=y[0], stagnation=p0, aft=pe, left=self.solid(y) / first))
                want.pop(0)
                continue
            if p0 < stop and t > 0.05:
                return rows, integral, contact, peak, t
            k2, *_ = self.slopes(y + h / 2 * k1, s)
            k3, q0, _ = self.slopes(y + h / 2 * k2, k2[0])
            k4, r0, _ = self.slopes(y + h * k3, k3[0])
            integral += h / 6 * (p0 + 4 * q0 + r0)
            y = y + h / 6 * (k1 + 2 * k2 + 2 * k3 + k4)
            t += h


common = dict(rho=1780.0, a=7e-3, n=0.32, gamma=1.14, M=0.040, T=1600.0, start=0.2e6, mu=5e-5, position0=0.0)
motors = {
    "tube": Motor(**common, law="lenoir-robillard", alpha=7.23698928e-6, outer=0.05, throat=0.0158, spare=0.0, plenum=False,
                  segments=[dict(bore=(0.02, 0.02), length=0.4, at=0.0, ends=False)]),
    "cone": Motor(**common, law="mukunda-paul", outer=0.056, throat=0.0165, spare=0.0, plenum=False,
                  segments=[dict(bore=(0.018, 0.026), length=0.3, at=0.0, ends=False)]),
    # Two segments, all ends burn; 50 mm of free chamber besides the gap, half of it at each end.
    "segments": Motor(**common, law="mukunda-paul", outer=0.06, throat=0.018, spare=np.pi * 0.03**2 * 0.035, plenum=True,
                      segments=[dict(bore=(0.024, 0.024), length=0.16, at=0.0, ends=True),
                                dict(bore=(0.024, 0.024), length=0.16, at=0.166, ends=True)]),
}
times = {
    "tube": [0.002, 0.01, 0.05, 0.2, 0.5, 0.9, 1.2, 1.3, 1.35, 1.4],
    "cone": [0.002, 0.01, 0.05, 0.2, 0.5, 0.8, 1.1, 1.4, 1.6, 1.75],
    "segments": [0.002, 0.01, 0.05, 0.2, 0.5, 0.8, 1.0, 1.1, 1.2, 1.3],
}
if __name__ == "__main__":
    out = {"computed with": f"SciPy {scipy.__version__}, NumPy {np.__version__}, {N + 1} nodes", "units": "SI"}
    for name in sys.argv[1:] or motors:
        rows, integral, contact, peak, end = Firing(motors[name]).run(times[name], 0.3e6)
        out[name] = dict(rows=rows, pressureIntegral=integral, firstContact=contact[0], leftAtContact=contact[1],
                         peakHead=peak[0], peakHeadTime=peak[1], end=end)
        print(name, json.dumps(out[name]), file=sys.stderr)
    json.dump(out, sys.stdout, indent=1)
