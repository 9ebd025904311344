import { createHash } from 'node:crypto';
import { satteri } from '@astrojs/markdown-satteri';
import mdx from '@astrojs/mdx';
import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { mathmlPlugin } from './src/markdown/mathml-plugin.ts';
import { tablePlugin } from './src/markdown/table-plugin.ts';
import { themeScript } from './src/widgets/theme/theme-script.ts';

const sha256 = (text) => `sha256-${createHash('sha256').update(text).digest('base64')}`;

// Left alone, the bundler makes a file of every shared module: dozens of requests for a few hundred bytes each.
// What always comes together is put together; what few readers need (importing a file) stays apart. The engine is left to the
// bundler: each exercise then fetches the parts its worksheet uses and no more.
const groups = [
  { name: 'preact', test: /node_modules\/preact\// },
  { name: 'frame', test: /wake-(progress|search)|theme-switch|strings\/fill|preload-helper/ },
  {
    name: 'progress',
    test: /src\/course\/progress\/(?!parse-|progress-file|inspect)|src\/widgets\/(shared\/progress|course-map)\/(?!wake)|node_modules\/(idb|@preact\/signals(-core)?)\//,
  },
];

export default defineConfig({
  output: 'static',
  // A folder with an index.html for each page is the one shape every static host serves alike.
  trailingSlash: 'always',
  build: {
    format: 'directory',
    assets: 'assets',
    // A page's style sheet is a few kB: inside the page it costs no request and delays no paint.
    inlineStylesheets: 'always',
  },
  prefetch: false,
  devToolbar: { enabled: false },
  markdown: {
    // The highlighter writes style attributes, which the policy below refuses.
    syntaxHighlight: false,
    processor: satteri({ features: { math: true }, hastPlugins: [mathmlPlugin, tablePlugin] }),
  },
  integrations: [mdx(), preact()],
  vite: {
    environments: {
      client: {
        build: {
          rolldownOptions: { output: { codeSplitting: { groups } } },
        },
      },
    },
  },
  security: {
    csp: {
      algorithm: 'SHA-256',
      directives: [
        "default-src 'self'",
        "connect-src 'self'",
        "img-src 'self'",
        "font-src 'self'",
        "base-uri 'none'",
        "object-src 'none'",
        "form-action 'self'",
        "require-trusted-types-for 'script'",
      ],
      scriptDirective: { hashes: [sha256(themeScript)] },
    },
  },
});
