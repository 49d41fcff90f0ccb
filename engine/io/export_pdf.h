/* A PDF document of many pages, each of its own size: vector drawing, fonts embedded, an outline. */
#pragma once

#include "page.h"

typedef struct _RwPdf RwPdf;

/* date: ISO 8601, "2026-05-04", kept as the date of the document: the same pages give the same bytes. */
RwPdf *rw_pdf_new  (const char *title, const char *date);
void   rw_pdf_free (RwPdf *pdf);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwPdf, rw_pdf_free)

/* Ends the page before and begins one of this size in mm.  Returns a context, good until the next call,
 * whose unit is a millimetre, y down, its origin in the page's upper left corner.  The page stands in the
 * outline as bookmark; with chapter, as the first of pages that belong together, the others below it. */
cairo_t *rw_pdf_begin_page (RwPdf *pdf, double width, double height, const char *bookmark, gboolean chapter);

/* The document; nothing may be drawn after that.  Fails only where memory does: RW_FILE_ERROR_ACCESS. */
GBytes *rw_pdf_finish (RwPdf *pdf, GError **error);
