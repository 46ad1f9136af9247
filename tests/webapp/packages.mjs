// For Node's tests: finds lit-html and the like where the build put them, as the page's own build does.
import { register } from 'node:module';

const home = new URL('../../.venv/node/', import.meta.url).href;
const hook = `export const resolve = (name, context, next) =>
  next(name, /^[./]|^\\w+:/.test(name) ? context : { ...context, parentURL: ${JSON.stringify(home)} });`;
register(`data:text/javascript,${encodeURIComponent(hook)}`);
