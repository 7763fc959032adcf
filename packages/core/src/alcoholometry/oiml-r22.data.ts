/**
 * The 54 coefficients of the density of ethanol and water mixtures.
 *
 * Source: OIML R 22, "International alcoholometric tables", edition 1975 (E), general formula; the same formula is the
 * annex of Council Directive 76/766/EEC (OJ L 262, 27.9.1976). Taken from two transcriptions compared digit for digit;
 * A1 to A5 and B1 to B4 also compared with the annex of the Directive.
 *
 *   rho = A1 + sum(k = 2..12) A_k p^(k-1) + sum(k = 1..6) B_k dt^k + sum(i = 1..5) sum(k = 1..m_i) C_i,k p^k dt^i
 *
 * with p the mass fraction of ethanol, dt = t - 20 °C, rho in kg/m³. In this file an index starts at 0: A[0] is A1.
 */

/** Density at 20 °C by powers of p, kg/m³. */
export const A: readonly number[] = [
  998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234,
  747017.2998, -547846.1354, 223446.0334, -39032.85426,
];

/** Water's departure from 20 °C by powers of dt from the first, kg/m³ per °C^k. */
export const B: readonly number[] = [
  -0.20618513, -0.0052682542, 3.6130013e-5, -3.8957702e-7, 7.169354e-9, -9.9739231e-11,
];

/** Cross terms: C[i] holds, for dt^(i+1), the powers of p from the first. */
export const C: readonly (readonly number[])[] = [
  [
    0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045,
    -12101.64659068747, 22486.46550400788, -26055.62982188164, 18523.73922069467, -7420.201433430137,
    1285.617841998974,
  ],
  [
    -0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014,
    109.635566657757, -142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783,
  ],
  [
    -0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638,
    4.810060584300675, -4.672147440794683, 2.458043105903461, -0.5411227621436812,
  ],
  [4.075376675622027e-6, -8.76305857347111e-6, 6.515031360099368e-6, -1.51578483698721e-6],
  [-2.788074354782409e-8, 1.345612883493354e-8],
];
