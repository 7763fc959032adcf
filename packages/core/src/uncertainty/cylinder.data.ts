/** One size of measuring cylinder: mL. */
export type CylinderSize = {
  readonly capacityMl: number;
  readonly divisionMl: number;
  /** Largest error at any mark; class B is twice class A. */
  readonly classA: number;
  readonly classB: number;
};

/**
 * Largest permissible errors of glass measuring cylinders at any mark, mL.
 *
 * Source: ISO 4788:2005, Table 1 (from memory; clause 7, that the figures hold "at any point on the scale", read at
 * https://lateststandardsdownload.com/iso-4788-pdf-download-laboratory-glassware-graduated-measuring-cylinders.html). ASTM
 * E1272-02 Table 1, read at https://www.normservis.cz/download/view/astm/e/1/e1272-02_2012.htm, agrees at 5, 10, 100 and 250 mL
 * and is tighter at 25, 50 and 500 mL; it also has class B at twice class A.
 */
export const CYLINDERS: readonly CylinderSize[] = [
  { capacityMl: 5, divisionMl: 0.1, classA: 0.05, classB: 0.1 },
  { capacityMl: 10, divisionMl: 0.2, classA: 0.1, classB: 0.2 },
  { capacityMl: 25, divisionMl: 0.5, classA: 0.25, classB: 0.5 },
  { capacityMl: 50, divisionMl: 1, classA: 0.5, classB: 1 },
  { capacityMl: 100, divisionMl: 1, classA: 0.5, classB: 1 },
  { capacityMl: 250, divisionMl: 2, classA: 1, classB: 2 },
  { capacityMl: 500, divisionMl: 5, classA: 2.5, classB: 5 },
  { capacityMl: 1000, divisionMl: 10, classA: 5, classB: 10 },
  { capacityMl: 2000, divisionMl: 20, classA: 10, classB: 20 },
];

/** A kitchen jug: 5 % of what is in it. Common practice, no source. */
export const JUG_SHARE = 0.05;
