/** Wind chill of 2001, °F from air °F and wind in miles an hour at ten metres. Source: NCEI, "Wind chill temperature", which prints the equation and where it is valid. */
export const windChill = (t: number, v: number): number => 35.74 + 0.6215 * t - 35.75 * v ** 0.16 + 0.4275 * t * v ** 0.16;
