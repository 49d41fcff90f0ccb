#include "export_png.h"

#include "file_error.h"

#include <glib/gi18n-lib.h>
#include <math.h>
#include <string.h>

#define MM_PER_INCH 25.4

/* A PNG file begins with a signature of 8 bytes and a header chunk of 25; pHYs may follow. */
#define HEADER_END 33

static cairo_status_t
keep (void *closure, const unsigned char *data, unsigned int length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

/* CRC of a chunk, bit by bit: polynomial and conditions of annex D of the specification. */
static guint32
chunk_crc (const guint8 *data, gsize length)
{
  guint32 crc = 0xffffffff;

  for (gsize i = 0; i < length; i++)
    {
      crc ^= data[i];
      for (int bit = 0; bit < 8; bit++)
        crc = crc & 1 ? 0xedb88320 ^ crc >> 1 : crc >> 1;
    }
  return crc ^ 0xffffffff;
}

static void
put_number (guint8 *at, guint32 number)
{
  number = GUINT32_TO_BE (number);
  memcpy (at, &number, sizeof number);
}

/* Length, type, dots per metre in x and y, unit 1 (metre), CRC over type and data. */
static void
state_resolution (GByteArray *bytes, double dpi)
{
  guint32 dots_per_metre = (guint32) round (dpi * 1000 / MM_PER_INCH);
  guint8 chunk[21] = { 0 };
  GByteArray *rest = g_byte_array_new ();

  put_number (chunk, 9);
  memcpy (chunk + 4, "pHYs", 4);
  put_number (chunk + 8, dots_per_metre);
  put_number (chunk + 12, dots_per_metre);
  chunk[16] = 1;
  put_number (chunk + 17, chunk_crc (chunk + 4, 13));

  g_byte_array_append (rest, bytes->data + HEADER_END, bytes->len - HEADER_END);
  g_byte_array_set_size (bytes, HEADER_END);
  g_byte_array_append (bytes, chunk, sizeof chunk);
  g_byte_array_append (bytes, rest->data, rest->len);
  g_byte_array_unref (rest);
}

static void
paint_page (cairo_t *cr, const RwPage *page, const RwPalette *palette, double dots_per_mm)
{
  cairo_set_source_rgb (cr, palette->paper.r, palette->paper.g, palette->paper.b);
  cairo_paint (cr);
  cairo_scale (cr, dots_per_mm, dots_per_mm);
  for (int i = 0; i < page->count; i++)
    {
      cairo_save (cr);
      cairo_translate (cr, page->parts[i].origin.x, page->parts[i].origin.y);
      rw_paint (cr, page->parts[i].layout, palette, 0);
      cairo_restore (cr);
    }
}

GBytes *
rw_png_write (const RwPage *page, const RwPalette *palette, double dpi, GError **error)
{
  double dots_per_mm = dpi / MM_PER_INCH;
  double width = ceil (page->width * dots_per_mm - 1e-6), height = ceil (page->height * dots_per_mm - 1e-6);

  if (width * height > RW_PNG_DOTS_MAX)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_TOO_BIG,
                   _("“%s” is too large for a picture of %g dots per inch"), page->title, dpi);
      return NULL;
    }

  cairo_surface_t *surface = cairo_image_surface_create (CAIRO_FORMAT_RGB24, (int) width, (int) height);
  cairo_t *cr = cairo_create (surface);
  GByteArray *bytes = g_byte_array_new ();

  paint_page (cr, page, palette, dots_per_mm);

  cairo_status_t status = cairo_surface_write_to_png_stream (surface, keep, bytes);

  cairo_destroy (cr);
  cairo_surface_destroy (surface);
  if (status != CAIRO_STATUS_SUCCESS)
    {
      g_byte_array_unref (bytes);
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The picture of “%s” can't be made: %s"),
                   page->title, cairo_status_to_string (status));
      return NULL;
    }
  state_resolution (bytes, dpi);
  return g_byte_array_free_to_bytes (bytes);
}
