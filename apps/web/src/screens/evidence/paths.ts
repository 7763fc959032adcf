const base = (household: string): string => `/h/${household}/findings`;
export const leaguePath = (household: string): string => `${base(household)}/league`;
export const recipeFindingPath = (household: string, recipe: string): string =>
  `${base(household)}/recipes/${recipe}`;
export const whiskeyFindingPath = (household: string, whiskey: string): string =>
  `${base(household)}/whiskeys/${whiskey}`;
export const tasterFindingPath = (household: string, taster: string): string =>
  `${base(household)}/tasters/${taster}`;
export const writeUpPath = (household: string, flight: string): string =>
  `${base(household)}/${flight}/write-up`;
