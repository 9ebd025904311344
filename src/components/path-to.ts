/** Address of a page or file of this site, wherever the site is mounted: `pathTo('/glossary/')`. */
export function pathTo(path: `/${string}`): string {
  return `${import.meta.env.BASE_URL.replace(/\/$/, '')}${path}`;
}
