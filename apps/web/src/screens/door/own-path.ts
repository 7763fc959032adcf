/** A path of this app, or the front page: nobody is sent to another site from here. */
export const ownPath = (to: string | null): string => (to !== null && /^\/(?![/\\])/.test(to) ? to : "/");
