# Makes probability-right.oracle.json: python3 probability-right.oracle.py > probability-right.oracle.json
# mpmath at 30 digits, adaptive tanh-sinh quadrature of the defining probabilities, in another form than the program's:
# triangle as P(|A1-A2| smallest), tetrad as P(sorted two and two), two-out-of-five split into its six ways.
import json
from mpmath import mp, mpf, quad, ncdf, npdf, sqrt, inf, linspace
mp.dps = 30

def cuts(d, lo=-14, hi=14):
    return [mpf(lo), mpf(-4), mpf(0), mpf(d), mpf(d) + 4, mpf(hi) + mpf(d)]

def two_afc(d): return ncdf(d / sqrt(mpf(2)))
def three_afc(d): return quad(lambda z: npdf(z - d) * ncdf(z) ** 2, cuts(d))
def duo_trio(d):
    a, b = ncdf(d / sqrt(mpf(2))), ncdf(d / sqrt(mpf(6)))
    return 1 - a - b + 2 * a * b
def triangle(d):
    # u = A1-A2 ~ N(0,2), v = B-(A1+A2)/2 ~ N(d,3/2); right when |v| > 3|u|/2
    return 2 * quad(lambda u: npdf(u, 0, sqrt(mpf(2))) * (ncdf((-1.5 * u - d) / sqrt(mpf(3) / 2)) + 1 - ncdf((1.5 * u - d) / sqrt(mpf(3) / 2))), [0, 1, 2, 4, 8, 16])
def tetrad(d):
    # both A below both B: density of the larger A times P(both B above), and the other way round
    below = quad(lambda x: 2 * npdf(x) * ncdf(x) * (1 - ncdf(x - d)) ** 2, cuts(d))
    above = quad(lambda x: 2 * npdf(x) * (1 - ncdf(x)) * ncdf(x - d) ** 2, cuts(d))
    return below + above
def two_out_of_five(d):
    # A pair ~ N(-+d), sorted third t and fourth t+g, second below t-g
    def side(m):
        return quad(lambda t: npdf(t) * quad(lambda g: 6 * npdf(t + g) * (1 - ncdf(t + g)) * ncdf(t - g + m) ** 2, [0, 1, 3, 8, 16]), [-12, -4, -1, 1, 4, 12])
    return side(mpf(d)) + side(-mpf(d))

out = []
for name, f, grid in [("two_afc", two_afc, None), ("three_afc", three_afc, None), ("duo_trio", duo_trio, None), ("triangle", triangle, None), ("tetrad", tetrad, None), ("two_out_of_five", two_out_of_five, ["0.25", "1", "2", "3.5", "6"])]:
    if name == "two_out_of_five": mp.dps = 18
    for d in grid or ["0.01", "0.25", "0.5", "1", "1.5", "2", "2.5", "3", "4", "5", "7"]:
        out.append([name, float(d), mp.nstr(f(mpf(d)), 20)])
print(json.dumps({"made with": "mpmath 1.3.0, 30 digits (two_out_of_five 18)", "values": out}, indent=1))
