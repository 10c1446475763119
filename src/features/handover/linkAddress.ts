/**
 * The address that opens a ride elsewhere: the page's own, with the ride as its fragment,
 * which browsers send to no server.
 *
 * @param page the address of the page, with or without a fragment, which is replaced
 * @param text what `encodeLink` gives
 */
export const linkAddress = (page: string, text: string): string => `${page.replace(/#.*$/s, '')}#${text}`
