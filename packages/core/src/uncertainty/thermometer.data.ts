/** How far a thermometer may be off, °C either way, reading included. Common practice, no source. */
export const THERMOMETER_HALF_WIDTH = { laboratory: 0.2, kitchen: 1, room: 2 } as const;
