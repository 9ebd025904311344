/**
 * Serves the built site for reading on this machine: `npm start`, or `node src/terminal/serve.ts [folder] [port]`.
 * Files are read once, at the start, and compressed once, when first asked for; a request can only ever reach one of them.
 */
import { readdir, readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants, gzipSync } from 'node:zlib';

interface StoredFile {
  readonly type: string;
  readonly plain: Buffer;
  /** Text files only. */
  readonly packed?: { readonly br: Buffer; readonly gzip: Buffer };
}

export interface RunningSite {
  /** Address of the site's root, with its closing slash. */
  readonly address: string;
  close(): Promise<void>;
}

const types: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.mjs': 'text/javascript; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** Serves the files under `root`. Port 0, the default, takes any free one. */
export async function serve({ root, port = 0 }: { root: string; port?: number }): Promise<RunningSite> {
  const files = await readFiles(root);
  const server = createServer((request, response) => answer(files, request, response));
  await new Promise<void>((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function readFiles(root: string): Promise<Map<string, StoredFile>> {
  const entries = await readdir(root, { recursive: true, withFileTypes: true });
  const files = await Promise.all(
    entries
      .filter((entry) => entry.isFile())
      .map(async (entry): Promise<[string, StoredFile]> => {
        const path = join(entry.parentPath, entry.name);
        const type = types[extname(entry.name)] ?? 'application/octet-stream';
        const plain = await readFile(path);
        const name = `/${relative(root, path).split(sep).join('/')}`;
        return [name, { type, plain, ...(type.includes('charset') ? { packed: compressed(plain) } : {}) }];
      }),
  );
  return new Map(files);
}

/** The file in both encodings, each made when it is first asked for: the start waits for none of them. */
function compressed(plain: Buffer): { readonly br: Buffer; readonly gzip: Buffer } {
  let br: Buffer | undefined;
  let gzip: Buffer | undefined;
  const params = { [constants.BROTLI_PARAM_QUALITY]: 11 };
  return {
    get br() {
      br ??= brotliCompressSync(plain, { params });
      return br;
    },
    get gzip() {
      gzip ??= gzipSync(plain);
      return gzip;
    },
  };
}

function answer(
  files: ReadonlyMap<string, StoredFile>,
  request: IncomingMessage,
  response: ServerResponse,
): void {
  response.setHeader('X-Content-Type-Options', 'nosniff');
  response.setHeader('Referrer-Policy', 'no-referrer');
  response.setHeader('Cross-Origin-Opener-Policy', 'same-origin');
  if (request.method !== 'GET' && request.method !== 'HEAD') {
    response.writeHead(405, { Allow: 'GET, HEAD' }).end();
    return;
  }
  const path = pathOf(request.url ?? '/');
  const file =
    path === undefined ? undefined : (files.get(path) ?? files.get(`${path.replace(/\/$/, '')}/index.html`));
  if (file !== undefined && path !== undefined && !files.has(path) && !path.endsWith('/')) {
    // Relative links in a folder's page need the closing slash.
    response.writeHead(301, { Location: `${encodeURI(path)}/` }).end();
    return;
  }
  const missing = files.get('/404.html');
  if (file !== undefined) send(request, response, 200, file, path ?? '');
  else if (missing !== undefined) send(request, response, 404, missing, '');
  else response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not found');
}

/** The path asked for, or undefined if it is not one: badly encoded, or not below the root. */
function pathOf(url: string): string | undefined {
  try {
    const path = decodeURIComponent(url.replace(/[?#].*$/s, ''));
    return path.startsWith('/') && !path.startsWith('//') && !path.includes('\\') ? path : undefined;
  } catch {
    return undefined;
  }
}

function send(
  request: IncomingMessage,
  response: ServerResponse,
  status: number,
  file: StoredFile,
  path: string,
): void {
  const accepted = String(request.headers['accept-encoding'] ?? '');
  const encoding =
    file.packed === undefined
      ? undefined
      : (['br', 'gzip'] as const).find((name) => new RegExp(`\\b${name}\\b`).test(accepted));
  const body = (encoding === undefined ? undefined : file.packed?.[encoding]) ?? file.plain;
  response.writeHead(status, {
    'Content-Type': file.type,
    'Content-Length': body.byteLength,
    // Names in /assets/ hold a hash of the content, so they never change.
    'Cache-Control': path.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    Vary: 'Accept-Encoding',
    ...(encoding === undefined ? {} : { 'Content-Encoding': encoding }),
  });
  response.end(request.method === 'HEAD' ? undefined : body);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const root = process.argv[2] ?? fileURLToPath(new URL('../../dist', import.meta.url));
  const site = await serve({ root, port: Number(process.argv[3] ?? process.env['PORT'] ?? 0) });
  console.log(`Headroom is at ${site.address}  (stop with Ctrl+C)`);
}
