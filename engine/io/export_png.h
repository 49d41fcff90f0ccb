/* A page as a PNG picture that says its resolution. */
#pragma once

#include "page.h"

/* rw_png_write: a page painted on the palette's paper.
 *
 * Given     dpi  dots per inch, > 0
 * Returned  the file's bytes, with the resolution in a pHYs chunk (W3C, PNG Specification); or NULL and
 *           RW_FILE_ERROR_TOO_BIG over RW_PNG_DOTS_MAX dots.
 */
GBytes *rw_png_write (const RwPage *page, const RwPalette *palette, double dpi, GError **error);

#define RW_PNG_DOTS_MAX 100e6
