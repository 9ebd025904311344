import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { connect } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type RunningSite, serve } from './serve.ts';

let folder: string;
let site: RunningSite;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'serve-'));
  const root = join(folder, 'site');
  await mkdir(join(root, 'lesson'), { recursive: true });
  await writeFile(join(folder, 'secret.txt'), 'secret');
  await writeFile(join(root, 'index.html'), `<p>${'map '.repeat(400)}`);
  await writeFile(join(root, 'lesson', 'index.html'), '<p>lesson');
  await writeFile(join(root, '404.html'), '<p>no such page');
  await writeFile(join(root, 'font.woff2'), 'font');
  site = await serve({ root });
});

afterAll(async () => {
  await site.close();
  await rm(folder, { recursive: true });
});

/** Sends a path as it is, which a browser and fetch would tidy first. */
function rawStatus(path: string): Promise<string> {
  const { hostname, port } = new URL(site.address);
  return new Promise((resolve, reject) => {
    const socket = connect(Number(port), hostname, () => {
      socket.write(`GET ${path} HTTP/1.1\r\nHost: x\r\nConnection: close\r\n\r\n`);
    });
    let text = '';
    socket.on('data', (chunk) => {
      text += chunk;
    });
    socket.on('end', () => resolve(text));
    socket.on('error', reject);
  });
}

test('serves pages with their type and the safe headers', async () => {
  const answer = await fetch(`${site.address}lesson/`);
  expect(answer.status).toBe(200);
  expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
  expect(answer.headers.get('x-content-type-options')).toBe('nosniff');
  expect(answer.headers.get('referrer-policy')).toBe('no-referrer');
});

test('compresses text but no fonts', async () => {
  const accept = { headers: { 'accept-encoding': 'br, gzip' } };
  const page = await fetch(site.address, accept);
  expect(page.headers.get('content-encoding')).toBe('br');
  expect(await page.text()).toContain('map map');
  expect((await fetch(`${site.address}font.woff2`, accept)).headers.get('content-encoding')).toBe(null);
});

test('sends a folder without its slash to the one with it', async () => {
  const answer = await fetch(`${site.address}lesson`, { redirect: 'manual' });
  expect(answer.status).toBe(301);
  expect(answer.headers.get('location')).toBe('/lesson/');
});

test('shows the 404 page for what is not there', async () => {
  const answer = await fetch(`${site.address}nothing/here`);
  expect(answer.status).toBe(404);
  expect(await answer.text()).toContain('no such page');
});

test.each([
  '/../secret.txt',
  '/%2e%2e/secret.txt',
  '/..%2fsecret.txt',
  '/..\\secret.txt',
  '//secret.txt',
  '/%',
  '/%00',
])('never leaves its folder for %s', async (path) => {
  const answer = await rawStatus(path);
  expect(answer).toMatch(/^HTTP\/1\.1 404/);
  expect(answer).not.toContain('secret');
});

test('refuses to do anything but read', async () => {
  expect((await fetch(site.address, { method: 'POST', body: 'x' })).status).toBe(405);
});
