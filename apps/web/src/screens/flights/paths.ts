import { tokenOf } from "../../session/index.ts";

/** Addresses of a flight's pages. */
export const flightsPath = (household: string): string => `/h/${household}/flights`;
export const newFlightPath = (household: string): string => `/h/${household}/flights/new`;
const base = (household: string, flight: string): string => `/h/${household}/flights/${flight}`;
/** Who sits at the table and how far they are: all that a guest and a watcher see of a flight as a whole. */
export const tablePath = (household: string, flight: string): string => `${base(household, flight)}/table`;
/** The flight's own page; a guest's phone may not read it and goes to the table instead. */
export const flightPath = (household: string, flight: string): string =>
  tokenOf("guest", flight) === undefined ? base(household, flight) : tablePath(household, flight);
export const checkPath = (household: string, flight: string): string => `${base(household, flight)}/check`;
/** A link into a flight stands behind `#` too. */
export const joinPath = (link: string): string => `/join#${link}`;
export const sheetPath = (household: string, flight: string, sheet: string): string =>
  `${base(household, flight)}/sheets/${sheet}`;
/** A paper sheet typed in by the host. */
export const typeInPath = (household: string, flight: string, sheet: string): string =>
  `${sheetPath(household, flight, sheet)}/paper`;
/** What this device keeps of a sheet that is typed in here from paper. */
export const paperKey = (sheet: string): string => `paper.${sheet}`;
export const alonePath = (household: string, flight: string): string => `${base(household, flight)}/alone`;
export const revealPath = (household: string, flight: string): string => `${base(household, flight)}/reveal`;
export const findingPath = (household: string, flight: string): string =>
  `/h/${household}/findings/${flight}`;

/** The token stands behind `#`, which a browser keeps to itself: it reaches no server and no log. */
export const pourPath = (household: string, flight: string, token?: string): string =>
  `${base(household, flight)}/pour${token === undefined ? "" : `#${token}`}`;
