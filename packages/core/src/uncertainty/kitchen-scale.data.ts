/**
 * Scales by what they show, g: the step of the display, the standard deviation of repeated weighings, and how far the slope
 * may be off as a share of the load. Common practice, no source: read your own scale's leaflet, or weigh a thing ten times.
 */
export const SCALES = {
  pocket: { stepG: 0.01, repeatG: 0.01, ofLoad: 0.0005 },
  fine: { stepG: 0.1, repeatG: 0.1, ofLoad: 0.0005 },
  kitchen: { stepG: 1, repeatG: 0.5, ofLoad: 0.002 },
} as const;
