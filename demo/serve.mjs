// Lays a compressed copy beside each file of the page, as web servers want them (.br, .gz), and serves the
// folder to this house.
// Usage: node demo/serve.mjs --compress FOLDER
//        node demo/serve.mjs FOLDER [PORT [CERTIFICATE KEY]]     with both, by https
import {createReadStream, existsSync, readFileSync, readdirSync, statSync, writeFileSync} from 'node:fs';
import {createServer} from 'node:http';
import {createServer as createSecureServer} from 'node:https';
import {networkInterfaces} from 'node:os';
import {extname, join, normalize, resolve, sep} from 'node:path';
import {brotliCompressSync, constants, gzipSync} from 'node:zlib';

const kinds = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript', '.css': 'text/css', '.svg': 'image/svg+xml',
  '.png': 'image/png', '.otf': 'font/otf', '.ttf': 'font/ttf', '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};
const ways = [['br', '.br'], ['gzip', '.gz']];

function compress(folder) {
  const sizes = {all: 0, br: 0, gz: 0};
  for (const name of readdirSync(folder, {recursive: true})) {
    const file = join(folder, name);
    if (!(extname(file) in kinds) || !statSync(file).isFile()) continue;
    const bytes = readFileSync(file), params = {[constants.BROTLI_PARAM_SIZE_HINT]: bytes.length};
    const small = {br: brotliCompressSync(bytes, {params}), gz: gzipSync(bytes, {level: 9})};
    sizes.all += bytes.length;
    for (const [ending, packed] of Object.entries(small)) {
      sizes[ending] += Math.min(packed.length, bytes.length);
      if (packed.length < bytes.length) writeFileSync(`${file}.${ending}`, packed);
    }
  }
  console.log(`${sizes.all} bytes; compressed by gzip ${sizes.gz}, by brotli ${sizes.br}`);
}

// A folder whose name has the version in it never changes; everything else is asked for anew.
function headers(file, folder) {
  const forever = /^[0-9a-f]{16}$/.test(file.slice(folder.length + 1).split(sep)[0]);
  return {'Content-Type': kinds[extname(file)] ?? 'application/octet-stream', 'Vary': 'Accept-Encoding',
          'Cache-Control': forever ? 'public, max-age=31536000, immutable' : 'no-cache'};
}

function answer(folder, request, response) {
  const path = normalize(decodeURIComponent(new URL(request.url, 'http://here').pathname));
  const file = join(folder, path.endsWith(sep) ? path + 'index.html' : path);
  if (!file.startsWith(folder + sep) || !(extname(file) in kinds) || !existsSync(file))
    return response.writeHead(404).end();
  const wanted = request.headers['accept-encoding'] ?? '';
  const way = ways.find(([name, ending]) => wanted.includes(name) && existsSync(file + ending));
  response.writeHead(200, {...headers(file, folder), ...(way ? {'Content-Encoding': way[0]} : {})});
  createReadStream(file + (way ? way[1] : '')).pipe(response);
}

function serve(folder, port, certificate, key) {
  const heard = (request, response) => {
    try {
      answer(folder, request, response);
    } catch (error) {
      response.writeHead(400).end();
    }
  };
  const server = certificate ? createSecureServer({cert: readFileSync(certificate), key: readFileSync(key)}, heard)
      : createServer(heard);
  server.listen(port, () => {
    const scheme = certificate ? 'https' : 'http';
    console.log(`on this computer:          ${scheme}://localhost:${server.address().port}/`);
    for (const all of Object.values(networkInterfaces()))
      for (const each of all)
        if (each.family === 'IPv4' && !each.internal)
          console.log(`on a tablet in this house: ${scheme}://${each.address}:${server.address().port}/`);
    if (!certificate)
      console.log('Without https a tablet shows the page and counts, but its browser does not install it, keeps\n' +
                  'no copy for use without a network, promises to keep nothing, lets the display sleep, and does\n' +
                  'not notice a second tab. With a certificate that the tablet trusts, all of that is there:\n' +
                  'node demo/serve.mjs FOLDER PORT CERTIFICATE KEY');
  });
}

const words = process.argv.slice(2);
if (words[0] === '--compress') compress(resolve(words[1]));
else serve(resolve(words[0]), Number(words[1] ?? 8000), words[2], words[3]);
