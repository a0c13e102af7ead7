import { canonicalJson, sha256Hex } from "../engine/hash.ts";

/** SHA-256 of the canonical JSON (RFC 8785) of the data, 64 hexadecimal digits. */
export const hashed = (data: unknown): string => sha256Hex(new TextEncoder().encode(canonicalJson(data)));
