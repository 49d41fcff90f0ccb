/* The papers of a project as pages that are ready to be painted: for files, for the printer, for a look
 * before either. */
#pragma once

#include "paper/paper.h"
#include "page.h"
#include "paper_size.h"

/* What a printer can make of 100 mm and yet be fit for templates, mm. */
#define RW_BAR_MIN 90.0
#define RW_BAR_MAX 110.0

/* Usual, least and most, mm. */
#define RW_PAPER_MARGIN 10.0
#define RW_PAPER_MARGIN_MIN 3.0
#define RW_PAPER_MARGIN_MAX 25.0
#define RW_PAPER_OVERLAP 12.0
#define RW_PAPER_OVERLAP_MIN 8.0
#define RW_PAPER_OVERLAP_MAX 30.0

#define RW_PAPERS_DPI 200
#define RW_PAPERS_DPI_MIN 50
#define RW_PAPERS_DPI_MAX 600

/* Which hand the drawings are for. */
typedef enum
{
  RW_PAPERS_AS_BUILT,
  RW_PAPERS_RIGHT,
  RW_PAPERS_LEFT, /* drawings mirrored, text not */
} RwPapersHand;

/* Is told how far long work has come; FALSE from it ends the work. */
typedef gboolean (*RwPapersProgress) (int done, int of, gpointer data);

typedef struct
{
  const RwPaper *paper;
  const char   **only;       /* ids of kinds, NULL-ended; NULL: all */
  gboolean       pdf, svg, png; /* the files to write */
  gboolean       csv, json;     /* the list of dimensions, likewise */
  double         dpi;        /* of PNG; 0: RW_PAPERS_DPI */
  RwStyle        style;
  RwPapersHand   hand;
  const char    *date;       /* ISO 8601, as shown on each page and kept in the PDF */
  const char    *revision;   /* as shown on each page; NULL or "": "A" */
  double         margin_mm;  /* 0: RW_PAPER_MARGIN */
  double         overlap_mm; /* of the pages of one sheet; 0: RW_PAPER_OVERLAP */
  /* What the printer makes of 100 mm along the short and the long edge of the paper; 0: 100.  Pages are drawn
   * larger or smaller by as much, about their middle. */
  double bar_short_mm, bar_long_mm;

  RwPapersProgress progress; /* may be NULL */
  gpointer         progress_data;
} RwPapersOptions;

typedef struct
{
  const RwPaperKind *kind;
  char              *title;  /* of the sheet, translated */
  char              *label;  /* in an outline: the title, or "page 2 of 4" after the first */
  gboolean           is_first; /* page of its sheet */
  double             width, height; /* mm */
  RwPagePart         parts[2]; /* the drawing, and what stands round it */
  RwBox              clip;     /* of the drawing: mm from the upper left corner, y down */
} RwPaperPage;

typedef struct
{
  GPtrArray *pages;  /* of RwPaperPage, in order */
  GPtrArray *pieces; /* of RwPaperPage: sheets in full size in one piece, however large */
  double     stretch_short, stretch_long; /* the printer's correction, along the edges of the paper */

  /* What the pages are made of. */
  GPtrArray *sheets, *layouts;
} RwPaperSet;

/* Solves the project, and builds and lays out what the options ask for.  NULL and RW_FILE_ERROR_VALUE where
 * they name a kind that is not known, or the build has none of these papers; NULL and RW_FILE_ERROR_STOPPED
 * where the progress ended it. */
RwPaperSet *rw_paper_set_new  (const RwProject *project, const RwPapersOptions *options, GError **error);
void        rw_paper_set_free (RwPaperSet *set);
G_DEFINE_AUTOPTR_CLEANUP_FUNC (RwPaperSet, rw_paper_set_free)

/* Another correction for the same pages; 0: 100. */
void rw_paper_set_correct (RwPaperSet *set, double bar_short_mm, double bar_long_mm);

/* Paints a page for the printer.  cr's unit is a millimetre, y down, its origin the page's upper left
 * corner. */
void rw_paper_set_paint (const RwPaperSet *set, const RwPaperPage *page, cairo_t *cr);

/* Tells the options' progress; FALSE and RW_FILE_ERROR_STOPPED where it ends the work. */
gboolean rw_papers_go_on (const RwPapersOptions *options, int done, int of, GError **error);

/* The project's name, or words in its place. */
const char *rw_paper_set_title (const RwProject *project);

/* The page as it goes into a picture, without clip and correction; parts belong to the set. */
RwPage rw_paper_page_picture (const RwPaperPage *page);
