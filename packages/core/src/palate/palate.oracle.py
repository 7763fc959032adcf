# Makes palate.oracle.json: python3 palate.oracle.py > palate.oracle.json  (numpy 2.4.6, scipy 1.17.1; made-up data, seeded)
# The joint normal law of levels and of all that was said, built whole from its definition and conditioned by numpy.
import json
import numpy as np
from scipy import stats

rng = np.random.default_rng(11)
out = {"cases": [], "teaches": []}
for W, T, N in ((3, 1, 4), (4, 2, 9), (6, 3, 25), (5, 4, 40)):
    K = 9  # numbers of a label, and how far their effects may be off (label-prior.data.ts, prior.data.ts)
    variances = np.array([1.5, .5, .5, .7, .7, .5, .4, .4, .4]) ** 2
    labels = np.round(np.c_[np.ones(W), rng.normal(size=(W, K - 1))], 3)
    means = np.round(rng.normal(1, 1, K), 3)
    apart, mixing, bias = np.round(rng.uniform(.4, 1.8, 3), 3)
    noise = np.round(rng.uniform(.4, 1.2, T), 3)
    offset = np.round(rng.normal(size=T), 3); offset = offset - offset.mean()
    ln = rng.normal(0, .2, T); stretch = np.exp(ln - ln.mean())
    parts, taster, said, own = [], [], [], []
    for n in range(N):
        if n % 3 == 2:
            i, j = rng.choice(W - 1, 2, replace=False)  # the last whiskey stands in no mix
            amounts = {int(i): int(rng.integers(1, 4)), int(j): int(rng.integers(1, 4))}
        else:
            amounts = {int(rng.integers(0, W)): 1}
        parts.append(amounts); taster.append(int(rng.integers(0, T)))
        said.append(round(float(rng.uniform(1, 9)), 2)); own.append(round(float(rng.uniform(.4, 1.6)), 3))
    keys = [tuple(sorted((i, a / sum(p.values())) for i, a in p.items())) for p in parts]
    mixes = sorted({k for k in keys if len(k) > 1})
    # Unknowns: effects, biases of tasters held to add to 0, strays of whiskeys from labels, strays of mixes.
    P = np.eye(T) - np.ones((T, T)) / T
    size = K + T + W + len(mixes)
    prior = np.zeros((size, size)); m0 = np.zeros(size)
    prior[:K, :K] = np.diag(variances); m0[:K] = means
    prior[K:K + T, K:K + T] = bias ** 2 * P
    prior[K + T:K + T + W, K + T:K + T + W] = apart ** 2 * np.eye(W)
    for m, k in enumerate(mixes):
        prior[K + T + W + m, K + T + W + m] = mixing ** 2 * 2 * (1 - sum(s * s for _, s in k))
    levels = np.zeros((W, size)); levels[:, :K] = labels; levels[:, K + T:K + T + W] = np.eye(W)
    X = np.zeros((N, size)); c = np.zeros(N); R = np.zeros(N)
    for n in range(N):
        t = taster[n]
        for i, s in keys[n]:
            X[n] += stretch[t] * s * levels[i]
        if len(keys[n]) > 1:
            X[n, K + T + W + mixes.index(keys[n])] += stretch[t]
        X[n, K + t] += 1
        c[n] = 5 + offset[t] - 5 * stretch[t]
        R[n] = own[n] ** 2 + noise[t] ** 2
    V = X @ prior @ X.T + np.diag(R)
    mean = c + X @ m0
    gain = levels @ prior @ X.T @ np.linalg.inv(V)
    out["cases"].append({
        "labels": labels.tolist(), "means": means.tolist(),
        "apart": apart, "mixing": mixing, "bias": bias, "noise": noise.tolist(), "offset": offset.tolist(), "stretch": stretch.tolist(),
        "parts": parts, "taster": taster, "said": said, "own": own,
        "levelMeans": (levels @ m0 + gain @ (np.array(said) - mean)).tolist(),
        "levelCovariance": (levels @ prior @ levels.T - gain @ X @ prior @ levels.T).tolist(),
        "logLikelihood": float(stats.multivariate_normal.logpdf(said, mean, V)),
    })
# What one more note takes off the variances: two attributes, levels of four whiskeys, a mix and a whiskey alone.
for shares in ([0, 1, 0, 0], [.5, 0, .25, .25]):
    covariances, spoken, off = [], [], []
    now = after = 0.
    p = np.array(shares); mixing = .8
    for a in range(2):
        m = rng.normal(size=(4, 4)); C = np.round(m @ m.T + .3 * np.eye(4), 4)
        s, v = round(float(rng.uniform(.2, 1)), 3), round(float(rng.uniform(.5, 2)), 3)
        covariances.append(C.tolist()); spoken.append(s); off.append(v)
        big = np.zeros((5, 5)); big[:4, :4] = C; big[4, :4] = big[:4, 4] = C @ p
        big[4, 4] = p @ C @ p + mixing ** 2 * 2 * (1 - p @ p) + v
        # Conditional on the note: the inverse of the top left block of the inverse.
        told = np.linalg.inv(np.linalg.inv(big)[:4, :4])
        about = [0, 1, 3]
        now += np.trace(C[np.ix_(about, about)])
        after += (1 - s) * np.trace(C[np.ix_(about, about)]) + s * np.trace(told[np.ix_(about, about)])
    out["teaches"].append({"shares": shares, "mixing": mixing, "covariances": covariances, "spoken": spoken, "noteVariance": off, "about": [0, 1, 3], "share": 1 - after / now})
print(json.dumps(out))
