declare module 'astro' {
  interface AstroClientDirectives {
    'client:act'?: boolean | string;
  }
}
export {};
