/* Compresses the input by Brotli, as well as can be, and writes it out. */
import { readFileSync } from "node:fs";
import { brotliCompressSync, constants } from "node:zlib";

const body = readFileSync(0);
process.stdout.write(brotliCompressSync(body, { params: {
  [constants.BROTLI_PARAM_MODE]: constants.BROTLI_MODE_TEXT,
  [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
  [constants.BROTLI_PARAM_LGWIN]: constants.BROTLI_MAX_WINDOW_BITS,
  [constants.BROTLI_PARAM_SIZE_HINT]: body.length,
} }));
