/* Sizes of paper: ISO 216 and ANSI/ASME Y14.1. */
#pragma once

#include <glib.h>

typedef struct
{
  const char *id; /* "a4", "letter" ... */
  const char *label;
  double      width_mm, height_mm; /* upright */
} RwPaper;

extern const RwPaper rw_papers[];
extern const int     rw_papers_count;

/* The size called id, or NULL. */
const RwPaper *rw_paper_find (const char *id);
