const browsers: [RegExp, string][] = [
  [/Edg/, 'Edge'],
  [/Firefox|FxiOS/, 'Firefox'],
  [/Chrom(e|ium)|CriOS/, 'Chrome'],
  [/Safari/, 'Safari'],
];
const systems: [RegExp, string][] = [
  [/iPhone|iPad/, 'iOS'],
  [/Android/, 'Android'],
  [/Windows/, 'Windows'],
  [/Mac OS X/, 'macOS'],
  [/Linux|X11/, 'Linux'],
];

/** Browser and system from a `User-Agent`, enough for a person to know their own device again, and no more. */
export function deviceOf(userAgent: string): string {
  const named = (list: [RegExp, string][]) => list.find(([mark]) => mark.test(userAgent))?.[1];
  return `${named(browsers) ?? 'Some program'} on ${named(systems) ?? 'some system'}`;
}
