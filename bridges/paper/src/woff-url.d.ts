/** What a bundler makes of a font imported for its address. */
declare module "*.woff?url" {
  const url: string;
  export default url;
}
