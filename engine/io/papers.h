/* Papers: sheets for the bench as PDF, SVG and PNG. */
#pragma once

#include "drawing.h"
#include "project.h"

typedef struct
{
  const char *id; /* "a4", "letter" ... */
  const char *label;
  double      width_mm, height_mm; /* upright */
} RwPaper;

extern const RwPaper rw_papers[];
extern const int     rw_papers_count;
const RwPaper *rw_paper_find (const char *id);

typedef struct
{
  const RwPaper *paper;
  const char   **only; /* ids of sheets, NULL-ended; NULL: all */
  gboolean       svg, png;
  RwStyle        style;
  const char    *date; /* ISO 8601, as shown in the title block and the PDF's dates */
} RwPapersOptions;

/* Writes the papers of a project into a folder that exists or can be made; says in files (of char *, may be
 * NULL) what was written. */
gboolean rw_papers_write (const RwProject *project, const RwPapersOptions *options, const char *folder,
                          GPtrArray *files, GError **error);
