"""Best known exact D-optimal designs for Scheffé models, by a long multi-start search: Fedorov exchange over a fine grid with vertices
and midpoints, then every run moved by small random steps. Prints best-known.oracle.json.

    python3 best-known.oracle.py > best-known.oracle.json

numpy 2.4.6. Where theory knows the answer it is printed beside: the {q,2} lattice for the quadratic model (Kiefer 1961) and vertices,
midpoints of edges and centroids of faces for the special cubic (Uranisi 1964), at as many runs as terms, unbounded.
"""
import itertools, json
import numpy as np

rng = np.random.default_rng(8)

def terms(q, model):
    t = [(i,) for i in range(q)] + list(itertools.combinations(range(q), 2))
    return t + list(itertools.combinations(range(q), 3)) if model == "special-cubic" else t

def rows(x, t):
    return np.stack([np.prod(x[:, list(c)], axis=1) for c in t], axis=1)

def vertices(lo, hi):
    q, found = len(lo), []
    for free in range(q):
        others = [i for i in range(q) if i != free]
        for ends in itertools.product((0, 1), repeat=q - 1):
            v = np.zeros(q)
            for i, e in zip(others, ends): v[i] = hi[i] if e else lo[i]
            v[free] = 1 - v.sum()
            if lo[free] - 1e-12 <= v[free] <= hi[free] + 1e-12 and not any(np.allclose(v, w) for w in found): found.append(v)
    return np.array(found)

def candidates(lo, hi):
    v = vertices(lo, hi); q = len(lo)
    mids = np.array([(a + b) / 2 for a, b in itertools.combinations(v, 2)])
    w = rng.dirichlet(np.full(len(v), 0.25), 3000)
    inner = w @ v
    grid = []
    m = 20 if q == 3 else 10
    room = 1 - lo.sum()
    for c in itertools.product(range(m + 1), repeat=q - 1):
        if sum(c) <= m:
            x = lo + room * np.array([*c, m - sum(c)]) / m
            if np.all(x <= hi + 1e-12): grid.append(x)
    return np.vstack([v, mids, np.array(grid).reshape(-1, q), inner])

def fedorov(X, F, n):
    p = F.shape[1]
    d = list(rng.integers(0, len(F), n))
    for _ in range(60):
        M = F[d].T @ F[d] + 1e-9 * np.eye(p)
        Mi = np.linalg.inv(M)
        V = F @ Mi
        dj = np.einsum("ij,ij->i", V, F)
        best = (1e-9, None, None)
        for k, i in enumerate(d):
            di = dj[i]; dij = V @ F[i]
            delta = dj - (dj * di - dij ** 2) - di
            j = int(np.argmax(delta))
            if delta[j] > best[0]: best = (delta[j], k, j)
        if best[1] is None: break
        d[best[1]] = best[2]
    s, l = np.linalg.slogdet(F[d].T @ F[d])
    return (l if s > 0 else -np.inf), X[d]

def refine(x, t, lo, hi, steps=4000):
    f = lambda z: np.linalg.slogdet(rows(z, t).T @ rows(z, t))[1]
    best = f(x); size = 0.05
    for s in range(steps):
        if s % 800 == 799: size /= 4
        y = x.copy(); k = rng.integers(len(x)); i, j = rng.choice(x.shape[1], 2, replace=False)
        h = size * rng.random() * (hi[i] - lo[i])
        h = min(h, hi[i] - y[k, i], y[k, j] - lo[j])
        y[k, i] += h; y[k, j] -= h
        v = f(y)
        if v > best: best, x = v, y
    return best, x

cases = []
BOUNDS = {
    3: [([0, 0, 0], [1, 1, 1]), ([0.2, 0.1, 0.1], [0.6, 0.6, 0.5]), ([0.1, 0, 0.2], [0.7, 0.3, 0.8])],
    4: [([0, 0, 0, 0], [1, 1, 1, 1]), ([0.4, 0.1, 0.1, 0.03], [0.6, 0.5, 0.5, 0.08]), ([0.1, 0.1, 0, 0], [0.6, 0.5, 0.4, 0.3])],
}
for q in (3, 4):
    for model in ("quadratic", "special-cubic"):
        t = terms(q, model); p = len(t)
        for lo, hi in BOUNDS[q]:
            lo, hi = np.array(lo, float), np.array(hi, float)
            X = candidates(lo, hi); F = rows(X, t)
            for n in (p, p + 3):
                found = sorted((fedorov(X, F, n) for _ in range(40)), key=lambda r: -r[0])[:4]
                best = max(refine(x, t, lo, hi)[0] for _, x in found)
                case = {"parts": q, "model": model, "low": lo.tolist(), "high": hi.tolist(), "runs": n, "logDeterminant": round(float(best), 6)}
                if n == p and lo.sum() == 0:
                    pts = [np.eye(q)[i] for i in range(q)] + [np.eye(q)[list(c)].mean(0) for c in itertools.combinations(range(q), 2)]
                    if model == "special-cubic": pts += [np.eye(q)[list(c)].mean(0) for c in itertools.combinations(range(q), 3)]
                    G = rows(np.array(pts), t)
                    case["byTheory"] = round(float(np.linalg.slogdet(G.T @ G)[1]), 6)
                cases.append(case)
print(json.dumps(cases, indent=1))
