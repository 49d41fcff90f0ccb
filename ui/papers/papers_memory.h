/* What is remembered of papers from one time to the next: the choice of paper, and for each printer by its
 * name what it makes of a bar of 100 mm.  Kept in a key file in the user's settings folder, beside the
 * printer's own settings; none of it is the maker's work, so a file that can't be read or written is no
 * fault. */
#pragma once

#include <gtk/gtk.h>

#include "io/paper_set.h"

#define RW_PAPERS_UNITS_OF_WINDOW -1

typedef struct
{
  const RwPaper *paper;
  double         margin_mm, overlap_mm;
  char          *printer; /* whose bars are shown; "": any printer without its own */
  int            units;   /* an RwUnits, or RW_PAPERS_UNITS_OF_WINDOW */
  gboolean       pdf, svg, png, csv, json;
  int            dpi;
} RwPapersMemory;

void rw_papers_memory_load  (RwPapersMemory *memory);
void rw_papers_memory_save  (const RwPapersMemory *memory);
void rw_papers_memory_clear (RwPapersMemory *memory);

/* The revision that the papers of a project last had, by the project's name; new, "" for none. */
char *rw_papers_revision_load (const char *project);
void  rw_papers_revision_save (const char *project, const char *revision);

/* What the bars measured, mm. */
typedef struct
{
  double short_mm, long_mm;
} RwBars;

/* Those of a printer, else those of any printer (""), else 100 mm each; NULL is "". */
RwBars rw_bars_load (const char *printer);
void   rw_bars_save (const char *printer, RwBars bars);

/* The settings of the last print; new, and never NULL. */
GtkPrintSettings *rw_print_settings_load (void);
void              rw_print_settings_save (GtkPrintSettings *settings);
