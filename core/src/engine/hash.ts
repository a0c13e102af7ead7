/*
 * A fingerprint of bytes, the same everywhere. Of data: the bytes of its canonical JSON.
 * Published: SHA-256, FIPS 180-4 (2015).
 */

export { canonicalJson } from "./canonical-json.ts";

/** FIPS 180-4, 4.2.2: leading 32 bits of the fractional parts of the cube roots of the first 64 primes. */
const ROUND_CONSTANTS = Int32Array.from([
  0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98,
  0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786,
  0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8,
  0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13,
  0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819,
  0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a,
  0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7,
  0xc67178f2,
]);

/** FIPS 180-4, 5.3.3: the same of the square roots of the first eight primes. */
const START = [
  0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
];

const BLOCK_BYTES = 64;
const LENGTH_BYTES = 8;
const TWO_TO_29 = 536870912;

/** The SHA-256 of the bytes, as 64 lower-case hexadecimal digits. */
export function sha256Hex(bytes: Uint8Array): string {
  const message = padded(bytes);
  const state = Int32Array.from(START);
  const schedule = new Int32Array(BLOCK_BYTES);
  for (let at = 0; at < message.byteLength; at += BLOCK_BYTES) {
    expandBlock(message, at, schedule);
    mixBlock(state, schedule);
  }
  return Array.from(state, (word) => (word >>> 0).toString(16).padStart(8, "0")).join("");
}

/** The message, a one bit, zeros, and its length in bits, filling whole blocks. */
function padded(bytes: Uint8Array): DataView {
  const blocks = Math.ceil((bytes.length + 1 + LENGTH_BYTES) / BLOCK_BYTES);
  const message = new Uint8Array(blocks * BLOCK_BYTES);
  message.set(bytes);
  message[bytes.length] = 0x80;
  const view = new DataView(message.buffer);
  view.setUint32(message.length - 8, Math.floor(bytes.length / TWO_TO_29));
  view.setUint32(message.length - 4, bytes.length << 3);
  return view;
}

function turned(word: number, by: number): number {
  return (word >>> by) | (word << (32 - by));
}

/** FIPS 180-4, 6.2.2 step 1. */
function expandBlock(message: DataView, at: number, w: Int32Array): void {
  for (let t = 0; t < 16; t++) w[t] = message.getInt32(at + 4 * t);
  for (let t = 16; t < 64; t++) {
    const early = w[t - 15]!;
    const late = w[t - 2]!;
    const small0 = turned(early, 7) ^ turned(early, 18) ^ (early >>> 3);
    const small1 = turned(late, 17) ^ turned(late, 19) ^ (late >>> 10);
    w[t] = small1 + w[t - 7]! + small0 + w[t - 16]!;
  }
}

/** FIPS 180-4, 6.2.2 steps 2 to 4, with the standard's letters. */
function mixBlock(state: Int32Array, w: Int32Array): void {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let t = 0; t < 64; t++) {
    const big1 = turned(e, 6) ^ turned(e, 11) ^ turned(e, 25);
    const t1 = (h + big1 + ((e & f) ^ (~e & g)) + ROUND_CONSTANTS[t]! + w[t]!) | 0;
    const big0 = turned(a, 2) ^ turned(a, 13) ^ turned(a, 22);
    const t2 = (big0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
    h = g;
    g = f;
    f = e;
    e = (d + t1) | 0;
    d = c;
    c = b;
    b = a;
    a = (t1 + t2) | 0;
  }
  const mixed = [a, b, c, d, e, f, g, h];
  for (let i = 0; i < 8; i++) state[i] = state[i]! + mixed[i]!;
}
