/* Reading back what was written, with programs that had no part in writing it. */
#pragma once

#include "sheet/sheet.h"

/* What a program of poppler prints about a PDF, called with options before the file; NULL, and the test
 * skipped, where it is not installed. */
char *read_pdf (GBytes *pdf, const char *program, const char *options);

/* An SVG as GLib's reader of XML sees it. */
typedef struct
{
  GPtrArray *paths;  /* of char *: each matrix as its six numbers, then the d attribute */
  GPtrArray *groups; /* of char *, "id:title" */
  GString   *texts;  /* a line each */
  char      *width, *height, *view;

  char    *group; /* whose title is awaited */
  gboolean in_title, in_text;
} SvgReader;

/* Fails the test where svg is not well formed. */
SvgReader *svg_reader_new  (const char *svg);
void       svg_reader_free (SvgReader *reader);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (SvgReader, svg_reader_free)

/* All paths that are one straight line, as RwBox from (x0, y0) to (x1, y1): their numbers, moved by their
 * matrix, times unit. */
GArray *svg_lines (const SvgReader *reader, double unit);

/* Is one of them this line, both ends within near? */
gboolean svg_has_line (const SvgReader *reader, RwBox line, double unit, double near);
