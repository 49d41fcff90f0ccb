#include "export_pdf.h"

#include "file_error.h"

#include <cairo-pdf.h>
#include <glib/gi18n-lib.h>

#define POINTS_PER_MM (72 / 25.4)

struct _RwPdf
{
  GByteArray      *bytes;
  cairo_surface_t *surface;
  cairo_t         *cr;
  int              pages;
  int              chapter; /* in the outline */
};

static cairo_status_t
keep (void *closure, const unsigned char *data, unsigned int length)
{
  g_byte_array_append (closure, data, length);
  return CAIRO_STATUS_SUCCESS;
}

RwPdf *
rw_pdf_new (const char *title, const char *date)
{
  RwPdf *pdf = g_new0 (RwPdf, 1);
  g_autofree char *time = g_strconcat (date, "T00:00:00Z", NULL);

  pdf->bytes = g_byte_array_new ();
  pdf->surface = cairo_pdf_surface_create_for_stream (keep, pdf->bytes, 1, 1);
  cairo_pdf_surface_set_metadata (pdf->surface, CAIRO_PDF_METADATA_TITLE, title);
  cairo_pdf_surface_set_metadata (pdf->surface, CAIRO_PDF_METADATA_CREATOR, "Rimwright");
  cairo_pdf_surface_set_metadata (pdf->surface, CAIRO_PDF_METADATA_CREATE_DATE, time);
  cairo_pdf_surface_set_metadata (pdf->surface, CAIRO_PDF_METADATA_MOD_DATE, time);
  return pdf;
}

static void
end_page (RwPdf *pdf)
{
  if (pdf->cr == NULL)
    return;

  cairo_show_page (pdf->cr);
  g_clear_pointer (&pdf->cr, cairo_destroy);
}

void
rw_pdf_free (RwPdf *pdf)
{
  if (pdf == NULL)
    return;

  g_clear_pointer (&pdf->cr, cairo_destroy);
  cairo_surface_destroy (pdf->surface);
  g_byte_array_unref (pdf->bytes);
  g_free (pdf);
}

static void
add_bookmark (RwPdf *pdf, const char *bookmark, gboolean chapter)
{
  g_autofree char *place = g_strdup_printf ("page=%d pos=[0 0]", pdf->pages);
  int parent = chapter ? CAIRO_PDF_OUTLINE_ROOT : pdf->chapter;
  int entry = cairo_pdf_surface_add_outline (pdf->surface, parent, bookmark, place, 0);

  if (chapter)
    pdf->chapter = entry;
}

cairo_t *
rw_pdf_begin_page (RwPdf *pdf, double width, double height, const char *bookmark, gboolean chapter)
{
  end_page (pdf);
  cairo_pdf_surface_set_size (pdf->surface, width * POINTS_PER_MM, height * POINTS_PER_MM);
  pdf->cr = cairo_create (pdf->surface);
  cairo_scale (pdf->cr, POINTS_PER_MM, POINTS_PER_MM);
  pdf->pages++;
  add_bookmark (pdf, bookmark, chapter);
  return pdf->cr;
}

GBytes *
rw_pdf_finish (RwPdf *pdf, GError **error)
{
  end_page (pdf);
  cairo_surface_finish (pdf->surface);
  if (cairo_surface_status (pdf->surface) != CAIRO_STATUS_SUCCESS)
    {
      g_set_error (error, RW_FILE_ERROR, RW_FILE_ERROR_ACCESS, _("The PDF can't be made: %s"),
                   cairo_status_to_string (cairo_surface_status (pdf->surface)));
      return NULL;
    }
  return g_bytes_new (pdf->bytes->data, pdf->bytes->len);
}
