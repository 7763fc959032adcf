/** Addresses of a flight's pages. */
export const flightsPath = (household: string): string => `/h/${household}/flights`;
export const newFlightPath = (household: string): string => `/h/${household}/flights/new`;
export const flightPath = (household: string, flight: string): string => `/h/${household}/flights/${flight}`;
export const sheetPath = (household: string, flight: string, sheet: string): string =>
  `${flightPath(household, flight)}/sheets/${sheet}`;
export const alonePath = (household: string, flight: string): string =>
  `${flightPath(household, flight)}/alone`;
export const revealPath = (household: string, flight: string): string =>
  `${flightPath(household, flight)}/reveal`;
export const findingPath = (household: string, flight: string): string =>
  `/h/${household}/findings/${flight}`;

/** The token stands behind `#`, which a browser keeps to itself: it reaches no server and no log. */
export const pourPath = (household: string, flight: string, token?: string): string =>
  `${flightPath(household, flight)}/pour${token === undefined ? "" : `#${token}`}`;
